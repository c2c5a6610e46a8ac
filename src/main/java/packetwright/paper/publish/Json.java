package packetwright.paper.publish;

import java.util.List;
import java.util.Map;

/**
 * Writes JSON (RFC 8259): maps in their own order, lists, strings, whole numbers and booleans.
 * Indented by two spaces, ending in a line feed.
 */
public final class Json {
  private final StringBuilder out = new StringBuilder();

  private Json() {}

  /** The text of a value made of maps, lists, strings, integers and booleans. */
  public static String text(Object value) {
    Json json = new Json();
    json.write(value, 0);
    return json.out.append('\n').toString();
  }

  private void write(Object value, int depth) {
    if (value instanceof Map<?, ?> map) {
      if (map.isEmpty()) {
        out.append("{}");
        return;
      }
      out.append('{');
      String separator = "";
      for (Map.Entry<?, ?> entry : map.entrySet()) {
        out.append(separator);
        line(depth + 1);
        string(String.valueOf(entry.getKey()));
        out.append(": ");
        write(entry.getValue(), depth + 1);
        separator = ",";
      }
      line(depth);
      out.append('}');
    } else if (value instanceof List<?> list) {
      writeList(list, depth);
    } else if (value instanceof String text) {
      string(text);
    } else if (value instanceof Integer || value instanceof Long || value instanceof Boolean) {
      out.append(value);
    } else {
      throw new IllegalArgumentException("no JSON for " + value);
    }
  }

  private void writeList(List<?> list, int depth) {
    if (list.isEmpty()) {
      out.append("[]");
      return;
    }
    boolean isShort = list.stream().allMatch(v -> v instanceof String || v instanceof Integer);
    out.append('[');
    String separator = "";
    for (Object item : list) {
      out.append(separator);
      if (isShort) {
        out.append(separator.isEmpty() ? "" : " ");
      } else {
        line(depth + 1);
      }
      write(item, depth + 1);
      separator = ",";
    }
    if (!isShort) {
      line(depth);
    }
    out.append(']');
  }

  private void line(int depth) {
    out.append('\n').append("  ".repeat(depth));
  }

  private void string(String text) {
    out.append('"');
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      switch (c) {
        case '"' -> out.append("\\\"");
        case '\\' -> out.append("\\\\");
        case '\n' -> out.append("\\n");
        case '\r' -> out.append("\\r");
        case '\t' -> out.append("\\t");
        default -> {
          if (c < 0x20) {
            out.append("\\u00").append(c < 0x10 ? "0" : "1");
            out.append(Character.forDigit(c & 0xF, 16));
          } else {
            out.append(c);
          }
        }
      }
    }
    out.append('"');
  }
}
