/** The commands: arguments in, findings and progress out, an exit code. */
@NullMarked
package packetwright.cli;

import org.jspecify.annotations.NullMarked;
