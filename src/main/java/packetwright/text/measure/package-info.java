/** Exact quantities: read, reckon, round to a rule and print; no floating point. */
@NullMarked
package packetwright.text.measure;

import org.jspecify.annotations.NullMarked;
