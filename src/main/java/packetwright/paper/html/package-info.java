/** Fills the templates. */
@NullMarked
package packetwright.paper.html;

import org.jspecify.annotations.NullMarked;
