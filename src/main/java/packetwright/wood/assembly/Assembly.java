package packetwright.wood.assembly;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import packetwright.definition.project.AssemblyDefinition.Joint;
import packetwright.definition.project.AssemblyDefinition.Place;
import packetwright.definition.project.Project;
import packetwright.definition.size.Evaluated;
import packetwright.definition.size.Sizes;
import packetwright.text.measure.Dimension;
import packetwright.text.measure.Length;
import packetwright.text.source.Checked;
import packetwright.text.source.Finding;
import packetwright.text.source.Findings;
import packetwright.text.source.Located;
import packetwright.wood.part.Box;
import packetwright.wood.part.Part;
import packetwright.wood.part.Point;

/**
 * Every piece where it belongs, checked: no two share a volume, and what slides comes out without
 * touching.
 *
 * @param pieces in the order placed
 */
public record Assembly(List<Placed> pieces) {
  /** Keeps its own copy. */
  public Assembly {
    pieces = List.copyOf(pieces);
  }

  /** The box that the whole fits in; none when nothing is placed. */
  public @Nullable Box outside() {
    Box all = null;
    for (Placed piece : pieces) {
      for (Box box : piece.wood()) {
        all = all == null ? box : around(all, box);
      }
    }
    return all;
  }

  private static Box around(Box a, Box b) {
    Point low = a.low();
    Point high = a.high();
    for (int axis = 0; axis < 3; axis++) {
      low = low.with(axis, low.on(axis).min(b.low().on(axis)));
      high = high.with(axis, high.on(axis).max(b.high().on(axis)));
    }
    return new Box(low, high);
  }

  /** Puts every piece in its place, and looks for what does not fit. */
  public static Checked<Assembly> of(Project project, Sizes sizes, List<Part> parts) {
    Findings findings = new Findings();
    List<Placed> pieces = new ArrayList<>();
    for (Place place : project.assembly().places()) {
      Placed placed = findings.take(placed(place, sizes, parts));
      if (placed != null) {
        pieces.add(placed);
      }
    }
    if (!findings.hasErrors()) {
      findings.addAll(overlaps(project, pieces));
    }
    // What stands where another piece does is in its way too, and has been said.
    if (!findings.hasErrors()) {
      for (Joint joint : project.assembly().joints()) {
        findings.addAll(slides(joint, pieces));
      }
    }
    return findings.checked(new Assembly(pieces));
  }

  private static Checked<Placed> placed(Place place, Sizes sizes, List<Part> parts) {
    String name = place.piece().value();
    Part part =
        parts.stream()
            .filter(p -> p.name().equals(Part.nameOf(name)))
            .findFirst()
            .orElseThrow(() -> new IllegalStateException("no part for piece " + name));
    Findings findings = new Findings();
    List<Length> corner = new ArrayList<>();
    for (Located<String> formula : place.corner()) {
      Evaluated evaluated = findings.take(sizes.evaluate(formula));
      if (evaluated != null && evaluated.value().dimension() == Dimension.LENGTH) {
        corner.add(evaluated.value().asLength());
      } else if (evaluated != null) {
        findings.add(notALength(formula, evaluated));
      }
    }
    Direction inside = Direction.of(place.inside().value());
    Direction top = Direction.of(place.top().value());
    if (inside == null || top == null || inside.axis() == top.axis()) {
      findings.add(
          Finding.error(
              "wrong-direction",
              place.inside().at(),
              "`"
                  + name
                  + "` looks toward `"
                  + place.inside().value()
                  + "` and `"
                  + place.top().value()
                  + "`, which are not two directions at a right angle",
              "write two of +x, -x, +y, -y, +z, -z with different letters"));
      return findings.checked(null);
    }
    if (corner.size() != 3) {
      return findings.checked(null);
    }
    Point at = new Point(corner.get(0), corner.get(1), corner.get(2));
    return findings.checked(new Placed(name, part, at, top.cross(inside), top, inside));
  }

  private static Finding notALength(Located<String> formula, Evaluated evaluated) {
    return Finding.error(
        "not-a-length",
        formula.at(),
        "`"
            + formula.value()
            + "` is "
            + evaluated.value().dimension().phrase()
            + ", and a length is wanted",
        "write a formula that gives a length");
  }

  /** One finding for each piece that is in the way, those in the way of most others first. */
  private static List<Finding> overlaps(Project project, List<Placed> pieces) {
    List<Finding> findings = new ArrayList<>();
    List<Placed> left = new ArrayList<>(pieces);
    while (true) {
      Placed worst = null;
      List<Placed> most = List.of();
      for (Placed piece : left) {
        List<Placed> others = inTheWayOf(piece, left);
        if (others.size() >= Math.max(1, most.size())) {
          worst = piece;
          most = others;
        }
      }
      if (worst == null) {
        return findings;
      }
      findings.add(overlap(project, worst, most));
      left.remove(worst);
    }
  }

  private static List<Placed> inTheWayOf(Placed piece, List<Placed> all) {
    return all.stream()
        .filter(p -> !p.piece().equals(piece.piece()) && shared(piece.wood(), p.wood()) != null)
        .toList();
  }

  private static Finding overlap(Project project, Placed piece, List<Placed> others) {
    Box shared = shared(piece.wood(), others.get(0).wood());
    if (shared == null) {
      throw new IllegalStateException(piece.piece() + " overlaps nothing");
    }
    String names =
        others.stream().map(p -> "`" + p.piece() + "`").collect(Collectors.joining(", "));
    return Finding.error(
        "parts-overlap",
        placeOf(project, piece).piece().at(),
        "`"
            + piece.piece()
            + "` needs the same space as "
            + names
            + ", from x "
            + print(project, shared.low().x())
            + ", y "
            + print(project, shared.low().y())
            + ", z "
            + print(project, shared.low().z()),
        "change its corner, or the joint where they meet");
  }

  private static @Nullable Box shared(List<Box> one, List<Box> other) {
    for (Box a : one) {
      for (Box b : other) {
        Box common = a.common(b);
        if (common != null) {
          return common;
        }
      }
    }
    return null;
  }

  private static Place placeOf(Project project, Placed piece) {
    return project.assembly().places().stream()
        .filter(p -> p.piece().value().equals(piece.piece()))
        .findFirst()
        .orElseThrow();
  }

  /** A sliding piece, drawn out along its way to beyond everything, must meet no wood. */
  private static List<Finding> slides(Joint joint, List<Placed> pieces) {
    Direction out = joint.out() == null ? null : Direction.of(joint.out());
    if (!joint.kind().equals("slide") || out == null) {
      return List.of();
    }
    String name = joint.pieces().get(0).value();
    List<Finding> findings = new ArrayList<>();
    for (Placed slider : pieces) {
      if (!slider.piece().equals(name)) {
        continue;
      }
      List<Box> way = slider.wood().stream().map(box -> swept(box, out)).toList();
      for (Placed other : pieces) {
        if (!other.piece().equals(name) && shared(way, other.wood()) != null) {
          findings.add(
              Finding.error(
                  "slide-blocked",
                  joint.name().at(),
                  "`"
                      + name
                      + "` cannot slide out toward "
                      + joint.out()
                      + ": `"
                      + other.piece()
                      + "` is in the way",
                  "lower `" + other.piece() + "`, or let it slide out the other way"));
        }
      }
    }
    return findings;
  }

  private static Box swept(Box box, Direction out) {
    Length far = Length.ofInches(out.isPositive() ? 100_000 : -100_000);
    return out.isPositive()
        ? new Box(box.low(), box.high().with(out.axis(), far))
        : new Box(box.low().with(out.axis(), far), box.high());
  }

  private static String print(Project project, Length length) {
    return project.rule().printExactly(length).toString();
  }
}
