package packetwright.text.document;

import java.net.URLDecoder;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** JSON Pointers (RFC 6901) into our nodes. */
final class Pointer {
  private Pointer() {}

  /** The names on the way, decoded. */
  static List<String> tokens(String pointer) {
    return pointer.isEmpty()
        ? List.of()
        : Arrays.stream(pointer.substring(1).split("/", -1)).map(Pointer::decoded).toList();
  }

  private static String decoded(String token) {
    return token.replace("~1", "/").replace("~0", "~");
  }

  /** The names of a pointer in a URI fragment, where more is encoded. */
  static List<String> fragmentTokens(String location) {
    String path = location.substring(location.indexOf('#') + 1).replace("+", "%2B");
    return tokens(URLDecoder.decode(path, StandardCharsets.UTF_8));
  }

  /** The node that the names lead to, or none. */
  static @Nullable Node find(Node root, List<String> tokens) {
    Node node = root;
    for (String token : tokens) {
      Node next = step(node, token);
      if (next == null) {
        return null;
      }
      node = next;
    }
    return node;
  }

  private static @Nullable Node step(Node node, String token) {
    if (node instanceof Node.Mapping mapping) {
      return mapping.get(token);
    }
    return node instanceof Node.Sequence sequence
        ? sequence.items().get(Integer.parseInt(token))
        : null;
  }
}
