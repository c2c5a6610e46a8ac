package packetwright.definition.project;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import packetwright.text.document.Node;
import packetwright.text.measure.Quantity;
import packetwright.text.measure.QuantityFields;
import packetwright.text.measure.Unit;
import packetwright.text.source.Finding;
import packetwright.text.source.Findings;
import packetwright.text.source.Located;
import packetwright.text.source.NearMiss;

/** Reads blanks, materials and supplies, whose shape the schema has checked. */
final class StockReader {
  private final Node.Mapping root;
  private final QuantityFields fields;
  private final Findings findings;

  StockReader(Node.Mapping root, QuantityFields fields, Findings findings) {
    this.root = root;
    this.fields = fields;
    this.findings = findings;
  }

  List<Project.BlankDefinition> blanks(List<PartDefinition> parts) {
    List<Project.BlankDefinition> blanks = new ArrayList<>();
    for (Node.Entry entry : root.entries("blanks")) {
      Node.Mapping blank = entry.value().asMapping();
      Project.BlankDefinition read = blank == null ? null : blank(entry.key(), blank);
      if (read != null) {
        blanks.add(read);
        checkCounts(read, parts);
      }
    }
    return blanks;
  }

  private Project.@Nullable BlankDefinition blank(Located<String> name, Node.Mapping blank) {
    Located<String> material = blank.text("material");
    Project.Bought bought = constant(Project.Bought.values(), blank.text("bought"));
    Map<String, Located<String>> sections = new LinkedHashMap<>();
    for (Node.Entry section : blank.entries("sections")) {
      checkKnown("part", section.key(), names("parts"));
      Located<String> formula = section.value().asText();
      if (formula != null) {
        sections.put(section.key().value(), formula);
      }
    }
    List<Located<String>> cut = blank.texts("cut");
    cut.forEach(part -> checkKnown("part", part, names("parts")));
    if (material == null || bought == null) {
      return null;
    }
    checkKnown("material", material, names("materials"));
    return new Project.BlankDefinition(
        name, material, bought, blank.whole("boards", 1), cut, sections);
  }

  /** Every piece of a part must come out of the part's own blank, no more and no fewer. */
  private void checkCounts(Project.BlankDefinition blank, List<PartDefinition> parts) {
    List<String> cut = blank.cut().stream().map(Located::value).toList();
    if (!names("parts").containsAll(cut)) {
      return; // A misspelt part would be missed here once more.
    }
    for (PartDefinition part : parts) {
      int times = Collections.frequency(cut, part.name().value());
      boolean isOwn = part.blank().value().equals(blank.name().value());
      if (isOwn && times != part.count()) {
        findings.add(wrongCount(blank.name(), part, times));
      } else if (!isOwn && times > 0 && names("blanks").contains(part.blank().value())) {
        findings.add(otherBlank(blank.name(), part));
      }
    }
  }

  private static Finding wrongCount(Located<String> blank, PartDefinition part, int times) {
    String name = part.name().value();
    String found = times == 0 ? "not at all" : times == 1 ? "once" : times + " times";
    return Finding.error(
        "cut-count",
        blank.at(),
        "`" + blank.value() + "` cuts `" + name + "` " + found + "; its count is " + part.count(),
        "write `" + name + "` under `cut` once for each piece");
  }

  private static Finding otherBlank(Located<String> blank, PartDefinition part) {
    String name = part.name().value();
    return Finding.error(
        "cut-count",
        blank.at(),
        "`"
            + blank.value()
            + "` cuts `"
            + name
            + "`, whose blank is `"
            + part.blank().value()
            + "`",
        "take `" + name + "` out of `cut`, or write `blank: " + blank.value() + "` at the part");
  }

  private List<String> names(String key) {
    return root.entries(key).stream().map(e -> e.key().value()).toList();
  }

  private void checkKnown(String what, Located<String> name, List<String> known) {
    if (!known.contains(name.value())) {
      String message = "there is no " + what + " `" + name.value() + "`";
      String hint = NearMiss.hint(name.value(), known);
      findings.add(
          what.equals("part")
              ? Finding.error("unknown-part", name.at(), message, hint)
              : Finding.error("unknown-material", name.at(), message, hint));
    }
  }

  List<Project.Material> materials() {
    List<Project.Material> materials = new ArrayList<>();
    for (Node.Entry entry : root.entries("materials")) {
      Node.Mapping material = entry.value().asMapping();
      if (material != null) {
        Located<Quantity> thickness = fields.extent(material, "thickness");
        Project.Sold sold = constant(Project.Sold.values(), material.text("sold"));
        List<Located<Quantity>> widths = fields.extents(material, "widths");
        List<Located<Quantity>> lengths = fields.extents(material, "lengths");
        List<Located<Quantity>> sheet = fields.extents(material, "sheet");
        Located<Quantity> price = fields.amount(material, "price", Unit.MONEY);
        if (thickness != null && sold != null) {
          materials.add(
              new Project.Material(
                  entry.key(),
                  thickness,
                  fields.extents(material, "boards"),
                  widths,
                  lengths,
                  sheet,
                  sold,
                  price));
        }
      }
    }
    return materials;
  }

  List<Project.Supply> supplies() {
    List<Project.Supply> supplies = new ArrayList<>();
    for (Node.Entry entry : root.entries("supplies")) {
      Node.Mapping supply = entry.value().asMapping();
      if (supply != null) {
        supplies.add(
            new Project.Supply(
                entry.key(),
                fields.extent(supply, "length"),
                fields.extent(supply, "diameter"),
                fields.extent(supply, "spacing"),
                fields.extent(supply, "edge"),
                fields.amount(supply, "pack", Unit.ONE, Unit.FLUID_OUNCE),
                fields.amount(supply, "price", Unit.MONEY),
                fields.amount(supply, "use", Unit.ONE, Unit.FLUID_OUNCE),
                grits(supply)));
      }
    }
    return supplies;
  }

  /** The schema has refused what is no whole number. */
  private static List<Integer> grits(Node.Mapping supply) {
    return supply.texts("grits").stream()
        .map(Located::value)
        .filter(text -> text.matches("[0-9]{1,4}"))
        .map(Integer::valueOf)
        .toList();
  }

  /** The constant that a word names, or none; the schema has refused an unknown word. */
  private static <E extends Enum<E>> @Nullable E constant(
      E[] constants, @Nullable Located<String> word) {
    return word == null
        ? null
        : Arrays.stream(constants)
            .filter(c -> c.name().toLowerCase(Locale.ROOT).equals(word.value()))
            .findFirst()
            .orElse(null);
  }
}
