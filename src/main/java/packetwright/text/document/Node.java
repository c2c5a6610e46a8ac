package packetwright.text.document;

import java.util.List;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import packetwright.text.source.Located;
import packetwright.text.source.Span;

/** A piece of a document with its place. Scalars stay text: nothing here becomes a number. */
public sealed interface Node {
  /** Where it is written; of what takes several lines, its first. */
  Span at();

  /** Calls the case that fits. */
  <R> R match(Cases<R> cases);

  /** One method for each kind of node. */
  interface Cases<R> {
    /** Keys with values. */
    R mapping(Mapping mapping);

    /** A list. */
    R sequence(Sequence sequence);

    /** A text. */
    R scalar(Scalar scalar);
  }

  /** This node as a mapping, or none. */
  default @Nullable Mapping asMapping() {
    return this instanceof Mapping mapping ? mapping : null;
  }

  /** This node as a text with its place, or none where it is a collection or empty. */
  default @Nullable Located<String> asText() {
    return this instanceof Scalar scalar && !scalar.isEmpty()
        ? new Located<>(scalar.text(), scalar.at())
        : null;
  }

  /** The texts of a list in order, or the one text; what is not a text is left out. */
  default List<Located<String>> asTexts() {
    return asItems().stream().flatMap(n -> stream(n.asText())).toList();
  }

  /** The items of a list, or the node itself as the only one; an empty scalar has none. */
  default List<Node> asItems() {
    if (this instanceof Sequence sequence) {
      return sequence.items();
    }
    return this instanceof Scalar scalar && scalar.isEmpty() ? List.of() : List.of(this);
  }

  private static java.util.stream.Stream<Located<String>> stream(@Nullable Located<String> text) {
    return text == null ? java.util.stream.Stream.empty() : java.util.stream.Stream.of(text);
  }

  /**
   * Keys with values.
   *
   * @param entries in the order written, no key twice
   * @param at the first key, or the braces
   * @param inBraces whether it is written {@code {a: 1, b: 2}}
   */
  record Mapping(List<Entry> entries, Span at, boolean inBraces) implements Node {
    /** Keeps its own copy. */
    public Mapping {
      entries = List.copyOf(entries);
    }

    @Override
    public <R> R match(Cases<R> cases) {
      return cases.mapping(this);
    }

    /** The keys in order. */
    public List<String> keys() {
      return entries.stream().map(e -> e.key().value()).toList();
    }

    /** The entry of a key, or none. */
    public @Nullable Entry entry(String key) {
      return entries.stream().filter(e -> e.key().value().equals(key)).findFirst().orElse(null);
    }

    /** The value of a key, or none. */
    public @Nullable Node get(String key) {
      Entry entry = entry(key);
      return entry == null ? null : entry.value();
    }

    /** The text of a key with its place, or none. */
    public @Nullable Located<String> text(String key) {
      return read(key, Node::asText, null);
    }

    /** The text of a key, or another. */
    public String text(String key, String otherwise) {
      Located<String> text = text(key);
      return text == null ? otherwise : text.value();
    }

    /** The texts of a key that holds one or a list; empty without it. */
    public List<Located<String>> texts(String key) {
      List<Located<String>> none = List.of();
      List<Located<String>> texts = read(key, Node::asTexts, none);
      return texts == null ? none : texts;
    }

    /** The mapping of a key, or none. */
    public @Nullable Mapping mapping(String key) {
      return read(key, Node::asMapping, null);
    }

    /** The entries of the mapping of a key; empty without it. */
    public List<Entry> entries(String key) {
      Mapping mapping = mapping(key);
      return mapping == null ? List.of() : mapping.entries();
    }

    /** The items of the list of a key; empty without it. */
    public List<Node> items(String key) {
      Node node = get(key);
      return node == null ? List.of() : node.asItems();
    }

    /** Whether a key says true. */
    public boolean flag(String key) {
      return text(key, "false").equals("true");
    }

    /** The whole number of a key from 0 to 9999, or another where there is none. */
    public int whole(String key, int otherwise) {
      String text = text(key, "");
      return text.matches("[0-9]{1,4}") ? Integer.parseInt(text) : otherwise;
    }

    private <T> @Nullable T read(
        String key, Function<Node, @Nullable T> reading, @Nullable T otherwise) {
      Node node = get(key);
      return node == null ? otherwise : reading.apply(node);
    }
  }

  /**
   * A key with its value.
   *
   * @param key with its place
   * @param value an empty scalar where none is written
   */
  record Entry(Located<String> key, Node value) {}

  /**
   * A list.
   *
   * @param items in order
   * @param at the first item, or the brackets
   */
  record Sequence(List<Node> items, Span at) implements Node {
    /** Keeps its own copy. */
    public Sequence {
      items = List.copyOf(items);
    }

    @Override
    public <R> R match(Cases<R> cases) {
      return cases.sequence(this);
    }
  }

  /**
   * A text.
   *
   * @param text without its quotes
   * @param at with its quotes
   * @param quoted whether it stands in quotes or is a block of text
   */
  record Scalar(String text, Span at, boolean quoted) implements Node {
    @Override
    public <R> R match(Cases<R> cases) {
      return cases.scalar(this);
    }

    /** Whether nothing is written. */
    public boolean isEmpty() {
      return !quoted && (text.isEmpty() || text.equals("~") || text.equals("null"));
    }
  }
}
