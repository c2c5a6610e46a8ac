package packetwright.text.document;

import dev.harrel.jsonschema.Error;
import java.util.ArrayList;
import java.util.List;
import packetwright.text.source.Finding;
import packetwright.text.source.Located;
import packetwright.text.source.NearMiss;
import packetwright.text.source.Span;

/**
 * Says what the validator found in words of our own, at the place it stands. A schema tells what it
 * wants in keywords of ours that hold a noun phrase: {@code x-expected}, and {@code x-name} for
 * keys.
 */
final class SchemaFindings {
  private static final int MAX_LISTED = 8;

  private final Node schema;
  private final Node document;

  SchemaFindings(Node schema, Node document) {
    this.schema = schema;
    this.document = document;
  }

  /** What one error of the validator comes to; nothing where another error says it better. */
  List<Finding> of(Error error) {
    if (isTrial(error.getEvaluationPath())) {
      return List.of();
    }
    List<String> path = Pointer.tokens(error.getInstanceLocation());
    Node node = find(document, path);
    List<String> schemaPath = Pointer.fragmentTokens(error.getSchemaLocation());
    Node rule = find(schema, schemaPath);
    String keyword = error.getKeyword();
    if (keyword == null) {
      return List.of(unknownKey(path, find(schema, parent(schemaPath))));
    }
    return switch (keyword) {
      case "if", "properties", "additionalProperties", "items", "$ref", "patternProperties" ->
          List.of();
      case "required" -> List.of(missingKeys(path, node, rule));
      case "type" -> List.of(wrongType(node, rule));
      default -> List.of(wrongValue(node, rule));
    };
  }

  /** Whether it was met only on trying whether a rule applies; {@code if} may be a key of ours. */
  private static boolean isTrial(String evaluationPath) {
    return evaluationPath.replace("/properties/if/", "/").contains("/if/");
  }

  private static Node find(Node root, List<String> path) {
    Node node = Pointer.find(root, path);
    if (node == null) {
      throw new IllegalStateException("no node at " + path);
    }
    return node;
  }

  private static List<String> parent(List<String> path) {
    return path.subList(0, path.size() - 1);
  }

  private Finding unknownKey(List<String> path, Node holderRule) {
    Node.Mapping holder = (Node.Mapping) find(document, parent(path));
    Located<String> key = holder.entries().get(holder.keys().indexOf(last(path))).key();
    String name = key.value();
    List<String> known =
        keys(holderRule, "properties").stream().filter(k -> !holder.keys().contains(k)).toList();
    Node value = find(document, path);
    if (holder.inBraces() && value instanceof Node.Scalar scalar && scalar.isEmpty()) {
      return Finding.error(
          "unknown-key",
          key.at(),
          "`" + name + "` stands alone after a comma, so it is read as a key",
          name.matches("\\d.*")
              ? "write a point, not a comma, before decimals"
              : "put the whole text before and after the comma in quotes");
    }
    if (!keys(holderRule, "patternProperties").isEmpty()) {
      return Finding.error(
          "bad-name",
          key.at(),
          "`" + name + "` cannot be a name here",
          "write " + nameExpected((Node.Mapping) holderRule));
    }
    String hint = NearMiss.hint(name, known);
    return Finding.error(
        "unknown-key",
        key.at(),
        "`" + name + "` is not a key that is read here",
        hint.isEmpty() ? "delete it" : hint);
  }

  private static String nameExpected(Node.Mapping rule) {
    return rule.text(
        "x-name",
        "a name of at most 40 lower-case letters, digits and underscores that begins with a letter");
  }

  private static String last(List<String> path) {
    return path.get(path.size() - 1);
  }

  private static List<String> keys(Node rule, String keyword) {
    return ((Node.Mapping) rule).entries(keyword).stream().map(e -> e.key().value()).toList();
  }

  private Finding missingKeys(List<String> path, Node node, Node rule) {
    List<String> missing = new ArrayList<>(required(rule));
    missing.removeAll(((Node.Mapping) node).keys());
    String list = "`" + String.join("`, `", missing) + "`";
    return Finding.error(
        "missing-key", holder(path, node), holderName(path) + " needs " + list, "add " + list);
  }

  private static String holderName(List<String> path) {
    if (path.isEmpty()) {
      return "this file";
    }
    return last(path).matches("[0-9]+") ? "this entry" : "`" + last(path) + "`";
  }

  private static List<String> required(Node rule) {
    return ((Node.Mapping) rule).texts("required").stream().map(Located::value).toList();
  }

  /** The key that holds a node, or the node itself. */
  private Span holder(List<String> path, Node node) {
    if (path.isEmpty()) {
      return node.at();
    }
    Node above = find(document, parent(path));
    Node.Entry entry = above instanceof Node.Mapping mapping ? mapping.entry(last(path)) : null;
    return entry == null ? node.at() : entry.key().at();
  }

  private static Finding wrongType(Node node, Node rule) {
    String types = String.join(" or ", texts(rule, "type").stream().map(t -> noun(t)).toList());
    String wanted = expected(rule, types);
    return Finding.error(
        "wrong-type", node.at(), quoted(node) + " stands here, not " + wanted, "write " + wanted);
  }

  private static Finding wrongValue(Node node, Node rule) {
    List<String> allowed = texts(rule, "enum");
    String near = node instanceof Node.Scalar scalar ? NearMiss.hint(scalar.text(), allowed) : "";
    String wanted =
        expected(
            rule,
            allowed.size() > MAX_LISTED
                ? "a word that is known here"
                : "one of " + String.join(", ", allowed));
    return Finding.error(
        "wrong-value",
        node.at(),
        quoted(node) + " is not " + wanted,
        near.isEmpty() ? "write " + wanted : near);
  }

  private static List<String> texts(Node rule, String keyword) {
    return ((Node.Mapping) rule).texts(keyword).stream().map(Located::value).toList();
  }

  private static String expected(Node rule, String otherwise) {
    return rule instanceof Node.Mapping mapping ? mapping.text("x-expected", otherwise) : otherwise;
  }

  private static String quoted(Node node) {
    return node.match(
        new Node.Cases<>() {
          @Override
          public String mapping(Node.Mapping mapping) {
            return "a mapping";
          }

          @Override
          public String sequence(Node.Sequence sequence) {
            return "a list";
          }

          @Override
          public String scalar(Node.Scalar scalar) {
            return scalar.isEmpty() ? "nothing" : "`" + scalar.text() + "`";
          }
        });
  }

  private static String noun(String type) {
    return switch (type) {
      case "object" -> "a mapping";
      case "array" -> "a list";
      case "integer" -> "a whole number";
      case "number" -> "a number";
      case "boolean" -> "true or false";
      case "null" -> "nothing";
      default -> "a text";
    };
  }
}
