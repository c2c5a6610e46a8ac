package packetwright.text.document;

import dev.harrel.jsonschema.JsonNode;
import dev.harrel.jsonschema.JsonNodeFactory;
import dev.harrel.jsonschema.SimpleType;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import packetwright.text.source.Checked;

/**
 * One of our nodes as the validator sees it; plain scalars have the types of YAML's core schema.
 */
final class SchemaNode implements JsonNode {
  private static final Pattern INTEGER = Pattern.compile("[-+]?[0-9]{1,18}");
  private static final Pattern NUMBER = Pattern.compile("[-+]?[0-9]{1,18}\\.[0-9]{1,18}");

  private final Node node;
  private final String pointer;

  SchemaNode(Node node, String pointer) {
    this.node = node;
    this.pointer = pointer;
  }

  Node node() {
    return node;
  }

  @Override
  public String getJsonPointer() {
    return pointer;
  }

  @Override
  public SimpleType getNodeType() {
    return node.match(
        new Node.Cases<>() {
          @Override
          public SimpleType mapping(Node.Mapping mapping) {
            return SimpleType.OBJECT;
          }

          @Override
          public SimpleType sequence(Node.Sequence sequence) {
            return SimpleType.ARRAY;
          }

          @Override
          public SimpleType scalar(Node.Scalar scalar) {
            return typeOf(scalar);
          }
        });
  }

  private static SimpleType typeOf(Node.Scalar scalar) {
    if (scalar.quoted()) {
      return SimpleType.STRING;
    }
    if (scalar.isEmpty()) {
      return SimpleType.NULL;
    }
    String text = scalar.text();
    if (text.equals("true") || text.equals("false")) {
      return SimpleType.BOOLEAN;
    }
    if (INTEGER.matcher(text).matches()) {
      return SimpleType.INTEGER;
    }
    return NUMBER.matcher(text).matches() ? SimpleType.NUMBER : SimpleType.STRING;
  }

  private String text() {
    return ((Node.Scalar) node).text();
  }

  @Override
  public boolean asBoolean() {
    return text().equals("true");
  }

  @Override
  public String asString() {
    return text();
  }

  @Override
  public BigInteger asInteger() {
    return new BigInteger(text());
  }

  @Override
  public BigDecimal asNumber() {
    return new BigDecimal(text());
  }

  @Override
  public List<JsonNode> asArray() {
    List<Node> items = ((Node.Sequence) node).items();
    List<JsonNode> nodes = new ArrayList<>();
    for (int i = 0; i < items.size(); i++) {
      nodes.add(new SchemaNode(items.get(i), pointer + "/" + i));
    }
    return nodes;
  }

  @Override
  public Map<String, JsonNode> asObject() {
    Map<String, JsonNode> nodes = new LinkedHashMap<>();
    for (Node.Entry entry : ((Node.Mapping) node).entries()) {
      String key = entry.key().value();
      nodes.put(
          key, new SchemaNode(entry.value(), pointer + "/" + JsonNode.encodeJsonPointer(key)));
    }
    return nodes;
  }

  /** Makes nodes for the validator; schemas themselves are read as YAML, of which JSON is part. */
  static final class Factory implements JsonNodeFactory {
    @Override
    public JsonNode wrap(Object node) {
      return node instanceof JsonNode ready ? ready : new SchemaNode((Node) node, "");
    }

    @Override
    public JsonNode create(String rawJson) {
      Checked<Node> read = Yaml.read("schema", rawJson);
      return new SchemaNode(read.value(), "");
    }
  }
}
