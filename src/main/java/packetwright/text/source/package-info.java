/** Places in input text, findings about them, and results that may be missing because of them. */
@NullMarked
package packetwright.text.source;

import org.jspecify.annotations.NullMarked;
