/** Every phrase that we print, by language, and quantities as they are read aloud. */
@NullMarked
package packetwright.text.words;

import org.jspecify.annotations.NullMarked;
