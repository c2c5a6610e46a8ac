package packetwright.text.document;

import dev.harrel.jsonschema.Dialects;
import dev.harrel.jsonschema.Validator;
import dev.harrel.jsonschema.ValidatorFactory;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import packetwright.text.source.Finding;
import packetwright.text.source.Span;

/** A JSON Schema that we ship, and the check of a document against it. */
public final class Schema {
  private final Node root;
  private final Validator validator;
  private final URI uri;

  private Schema(String name, Node root) {
    this.root = root;
    this.uri = URI.create("packetwright:" + name);
    this.validator =
        new ValidatorFactory()
            .withJsonNodeFactory(new SchemaNode.Factory())
            .withDefaultDialect(new Dialects.Draft2020Dialect())
            .withDisabledSchemaValidation(true)
            .createValidator();
    validator.registerSchema(uri, new SchemaNode(root, ""));
  }

  /** The bundled schema of that name: {@code project}, {@code shop}, {@code quiz}. */
  public static Schema named(String name) {
    String path = "/packetwright/schema/" + name + ".schema.json";
    try (InputStream in = Schema.class.getResourceAsStream(path)) {
      if (in == null) {
        throw new IllegalArgumentException("no schema " + path);
      }
      String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
      return new Schema(name, Yaml.read(path, text).value());
    } catch (IOException e) {
      throw new UncheckedIOException(path, e);
    }
  }

  /** What is wrong with the shape of a document, in the order of its lines. */
  public List<Finding> check(Node document) {
    Map<Span, Finding> byPlace = new LinkedHashMap<>();
    SchemaFindings findings = new SchemaFindings(root, document);
    for (dev.harrel.jsonschema.Error error :
        validator.validate(uri, new SchemaNode(document, "")).getErrors()) {
      for (Finding finding : findings.of(error)) {
        byPlace.putIfAbsent(finding.at(), finding);
      }
    }
    return byPlace.values().stream().sorted(Comparator.comparing(Finding::at)).toList();
  }
}
