/** Text as located nodes: YAML, checked against our JSON Schema, and CSV; bounded. */
@NullMarked
package packetwright.text.document;

import org.jspecify.annotations.NullMarked;
