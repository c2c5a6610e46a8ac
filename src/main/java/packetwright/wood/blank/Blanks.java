package packetwright.wood.blank;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import packetwright.definition.procedure.Operation;
import packetwright.definition.procedure.Procedure;
import packetwright.definition.procedure.Verb;
import packetwright.definition.project.Project;
import packetwright.definition.project.Project.BlankDefinition;
import packetwright.definition.project.Project.Bought;
import packetwright.definition.project.Project.Material;
import packetwright.definition.shop.MachineKind;
import packetwright.definition.shop.Shop;
import packetwright.definition.size.Evaluated;
import packetwright.definition.size.Size;
import packetwright.definition.size.Sizes;
import packetwright.text.formula.Derivation;
import packetwright.text.measure.Length;
import packetwright.text.measure.Quantity;
import packetwright.text.source.Checked;
import packetwright.text.source.Finding;
import packetwright.text.source.Findings;
import packetwright.text.source.Located;
import packetwright.wood.blank.Blank.Boards;
import packetwright.wood.blank.Blank.Item;
import packetwright.wood.blank.Blank.Reckoning;
import packetwright.wood.part.Part;

/** Reckons how large each blank must be for the procedure that cuts it up. */
public final class Blanks {
  private final Project project;
  private final Shop shop;
  private final Sizes sizes;
  private final Map<String, Part> parts = new HashMap<>();
  private final List<Operation> operations;
  private final Findings findings = new Findings();

  private Blanks(Project project, Procedure procedure, Shop shop, Sizes sizes, List<Part> parts) {
    this.project = project;
    this.shop = shop;
    this.sizes = sizes;
    parts.forEach(part -> this.parts.put(part.name(), part));
    this.operations = procedure.steps().stream().flatMap(s -> s.operations().stream()).toList();
  }

  /** The blanks in the order defined. */
  public static Checked<List<Blank>> of(
      Project project, Procedure procedure, Shop shop, Sizes sizes, List<Part> parts) {
    Blanks blanks = new Blanks(project, procedure, shop, sizes, parts);
    List<Blank> made = new ArrayList<>();
    for (BlankDefinition definition : project.blanks()) {
      made.add(blanks.blank(definition));
    }
    return blanks.findings.checked(made);
  }

  /**
   * The blanks' rough sizes under the names that text uses: {@code wall.rough_length}; of a
   * glued-up one also the rough width of each board.
   */
  public static List<Size> sizes(List<Blank> blanks) {
    List<Size> named = new ArrayList<>();
    for (Blank blank : blanks) {
      named.add(roughSize(blank.name() + ".rough_length", blank.length().total()));
      named.add(roughSize(blank.name() + ".rough_width", blank.width().total()));
      named.add(roughSize(blank.name() + ".rough_thickness", blank.thickness()));
      if (blank.isGluedUp()) {
        named.add(roughSize(blank.name() + ".board_width", blank.boards().width().total()));
      }
    }
    return named;
  }

  private static Size roughSize(String name, Length length) {
    Quantity value = Quantity.of(length);
    return new Size(
        name,
        Size.Kind.BLANK,
        value,
        new Derivation(name, List.of(new Derivation.Term("", value))),
        "",
        null,
        value,
        value,
        false,
        Set.of(),
        Set.of());
  }

  private Blank blank(BlankDefinition definition) {
    String name = definition.name().value();
    List<String> pieces = pieces(definition);
    Material material = material(definition);
    Reckoning width = width(definition, pieces);
    Blank blank =
        new Blank(
            name,
            definition.material().value(),
            definition.bought(),
            pieces,
            length(definition, pieces),
            width,
            thickness(definition, material, pieces),
            boards(definition, material, width),
            definition.name().at());
    if (definition.bought() == Bought.SHEET) {
      // A blank may lie either way on a sheet.
      List<Length> sheet = lengths(material.sheet());
      requireStock(blank, "long", blank.length().total(), longest(sheet));
      requireStock(blank, "wide", blank.width().total(), sheet.stream().reduce(Length::min));
    } else {
      requireStock(blank, "long", blank.length().total(), longest(lengths(material.lengths())));
      Length wide = blank.boards().width().total();
      requireStock(blank, "wide", wide, longest(lengths(material.widths())));
    }
    return blank;
  }

  private Boards boards(BlankDefinition definition, Material material, Reckoning width) {
    List<Located<Length>> atHand =
        definition.bought() == Bought.SHEET
            ? List.of()
            : material.boards().stream()
                .map(b -> new Located<>(b.value().asLength(), b.at()))
                .toList();
    int count = definition.boards();
    if (count == 1) {
      return new Boards(1, width, atHand);
    }
    if (definition.bought() == Bought.SHEET) {
      findings.add(
          Finding.error(
              "glue-up",
              definition.name().at(),
              "`" + definition.name().value() + "` is cut from a sheet, and a sheet is one piece",
              "delete `boards`, or choose boards as the material"));
    }
    // The boards are glued before anything is cut off: their edges are all that is lost.
    Length joints = shop.allowance("edge_joint").times(edgesJointed(definition));
    Reckoning each =
        new Reckoning(
            List.of(
                new Item("blank.share", "", width.total().dividedBy(count)),
                new Item("blank.edges_jointed", "", joints.dividedBy(count))));
    return new Boards(count, each, atHand);
  }

  /** How many edges of a blank's boards are jointed before they are glued. */
  private int edgesJointed(BlankDefinition definition) {
    String name = definition.name().value();
    int edges = 0;
    for (Operation operation : operations) {
      if (isGlueUp(operation, name)) {
        return edges;
      }
      if (operation.verb().value() == Verb.JOINT_EDGE) {
        for (Located<String> target : operation.targets()) {
          edges += target.value().equals(name) ? definition.boards() : 0;
          edges += target.value().startsWith(name + " ") ? 1 : 0;
        }
      }
    }
    return edges;
  }

  private static boolean isGlueUp(Operation operation, String blank) {
    Located<String> makes = operation.makes();
    return operation.verb().value() == Verb.GLUE && makes != null && makes.value().equals(blank);
  }

  private static List<Length> lengths(List<Located<Quantity>> sold) {
    return sold.stream().map(q -> q.value().asLength()).toList();
  }

  private static Optional<Length> longest(List<Length> lengths) {
    return lengths.stream().reduce(Length::max);
  }

  /** Notes an error where a blank cannot be had out of any stock that is sold. */
  private void requireStock(Blank blank, String way, Length wanted, Optional<Length> sold) {
    if (sold.isPresent() && wanted.isMore(sold.get())) {
      findings.add(
          Finding.error(
              "blank-larger-than-stock",
              blank.at(),
              "blank `%s` is to be %s %s, and `%s` is sold up to %s %s"
                  .formatted(
                      blank.name(),
                      project.rule().printExactly(wanted),
                      way,
                      blank.material(),
                      project.rule().printExactly(sold.get()),
                      way),
              "choose larger stock, or change what the material says is sold"));
    }
  }

  private Material material(BlankDefinition definition) {
    return project.materials().stream()
        .filter(m -> m.name().value().equals(definition.material().value()))
        .findFirst()
        .orElseThrow();
  }

  /** {@code [side, side, lid]} as {@code [side 1, side 2, lid]}. */
  private List<String> pieces(BlankDefinition definition) {
    List<String> pieces = new ArrayList<>();
    Map<String, Integer> seen = new HashMap<>();
    for (Located<String> entry : definition.cut()) {
      Part part = parts.get(entry.value());
      if (part == null) {
        throw new IllegalStateException("no part " + entry.value());
      }
      int number = seen.merge(part.name(), 1, Integer::sum);
      pieces.add(part.pieceName(number));
    }
    return pieces;
  }

  private Part partOf(String piece) {
    Part part = parts.get(Part.nameOf(piece));
    if (part == null) {
      throw new IllegalStateException("no part for piece " + piece);
    }
    return part;
  }

  private Length thickness(BlankDefinition definition, Material material, List<String> pieces) {
    Length thickest =
        pieces.stream().map(p -> partOf(p).solid().thickness()).reduce(Length.ZERO, Length::max);
    if (definition.bought() == Bought.SHEET) {
      return thickest; // a sheet is not planed: it is as thick as it was measured
    }
    Length thickness = material.thickness().value().asLength();
    if (thickness.isLess(thickest)) {
      findings.add(
          Finding.error(
              "part-thicker-than-blank",
              definition.name().at(),
              "`"
                  + definition.name().value()
                  + "` is "
                  + project.rule().printExactly(thickness)
                  + " thick as bought, and its parts are "
                  + project.rule().printExactly(thickest),
              "choose a thicker material, or make the parts thinner"));
    }
    return thickness;
  }

  private Reckoning length(BlankDefinition definition, List<String> pieces) {
    boolean isSheet = definition.bought() == Bought.SHEET;
    List<Item> items = new ArrayList<>();
    for (Operation operation : operations) {
      if (isOf(operation, Verb.SQUARE_END, definition)) {
        Located<MachineKind> at = operation.at();
        String trim = endTrim(at == null ? MachineKind.MITER_SAW : at.value(), isSheet);
        items.add(new Item("blank." + trim, "", shop.allowance(trim)));
      }
    }
    boolean endsInSection = false;
    for (String piece : pieces) {
      Located<String> section = definition.sections().get(Part.nameOf(piece));
      endsInSection = section != null;
      if (section != null) {
        items.add(new Item("blank.section", piece, evaluate(section)));
        continue;
      }
      Part part = partOf(piece);
      items.add(new Item("blank.piece", piece, part.solid().length()));
      Operation cut = crosscut(part.name());
      Located<String> leave = cut == null ? null : cut.leave();
      if (leave != null) {
        items.add(new Item("blank.leave", piece, evaluate(leave)));
      }
      items.add(new Item("blank.kerf", piece, kerf(cut, MachineKind.MITER_SAW)));
    }
    if (!isSheet && pieces.stream().anyMatch(p -> isFitted(Part.nameOf(p) + ".length"))) {
      items.add(new Item("blank.fit_reserve", "", shop.allowance("fit_reserve")));
    }
    // The last piece must be held; a section long enough for a machine leaves enough for that.
    if (!endsInSection) {
      String hold = isSheet ? "sheet_hold" : "hold_reserve";
      items.add(new Item("blank." + hold, "", shop.allowance(hold)));
    }
    return new Reckoning(items);
  }

  private Reckoning width(BlankDefinition definition, List<String> pieces) {
    List<Item> items = new ArrayList<>();
    Operation rip = first(Verb.RIP, definition.name().value());
    Located<String> to = rip == null ? null : rip.to();
    Length widest =
        pieces.stream().map(p -> partOf(p).solid().width()).reduce(Length.ZERO, Length::max);
    items.add(new Item("blank.width", "", to == null ? widest : evaluate(to)));
    Located<String> leave = rip == null ? null : rip.leave();
    if (leave != null) {
      items.add(new Item("blank.leave_wide", "", evaluate(leave)));
    }
    if (isJointed(definition)) {
      items.add(new Item("blank.edge_joint", "", shop.allowance("edge_joint")));
    }
    // Where nothing rips it to width, the room for it stays, so that the run shows that it is
    // missing.
    if (definition.bought() != Bought.SURFACED_4) {
      items.add(new Item("blank.kerf", "", kerf(rip, MachineKind.TABLE_SAW)));
      String strip = definition.bought() == Bought.SHEET ? "sheet_strip" : "falling_strip";
      items.add(new Item("blank." + strip, "", shop.allowance(strip)));
    }
    return new Reckoning(items);
  }

  /** Whether an edge of the whole blank is jointed; of a glued-up one, after the glue. */
  private boolean isJointed(BlankDefinition definition) {
    String name = definition.name().value();
    boolean isWhole = definition.boards() == 1;
    for (Operation operation : operations) {
      isWhole |= isGlueUp(operation, name);
      if (isWhole
          && operation.verb().value() == Verb.JOINT_EDGE
          && operation.targets().stream().anyMatch(t -> t.value().equals(name))) {
        return true;
      }
    }
    return false;
  }

  /** The allowance that squaring an end with a tool takes off: a plane only takes shavings. */
  public static String endTrim(MachineKind tool, boolean isSheet) {
    boolean isPlane = tool == MachineKind.BLOCK_PLANE || tool == MachineKind.BENCH_PLANE;
    return isPlane ? "plane_trim" : isSheet ? "sheet_trim" : "end_trim";
  }

  private static boolean isOf(Operation operation, Verb verb, BlankDefinition definition) {
    return operation.verb().value() == verb
        && operation.targets().stream().anyMatch(t -> t.value().equals(definition.name().value()));
  }

  private @Nullable Operation first(Verb verb, String target) {
    return operations.stream()
        .filter(o -> o.verb().value() == verb)
        .filter(o -> o.targets().stream().anyMatch(t -> t.value().equals(target)))
        .findFirst()
        .orElse(null);
  }

  private @Nullable Operation crosscut(String part) {
    return operations.stream()
        .filter(o -> o.verb().value() == Verb.CROSSCUT)
        .filter(o -> o.targets().stream().anyMatch(t -> Part.nameOf(t.value()).equals(part)))
        .findFirst()
        .orElse(null);
  }

  private Length kerf(@Nullable Operation operation, MachineKind otherwise) {
    Located<MachineKind> at = operation == null ? null : operation.at();
    return shop.kerf(at == null ? otherwise : at.value());
  }

  private boolean isFitted(String size) {
    return !sizes.get(size).fitted().isEmpty();
  }

  /** A formula's length; what is no length, or less than one, is a finding. */
  private Length evaluate(Located<String> formula) {
    Evaluated evaluated = findings.take(sizes.evaluateLength(formula));
    if (evaluated == null) {
      return Length.ZERO;
    }
    if (evaluated.length().signum() < 0) {
      findings.add(
          Finding.error(
              "setting-without-size",
              formula.at(),
              "`%s` comes to %s, and a blank cannot be reckoned from that"
                  .formatted(formula.value(), project.rule().printExactly(evaluated.length())),
              "write a size of more than 0"));
    }
    return evaluated.length().max(Length.ZERO);
  }
}
