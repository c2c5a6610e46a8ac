package packetwright.paper.html;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import packetwright.drawing.sheet.Sheet;

/**
 * A document as XHTML without a document type.
 *
 * @param text the markup; drawings stand as empty {@code svg} elements named by {@code data-sheet}
 * @param sheets those drawings by name
 */
public record Html(String text, Map<String, Sheet> sheets) {
  /** Keeps its own copy, in order. */
  public Html {
    sheets = Collections.unmodifiableMap(new LinkedHashMap<>(sheets));
  }
}
