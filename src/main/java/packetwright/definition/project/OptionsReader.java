package packetwright.definition.project;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import packetwright.definition.shop.MachineKind;
import packetwright.text.document.Node;
import packetwright.text.source.Finding;
import packetwright.text.source.Findings;
import packetwright.text.source.Located;
import packetwright.text.source.NearMiss;

/** Reads {@code options:}, whose shape the schema has checked. */
final class OptionsReader {
  private final Node.Mapping root;
  private final Set<String> known = new LinkedHashSet<>();
  private final Findings findings;

  OptionsReader(Node.Mapping root, Findings findings) {
    this.root = root;
    this.findings = findings;
    root.entries("options").forEach(entry -> known.add(entry.key().value()));
  }

  List<Options.Option> options() {
    List<Options.Option> options = new ArrayList<>();
    for (Node.Entry entry : root.entries("options")) {
      Node.Mapping option = entry.value().asMapping();
      if (option != null) {
        options.add(
            new Options.Option(
                entry.key(),
                option.text("about", ""),
                excluded(entry.key().value(), option),
                needed(option)));
      }
    }
    return options;
  }

  private List<Located<String>> excluded(String name, Node.Mapping option) {
    Set<String> others = new LinkedHashSet<>(known);
    others.remove(name);
    return known(option.texts("excludes"), others, findings);
  }

  /** Those of the names that are options; the others are found. */
  static List<Located<String>> known(
      List<Located<String>> names, Set<String> known, Findings findings) {
    List<Located<String>> good = new ArrayList<>();
    for (Located<String> name : names) {
      if (known.contains(name.value())) {
        good.add(name);
      } else {
        String near = NearMiss.hint(name.value(), known);
        findings.add(
            Finding.error(
                "unknown-option",
                name.at(),
                "the project has no option `" + name.value() + "` to name here",
                near.isEmpty() ? "add it under `options`" : near));
      }
    }
    return good;
  }

  private List<Located<MachineKind>> needed(Node.Mapping option) {
    List<Located<MachineKind>> needed = new ArrayList<>();
    for (Located<String> word : option.texts("needs")) {
      MachineKind kind = MachineKind.of(word.value());
      if (kind != null) {
        needed.add(new Located<>(kind, word.at()));
      } else {
        String near = NearMiss.hint(word.value(), MachineKind.words());
        findings.add(
            Finding.error(
                "unknown-machine",
                word.at(),
                "`" + word.value() + "` is no machine or hand tool",
                near.isEmpty() ? "write a machine or tool, for instance nailer" : near));
      }
    }
    return needed;
  }
}
