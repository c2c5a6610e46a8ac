package packetwright.definition.project;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import packetwright.text.document.Node;
import packetwright.text.source.Finding;
import packetwright.text.source.Findings;
import packetwright.text.source.Located;
import packetwright.text.source.Span;

/**
 * Takes out of a project's files what the chosen options leave out, so that nothing after it knows
 * of options. A row that bears {@code if} or {@code unless} stands or goes; a name may hold a list
 * of such rows, alternatives of which no two ever stand at once.
 */
final class OptionFilter {
  private static final String IF = "if";
  private static final String UNLESS = "unless";

  /** Keys whose values are rows by name. */
  private static final Set<String> TABLES =
      Set.of(
          "givens",
          "sizes",
          "parts",
          "features",
          "blanks",
          "materials",
          "supplies",
          "places",
          "joints");

  /** Keys whose values are rows in order. */
  private static final Set<String> LISTS =
      Set.of("requires", "objectives", "rubric", "accepted", "questions");

  private final Options options;
  private final Findings findings;
  private final Set<String> mentioned = new LinkedHashSet<>();
  private final Map<String, Condition> absent = new LinkedHashMap<>();
  private final Set<String> present = new HashSet<>();

  /** A row, or one of a name's alternatives. */
  private record Row(Node node, Condition condition) {
    /** What it waits for, as written; the row itself where it waits for nothing. */
    Span place() {
      Node.Mapping mapping = node.asMapping();
      if (mapping == null) {
        return node.at();
      }
      return mapping.entries().stream()
          .filter(entry -> Set.of(IF, UNLESS).contains(entry.key().value()))
          .map(entry -> entry.value().at())
          .findFirst()
          .orElse(mapping.at());
    }
  }

  OptionFilter(List<Options.Option> all, Set<String> on, Findings findings) {
    this.options = new Options(all, on, Set.of(), Map.of());
    this.findings = findings;
  }

  /** The options with what this filter has met so far. */
  Options options() {
    Set<String> on = new LinkedHashSet<>(options.names());
    on.retainAll(options.on());
    Map<String, Condition> gone = new LinkedHashMap<>(absent);
    gone.keySet().removeAll(present);
    return new Options(options.all(), on, mentioned, gone);
  }

  /** A file without the rows that do not stand, and without the keys that say so. */
  Node.Mapping plain(Node.Mapping root) {
    return plain(root, "", Condition.ALWAYS);
  }

  /** What is inside a row; {@code prefix} is the row's name and a dot. */
  private Node.Mapping plain(Node.Mapping holder, String prefix, Condition outer) {
    List<Node.Entry> entries = new ArrayList<>();
    for (Node.Entry entry : holder.entries()) {
      String key = entry.key().value();
      Node.Mapping mapping = entry.value().asMapping();
      if (mapping != null && key.equals("assembly")) {
        entries.add(new Node.Entry(entry.key(), plain(mapping, prefix, outer)));
      } else if (mapping != null && TABLES.contains(key)) {
        entries.add(new Node.Entry(entry.key(), table(mapping, prefix, outer)));
      } else if (entry.value() instanceof Node.Sequence list && LISTS.contains(key)) {
        entries.add(new Node.Entry(entry.key(), list(list)));
      } else if (!key.equals(IF) && !key.equals(UNLESS)) {
        entries.add(entry);
      }
    }
    return new Node.Mapping(entries, holder.at(), holder.inBraces());
  }

  private Node.Mapping table(Node.Mapping table, String prefix, Condition outer) {
    List<Node.Entry> standing = new ArrayList<>();
    for (Node.Entry entry : table.entries()) {
      Node row = standing(prefix + entry.key().value(), entry.value(), outer);
      if (row != null) {
        standing.add(new Node.Entry(entry.key(), row));
      }
    }
    return new Node.Mapping(standing, table.at(), table.inBraces());
  }

  /** The row, or the one of its alternatives, that stands; none when none does. */
  private @Nullable Node standing(String name, Node value, Condition outer) {
    List<Row> rows = value.asItems().stream().map(row -> row(row, outer)).toList();
    checkAlternatives(name, rows);
    Node standing = null;
    for (Row row : rows) {
      Node plain = stripped(row, name + ".");
      if (!row.condition().holds(options.on())) {
        absent.putIfAbsent(name, row.condition());
      } else if (standing == null) {
        standing = plain;
      }
    }
    if (standing != null) {
      present.add(name);
    }
    return rows.isEmpty() ? value : standing;
  }

  private Node.Sequence list(Node.Sequence list) {
    List<Node> standing = new ArrayList<>();
    for (Node item : list.items()) {
      Row row = row(item, Condition.ALWAYS);
      if (row.condition().holds(options.on())) {
        standing.add(stripped(row, ""));
      }
    }
    return new Node.Sequence(standing, list.at());
  }

  private Node stripped(Row row, String prefix) {
    Node.Mapping mapping = row.node().asMapping();
    return mapping == null ? row.node() : plain(mapping, prefix, row.condition());
  }

  /** A row with what it and the row around it wait for. */
  private Row row(Node node, Condition outer) {
    Node.Mapping mapping = node.asMapping();
    if (mapping == null) {
      return new Row(node, outer);
    }
    Condition own = new Condition(named(mapping, IF), named(mapping, UNLESS));
    Row row = new Row(node, outer.and(own));
    if (options.isNever(row.condition()) && !options.isNever(outer)) {
      findings.add(
          Finding.error(
              "never-stands",
              row.place(),
              "no choice of options brings this in",
              "take one of the options away from here"));
    }
    return row;
  }

  private Set<String> named(Node.Mapping row, String key) {
    List<Located<String>> known = OptionsReader.known(row.texts(key), options.names(), findings);
    Set<String> names = new LinkedHashSet<>();
    known.forEach(name -> names.add(name.value()));
    mentioned.addAll(names);
    return names;
  }

  private void checkAlternatives(String name, List<Row> rows) {
    for (int i = 0; i < rows.size(); i++) {
      Row row = rows.get(i);
      Condition condition = row.condition();
      if (!options.isNever(condition)
          && rows.subList(0, i).stream()
              .map(earlier -> earlier.condition().and(condition))
              .anyMatch(both -> !options.isNever(both))) {
        findings.add(
            Finding.error(
                "alternatives-together",
                row.place(),
                "this and an earlier alternative of `" + name + "` can both stand at once",
                "write `if` at one of them, and `unless` with the same option at the other"));
      }
    }
  }
}
