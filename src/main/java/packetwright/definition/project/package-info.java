/** The whole project folder as bounded bytes, then as records; no arithmetic. */
@NullMarked
package packetwright.definition.project;

import org.jspecify.annotations.NullMarked;
