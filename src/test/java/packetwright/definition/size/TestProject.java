package packetwright.definition.size;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import packetwright.definition.project.AssemblyDefinition;
import packetwright.definition.project.Options;
import packetwright.definition.project.PartDefinition;
import packetwright.definition.project.Project;
import packetwright.definition.project.QuizDefinition;
import packetwright.definition.project.Side;
import packetwright.definition.shop.Machine;
import packetwright.definition.shop.MachineKind;
import packetwright.definition.shop.Shop;
import packetwright.text.measure.Length;
import packetwright.text.measure.Quantity;
import packetwright.text.measure.QuantityReader;
import packetwright.text.measure.Rational;
import packetwright.text.measure.Rule;
import packetwright.text.measure.Unit;
import packetwright.text.source.Checked;
import packetwright.text.source.Located;
import packetwright.text.source.Span;

/** Builds projects for tests; each thing said stands on a line of its own, from line 1. */
final class TestProject {
  private final Unit unit;
  private final List<Project.Given> givens = new ArrayList<>();
  private final List<Project.DerivedSize> sizes = new ArrayList<>();
  private final List<Project.Requirement> requires = new ArrayList<>();
  private final List<PartDefinition> parts = new ArrayList<>();
  private final Map<String, Located<Quantity>> substitution = new LinkedHashMap<>();
  private int line;

  TestProject(Unit unit) {
    this.unit = unit;
  }

  static TestProject inInches() {
    return new TestProject(Unit.INCH);
  }

  TestProject given(String name, String value) {
    return given(name, value, null, null, null);
  }

  TestProject given(
      String name,
      String value,
      @Nullable String from,
      @Nullable String to,
      @Nullable String tolerance) {
    line++;
    givens.add(
        new Project.Given(
            at(name), quantity(value), optional(from), optional(to), optional(tolerance), ""));
    return this;
  }

  TestProject size(String name, String formula) {
    return size(name, formula, null, false);
  }

  TestProject size(String name, String formula, @Nullable String tolerance, boolean measured) {
    line++;
    sizes.add(new Project.DerivedSize(at(name), at(formula), optional(tolerance), measured));
    return this;
  }

  TestProject requires(String that, String or) {
    line++;
    requires.add(new Project.Requirement(at(that), or));
    return this;
  }

  /** A part with one groove, so wide and so deep. */
  TestProject part(String name, String length, String width, String thickness, String groove) {
    line++;
    PartDefinition.FeatureDefinition feature =
        new PartDefinition.FeatureDefinition(
            at("lid_groove"),
            PartDefinition.FeatureKind.GROOVE,
            at("along"),
            Side.INSIDE,
            Side.TOP,
            Map.of("width", at(groove), "depth", at(groove)));
    parts.add(
        new PartDefinition(
            at(name),
            "A",
            2,
            false,
            at("wall"),
            at(length),
            at(width),
            at(thickness),
            List.of(feature)));
    return this;
  }

  TestProject set(String name, String value) {
    substitution.put(
        name, new Located<>(quantity(value).value(), new Span("--set " + name, 1, 1, 1)));
    return this;
  }

  Checked<Sizes> evaluate() {
    return Sizes.of(project(), shop(), Substitution.of(substitution));
  }

  Sizes good() {
    return evaluate().value();
  }

  private Project project() {
    return new Project(
        "test",
        "Test",
        "",
        new Rule(unit == Unit.INCH ? Rational.of(1, 32) : Rational.ONE, unit),
        givens,
        List.of(),
        sizes,
        requires,
        parts,
        List.of(),
        List.of(),
        List.of(),
        new AssemblyDefinition(List.of(), List.of()),
        Options.NONE,
        List.of(),
        List.of(),
        QuizDefinition.NONE,
        List.of());
  }

  private static Shop shop() {
    Span at = Span.startOf("shop.yaml");
    Machine saw =
        new Machine(
            MachineKind.TABLE_SAW,
            1,
            Map.of(
                "kerf", new Located<>(Length.ofInches(1, 8), at),
                "rip_shortest", new Located<>(Length.ofInches(12), at)));
    return new Shop(
        "Nowhere",
        Unit.INCH,
        Map.of(MachineKind.TABLE_SAW, saw),
        Set.of(),
        new Shop.CutterSet(Length.ZERO, List.of(), List.of()),
        Set.of(),
        Map.of("end_trim", new Located<>(Length.ofInches(1), at)),
        List.of());
  }

  private Located<String> at(String text) {
    return new Located<>(text, new Span("project.yaml", line, 1, Math.max(1, text.length())));
  }

  private Located<Quantity> quantity(String text) {
    boolean isNumber = text.endsWith("%");
    Unit bare = text.endsWith("deg") ? Unit.DEGREE : isNumber ? Unit.ONE : unit;
    return new Located<>(QuantityReader.read(at(text), bare).value(), at(text).at());
  }

  private @Nullable Located<Quantity> optional(@Nullable String text) {
    return text == null ? null : quantity(text);
  }
}
