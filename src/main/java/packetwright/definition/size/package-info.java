/** Every named quantity under one substitution, with its derivation and worst case. */
@NullMarked
package packetwright.definition.size;

import org.jspecify.annotations.NullMarked;
