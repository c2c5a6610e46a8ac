package packetwright.definition.procedure;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import packetwright.definition.project.Side;
import packetwright.definition.shop.MachineKind;
import packetwright.text.document.Node;
import packetwright.text.document.Yaml;
import packetwright.text.source.Located;

/** The words of the schema that editors use are the words of the code. */
class OperationSchemaTest {
  private static Node.Mapping at(String schema, String... path) throws IOException {
    try (InputStream in =
        OperationSchemaTest.class.getResourceAsStream(
            "/packetwright/schema/" + schema + ".schema.json")) {
      byte[] bytes = Objects.requireNonNull(in, schema).readAllBytes();
      Node node = Yaml.read(schema, new String(bytes, StandardCharsets.UTF_8)).value();
      for (String key : path) {
        node = Objects.requireNonNull(((Node.Mapping) node).get(key), key);
      }
      return (Node.Mapping) node;
    }
  }

  private static List<String> words(Node.Mapping from) {
    return from.texts("enum").stream().map(Located::value).toList();
  }

  private static <E extends Enum<E>> List<String> words(E[] constants) {
    return Arrays.stream(constants).map(c -> c.name().toLowerCase(Locale.ROOT)).toList();
  }

  @Test
  void namesEveryVerbAndKey() throws IOException {
    assertThat(at("operation", "$defs", "operation", "properties").keys())
        .containsExactlyElementsOf(
            Stream.concat(Verb.words().stream(), OperationReader.KEYS.stream()).toList());
  }

  @Test
  void namesEveryMachineSideControlAndPerson() throws IOException {
    String[] keys = {"$defs", "operation", "properties"};
    assertThat(words(at("operation", keys[0], keys[1], keys[2], "at")))
        .containsExactlyInAnyOrderElementsOf(MachineKind.words());
    assertThat(words(at("operation", keys[0], keys[1], keys[2], "with", "else")))
        .containsExactlyElementsOf(words(Operation.Control.values()));
    assertThat(words(at("operation", keys[0], keys[1], keys[2], "by")))
        .containsExactlyElementsOf(words(Operation.By.values()));
    assertThat(words(at("operation", "$defs", "side")))
        .containsExactlyInAnyOrderElementsOf(words(Side.values()));
  }

  @Test
  void givesTheShopEveryMachineAndHandTool() throws IOException {
    List<String> tools = words(at("shop", "properties", "hand_tools", "items"));
    assertThat(
            Stream.concat(
                at("shop", "properties", "machines", "properties").keys().stream(), tools.stream()))
        .containsExactlyInAnyOrderElementsOf(MachineKind.words());
  }
}
