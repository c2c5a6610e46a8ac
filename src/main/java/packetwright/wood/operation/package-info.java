/** Runs the operations on simulated workpieces and proves that what is made is what is drawn. */
@NullMarked
package packetwright.wood.operation;

import org.jspecify.annotations.NullMarked;
