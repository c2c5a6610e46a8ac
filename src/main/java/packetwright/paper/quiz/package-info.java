/** Measuring questions, their forms and their keys with working. */
@NullMarked
package packetwright.paper.quiz;

import org.jspecify.annotations.NullMarked;
