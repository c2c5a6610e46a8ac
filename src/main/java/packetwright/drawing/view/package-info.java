/** Solids projected to visible, hidden and centre lines; the first floating point. */
@NullMarked
package packetwright.drawing.view;

import org.jspecify.annotations.NullMarked;
