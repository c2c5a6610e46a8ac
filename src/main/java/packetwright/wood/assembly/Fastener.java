package packetwright.wood.assembly;

import org.jspecify.annotations.Nullable;
import packetwright.definition.project.Project.Supply;
import packetwright.text.measure.Length;
import packetwright.text.measure.Quantity;
import packetwright.text.measure.Rational;
import packetwright.text.source.Located;

/**
 * A nail, brad or screw, and how it is placed.
 *
 * @param supply its name
 * @param kind what it is
 * @param length head to point
 * @param diameter of the shank; it is taken as a square prism of this side
 * @param spacing two neighbours stand no farther apart, where there is room
 * @param edge along the joint it stands so far from every edge, groove and hole; neighbours stand
 *     at least twice as far apart
 */
public record Fastener(
    String supply, Kind kind, Length length, Length diameter, Length spacing, Length edge) {

  /** Nails, with brads among them, are driven; screws are turned in. */
  public enum Kind {
    /**
     * Edge distance and spacing: common practice, no source. Hold: two and a half times the piece
     * that is held is the laxer of two published rules; NAVEDTRA 14119 (Builder 3 and 2), chapter
     * on fasteners, asks for three times.
     */
    NAIL(Length.ofInches(3, 8), Length.ofInches(3), Rational.of(5, 2)),
    /** Common practice, no source: as deep in the second piece as through the first. */
    SCREW(Length.ofInches(3, 4), Length.ofInches(4), Rational.of(2));

    private final Length edge;
    private final Length spacing;
    private final Rational hold;

    Kind(Length edge, Length spacing, Rational hold) {
      this.edge = edge;
      this.spacing = spacing;
      this.hold = hold;
    }

    /** The shortest that holds a piece of that thickness. */
    public Length shortest(Length held) {
      return new Length(held.inches().times(hold));
    }
  }

  /** Brads up to this length are of 18 gauge, and longer finish nails of 15 gauge. */
  private static final Length LONGEST_BRAD = Length.ofInches(2);

  /** 18 gauge, .0475 in (Steel Wire Gauge; from memory). */
  private static final Length BRAD = Length.ofInches(475, 10_000);

  /** 15 gauge, .072 in (Steel Wire Gauge; from memory). */
  private static final Length FINISH_NAIL = Length.ofInches(72, 1000);

  /** Number 8, .164 in (from memory). */
  private static final Length NUMBER_8 = Length.ofInches(164, 1000);

  /** A supply as a fastener, with what is usual where it does not say; none without a length. */
  public static @Nullable Fastener of(Supply supply, Kind kind) {
    Located<Quantity> length = supply.length();
    Located<Quantity> edge = supply.edge();
    if (length == null || length.value().value().signum() <= 0) {
      return null;
    }
    Length full = length.value().asLength();
    Length usual = kind == Kind.SCREW ? NUMBER_8 : full.isMore(LONGEST_BRAD) ? FINISH_NAIL : BRAD;
    return new Fastener(
        supply.name().value(),
        kind,
        full,
        stated(supply.diameter(), usual),
        stated(supply.spacing(), kind.spacing),
        edge == null ? kind.edge : edge.value().asLength());
  }

  private static Length stated(@Nullable Located<Quantity> quantity, Length usual) {
    return quantity == null || quantity.value().value().signum() <= 0
        ? usual
        : quantity.value().asLength();
  }

  /** How far it keeps from edges: never less than half its own thickness. */
  Length margin() {
    return edge.max(diameter.dividedBy(2));
  }
}
