/** A sheet as SVG text, and symbols read from SVG. */
@NullMarked
package packetwright.drawing.svg;

import org.jspecify.annotations.NullMarked;
