/** Full-size templates of curves and hole patterns, tiled over pages. */
@NullMarked
package packetwright.drawing.template;

import org.jspecify.annotations.NullMarked;
