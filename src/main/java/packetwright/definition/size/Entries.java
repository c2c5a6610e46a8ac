package packetwright.definition.size;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import packetwright.definition.project.Choice;
import packetwright.definition.project.PartDefinition;
import packetwright.definition.project.Project;
import packetwright.definition.shop.Machine;
import packetwright.definition.shop.Shop;
import packetwright.text.formula.Formula;
import packetwright.text.measure.Length;
import packetwright.text.measure.Quantity;
import packetwright.text.measure.Rational;
import packetwright.text.measure.Unit;
import packetwright.text.source.Finding;
import packetwright.text.source.Findings;
import packetwright.text.source.Located;

/** Collects every name of a project and a shop, each once, in the order of the files. */
final class Entries {
  private final Unit unit;
  private final TakenNames taken;
  private final Findings findings;
  private final Map<String, Entry> entries = new LinkedHashMap<>();

  private Entries(Project project, Findings findings) {
    this.unit = project.rule().unit();
    this.taken = new TakenNames(project, findings);
    this.findings = findings;
  }

  static Map<String, Entry> of(
      Project project, Shop shop, Substitution substitution, Findings findings) {
    Entries all = new Entries(project, findings);
    Givens givens = new Givens(project, substitution, findings);
    project.givens().forEach(given -> all.add(givens.entry(given)));
    project.choices().forEach(choice -> all.choice(choice, givens.row(choice)));
    project.sizes().forEach(all::derived);
    project.parts().forEach(all::part);
    all.shop(shop);
    return all.entries;
  }

  /** The cells of a row; where they cannot be read, names without a value. */
  private void choice(Choice choice, Located<String> row) {
    taken.checkChoice(choice.name());
    List<@Nullable Located<Quantity>> cells = choice.rows().getOrDefault(row.value(), List.of());
    for (int i = 0; i < choice.columns().size(); i++) {
      Located<String> column = choice.columns().get(i);
      Located<String> name =
          new Located<>(choice.name().value() + "." + column.value(), column.at());
      Located<Quantity> cell = cells.isEmpty() ? null : cells.get(i);
      Quantity value = cell == null ? null : cell.value();
      add(new Entry(name, Size.Kind.GIVEN, value, null, null, false, choice.about()));
    }
  }

  private void derived(Project.DerivedSize size) {
    Located<Quantity> tolerance = size.tolerance();
    reckoned(
        size.name(),
        size.formula(),
        Size.Kind.DERIVED,
        tolerance == null ? null : tolerance.value(),
        size.measured());
  }

  private void part(PartDefinition part) {
    String name = part.name().value();
    dimension(part, name + ".length", part.length());
    dimension(part, name + ".width", part.width());
    dimension(part, name + ".thickness", part.thickness());
    fixed(
        new Located<>(name + ".count", part.name().at()),
        Size.Kind.PART,
        Quantity.number(Rational.of(part.count())));
    for (PartDefinition.FeatureDefinition feature : part.features()) {
      String prefix = name + "." + feature.name().value() + ".";
      feature.sizes().entrySet().stream()
          .sorted(Map.Entry.comparingByKey())
          .forEach(size -> dimension(part, prefix + size.getKey(), size.getValue()));
    }
  }

  private void dimension(PartDefinition part, String name, Located<String> formula) {
    Located<String> placed = new Located<>(name, part.name().at());
    reckoned(placed, formula, Size.Kind.PART, null, false);
  }

  private void shop(Shop shop) {
    List<Machine> machines =
        shop.machines().values().stream().sorted(Comparator.comparing(Machine::kind)).toList();
    machines.forEach(machine -> lengths(machine.kind().word(), machine.values()));
    lengths(TakenNames.SHOP, shop.allowances());
    lengths(TakenNames.SHOP, shop.standIns());
  }

  private void lengths(String prefix, Map<String, Located<Length>> values) {
    values.entrySet().stream()
        .sorted(Map.Entry.comparingByKey())
        .forEach(
            value ->
                fixed(
                    new Located<>(prefix + "." + value.getKey(), value.getValue().at()),
                    Size.Kind.SHOP,
                    Quantity.of(value.getValue().value())));
  }

  private void fixed(Located<String> name, Size.Kind kind, Quantity value) {
    add(new Entry(name, kind, value, null, null, false, ""));
  }

  private void reckoned(
      Located<String> name,
      Located<String> text,
      Size.Kind kind,
      @Nullable Quantity tolerance,
      boolean isMeasured) {
    Formula formula = findings.take(Formula.parse(text, unit));
    add(new Entry(name, kind, null, formula, tolerance, isMeasured, ""));
  }

  private void add(Entry entry) {
    String name = entry.name().value();
    Entry before = entries.putIfAbsent(name, entry);
    if (before != null) {
      String message = "`" + name + "` is already a name, at line " + before.name().at().line();
      findings.add(
          Finding.error("name-taken", entry.name().at(), message, "give one of them another name"));
    }
    taken.check(entry.name());
  }
}
