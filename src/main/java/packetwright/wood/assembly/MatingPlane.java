package packetwright.wood.assembly;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import packetwright.definition.project.AssemblyDefinition.Joint;
import packetwright.definition.project.AssemblyDefinition.Place;
import packetwright.definition.project.Project;
import packetwright.text.formula.Inequality;
import packetwright.text.measure.Length;
import packetwright.text.measure.Rational;
import packetwright.text.source.Finding;
import packetwright.wood.part.Box;
import packetwright.wood.part.Removal.Slope;

/**
 * Whether a tilted piece lies on the slopes of what it rests on. Its lower face runs through the
 * line that it is turned about, so that the face's plane is exact.
 */
final class MatingPlane {
  private final Project project;
  private final Joint joint;
  private final Placed piece;
  private final Tilt tilt;

  private MatingPlane(Project project, Joint joint, Placed piece, Tilt tilt) {
    this.project = project;
    this.joint = joint;
    this.piece = piece;
    this.tilt = tilt;
  }

  static List<Finding> check(Project project, List<Placed> pieces) {
    List<Finding> findings = new ArrayList<>();
    for (Placed piece : pieces) {
      Tilt tilt = piece.tilt();
      if (tilt == null) {
        continue;
      }
      List<Joint> rests =
          project.assembly().joints().stream()
              .filter(j -> j.kind().equals("rest"))
              .filter(j -> j.pieces().get(0).value().equals(piece.piece()))
              .toList();
      if (rests.isEmpty()) {
        findings.add(unsupported(project, piece));
      }
      for (Joint rest : rests) {
        findings.addAll(new MatingPlane(project, rest, piece, tilt).supports(pieces));
      }
    }
    return findings;
  }

  private static Finding unsupported(Project project, Placed piece) {
    Place place =
        project.assembly().places().stream()
            .filter(p -> p.piece().value().equals(piece.piece()))
            .findFirst()
            .orElseThrow();
    return Finding.error(
        "tilt-without-rest",
        place.piece().at(),
        "`" + piece.piece() + "` is tilted, and no joint says what it lies on",
        "add a joint `{rest: [" + piece.piece() + ", ...]}` with the pieces that carry it");
  }

  private List<Finding> supports(List<Placed> pieces) {
    List<Finding> findings = new ArrayList<>();
    for (int i = 1; i < joint.pieces().size(); i++) {
      String name = joint.pieces().get(i).value();
      pieces.stream()
          .filter(p -> p.piece().equals(name) && p.tilt() == null)
          .map(this::support)
          .filter(java.util.Objects::nonNull)
          .forEach(findings::add);
    }
    return findings;
  }

  /** The axis that the piece's thickness lay along before it was tilted. */
  private int upright() {
    return piece.inside().axis();
  }

  /** The axis that its face lay along, across the line that it is turned about. */
  private int level() {
    return 3 - upright() - tilt.about().axis();
  }

  /** How much its lower face rises along {@link #upright} for each inch along {@link #level}. */
  private Rational steepness() {
    boolean isCyclic = (tilt.about().axis() + 1) % 3 == level();
    Rational slope = tilt.rise().dividedBy(tilt.run());
    return isCyclic == tilt.about().isPositive() ? slope : slope.negated();
  }

  /** None when one of its slopes carries the piece; else what is nearest to that. */
  private @Nullable Finding support(Placed other) {
    Finding nearest = null;
    for (Slope slope : other.slopes()) {
      Inequality cut = other.inAssembly(slope);
      Rational up = cut.factors().get(upright());
      boolean isAcross = cut.factors().get(tilt.about().axis()).signum() != 0;
      if (isAcross || up.signum() <= 0) {
        continue;
      }
      Rational steep = cut.factors().get(level()).dividedBy(up).negated();
      Length over = over(cut, steep, up);
      if (!steep.equals(steepness())) {
        nearest = nearest == null ? otherSlope(other, steep) : nearest;
      } else if (over.signum() != 0) {
        nearest = otherHeight(other, over);
      } else if (!isAbove(other, slope)) {
        nearest = beside(other);
      } else {
        return null;
      }
    }
    return nearest == null ? noSlope(other) : nearest;
  }

  /** How far the line that the piece is turned about lies above a slope; less than 0 below. */
  private Length over(Inequality cut, Rational steep, Rational up) {
    Rational height =
        cut.limit().dividedBy(up).plus(steep.times(piece.corner().on(level()).inches()));
    return piece.corner().on(upright()).minus(new Length(height));
  }

  /**
   * Whether the lower face and the slope have a surface in common. Down the slope the face reaches
   * its own extent times a cosine, which is compared by its square.
   */
  private boolean isAbove(Placed other, Slope slope) {
    Box local = slope.around(other.solid().block());
    if (local == null) {
      return false;
    }
    Box cut = other.inAssembly(local);
    Box block = piece.block();
    int about = tilt.about().axis();
    Length begin = piece.corner().on(level());
    Length ahead = cut.low().on(level()).minus(begin);
    return block.low().on(about).isLess(cut.high().on(about))
        && cut.low().on(about).isLess(block.high().on(about))
        && cut.high().on(level()).isMore(begin)
        && (ahead.signum() <= 0 || reachesBeyond(ahead, block.extent(level())));
  }

  private boolean reachesBeyond(Length ahead, Length extent) {
    Rational run = square(tilt.run());
    Rational slant = run.plus(square(tilt.rise()));
    return square(ahead).times(slant).compareTo(square(extent).times(run)) < 0;
  }

  private static Rational square(Length length) {
    return length.inches().times(length.inches());
  }

  // ---- words

  private Finding otherSlope(Placed other, Rational steep) {
    Length rise = new Length(steep.times(tilt.run().inches())).magnitude();
    boolean isOtherWay = steep.signum() != steepness().signum();
    return mismatch(
        names()
            + " rises "
            + print(tilt.rise())
            + " over "
            + print(tilt.run())
            + ", and `"
            + other.piece()
            + "` is cut to rise "
            + print(rise)
            + (isOtherWay ? " the other way" : " over that"),
        isOtherWay
            ? "turn it about the other direction of the axis"
            : "give both the same slope: `rise` and `run` are those of the cut");
  }

  private Finding otherHeight(Placed other, Length over) {
    String by = print(over.magnitude());
    boolean isOver = over.signum() > 0;
    String axis = "xyz".substring(upright(), upright() + 1);
    return mismatch(
        names()
            + " lies "
            + by
            + (isOver ? " above" : " below")
            + " the slope of `"
            + other.piece()
            + "`, along "
            + axis,
        (isOver ? "lower" : "raise") + " its corner by " + by + " along " + axis);
  }

  private Finding beside(Placed other) {
    return mismatch(
        names() + " lies in the plane of `" + other.piece() + "` and beside it",
        "move its corner so that it lies over `" + other.piece() + "`");
  }

  private Finding noSlope(Placed other) {
    return mismatch(
        "`" + other.piece() + "` has no slope that " + names() + " could lie on",
        "cut a slope on it, or leave it out of the joint");
  }

  private Finding mismatch(String message, String hint) {
    return Finding.error("tilt-mismatch", joint.name().at(), message, hint);
  }

  private String names() {
    return "`" + piece.piece() + "`";
  }

  private String print(Length length) {
    return project.rule().printExactly(length).toString();
  }
}
