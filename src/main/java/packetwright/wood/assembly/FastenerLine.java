package packetwright.wood.assembly;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import packetwright.definition.project.Side;
import packetwright.text.formula.Inequality;
import packetwright.text.measure.Length;
import packetwright.text.measure.Rational;
import packetwright.text.measure.Rule;
import packetwright.wood.assembly.Fastening.Line;
import packetwright.wood.part.Box;
import packetwright.wood.part.Point;
import packetwright.wood.part.Removal;
import packetwright.wood.part.Removal.Slope;

/**
 * Places for fasteners on the middle line of a contact. The first and the last stand as near to the
 * ends as the edge distance lets them, on a graduation that is easily read; the others between them
 * at most the spacing apart. A place that is not clean gives way to the nearest clean one within
 * half a space, or is left out.
 */
final class FastenerLine {
  /** A graduation of this or less is easily read; no place moves by as much for it. */
  private static final Length EASY = Length.ofInches(1, 8);

  private final Contact contact;
  private final Fastener fastener;
  private final Rule rule;
  private final Length half;

  FastenerLine(Contact contact, Fastener fastener, Rule rule) {
    this.contact = contact;
    this.fastener = fastener;
    this.rule = rule;
    this.half = fastener.diameter().dividedBy(2);
  }

  /** Along the contact, in the assembly, least first; empty when there is no room. */
  List<Length> places(List<Box> taken) {
    int along = contact.along();
    Clean clean = Clean.between(contact.low().on(along), contact.high().on(along));
    Length place = contact.place();
    clean = clean(clean, contact.driven(), contact.entry(), place);
    clean = clean(clean, contact.into(), place, contact.tip(fastener.length()));
    for (Box box : taken) {
      clean = clean(clean, box, contact.entry(), contact.tip(fastener.length()));
    }
    return clean.isEmpty() ? List.of() : spread(clean);
  }

  /** Places at which the fastener, from one coordinate to another, runs in a piece's wood. */
  private Clean clean(Clean places, Placed piece, Length from, Length to) {
    Box block = piece.block();
    int across = contact.across();
    int way = contact.way().axis();
    boolean isInside =
        !contact.middle().minus(half).isLess(block.low().on(across))
            && !contact.middle().plus(half).isMore(block.high().on(across))
            && !from.min(to).isLess(block.low().on(way))
            && !from.max(to).isMore(block.high().on(way));
    if (!isInside) {
      return new Clean(List.of());
    }
    Length margin = fastener.margin();
    Clean clean =
        places
            .above(block.low().on(contact.along()).plus(margin))
            .below(block.high().on(contact.along()).minus(margin));
    for (Removal removal : piece.solid().removals()) {
      Box around = removal instanceof Slope ? null : removal.around(piece.solid().block());
      if (removal instanceof Slope slope) {
        clean = clean(clean, piece.inAssembly(slope), from, to);
      } else if (around != null) {
        clean = clean(clean, piece.inAssembly(around), from, to);
      }
    }
    return clean;
  }

  /** Keeps clear of a box that anything of the fastener would meet. */
  private Clean clean(Clean places, Box box, Length from, Length to) {
    int across = contact.across();
    int way = contact.way().axis();
    boolean isMet =
        box.low().on(across).isLess(contact.middle().plus(half))
            && box.high().on(across).isMore(contact.middle().minus(half))
            && box.low().on(way).isLess(from.max(to))
            && box.high().on(way).isMore(from.min(to));
    return isMet
        ? places.without(
            box.low().on(contact.along()).minus(fastener.margin()),
            box.high().on(contact.along()).plus(fastener.margin()))
        : places;
  }

  /** Keeps within what a slope leaves. */
  private Clean clean(Clean places, Inequality cut, Length from, Length to) {
    Rational most = Rational.ZERO;
    Rational across = cut.factors().get(contact.across());
    most = most.plus(greater(across, contact.middle().minus(half), contact.middle().plus(half)));
    most = most.plus(greater(cut.factors().get(contact.way().axis()), from, to));
    Rational left = cut.limit().minus(most);
    Rational along = cut.factors().get(contact.along());
    if (along.signum() == 0) {
      return left.signum() < 0 ? new Clean(List.of()) : places;
    }
    Length end = new Length(left.dividedBy(along));
    return along.signum() > 0
        ? places.below(end.minus(fastener.margin()))
        : places.above(end.plus(fastener.margin()));
  }

  private static Rational greater(Rational factor, Length one, Length other) {
    Rational first = factor.times(one.inches());
    Rational second = factor.times(other.inches());
    return first.compareTo(second) >= 0 ? first : second;
  }

  // ---- spreading

  private List<Length> spread(Clean clean) {
    Length first = onRule(clean, clean.first(), clean.first(), clean.first().plus(EASY));
    Length last = onRule(clean, clean.last(), clean.last().minus(EASY), clean.last());
    Length apart = fastener.margin().times(2);
    if (last.minus(first).isLess(apart)) {
      Length middle = clean.first().plus(clean.last()).dividedBy(2);
      return List.of(onRule(clean, middle, clean.first(), clean.last()));
    }
    long spaces = spaces(last.minus(first));
    Length space = last.minus(first).dividedBy(spaces);
    List<Length> places = new ArrayList<>(List.of(first));
    for (long i = 1; i < spaces; i++) {
      Length wanted = first.plus(space.times(i));
      Length low = wanted.minus(space.dividedBy(2)).max(places.get(places.size() - 1).plus(apart));
      Length high = wanted.plus(space.dividedBy(2)).min(last.minus(apart));
      if (clean.nearest(wanted, low, high) != null) {
        places.add(onRule(clean, wanted, low, high));
      }
    }
    places.add(last);
    return places;
  }

  /** Into how many spaces a length is divided. */
  private long spaces(Length length) {
    // A pack of fasteners in one joint is a slip of the pen; a count must stay in bounds.
    return length
        .dividedBy(fastener.spacing())
        .ceiling()
        .min(java.math.BigInteger.valueOf(1000))
        .longValueExact();
  }

  /**
   * The place on a graduation, a coarse one where there is one, that is nearest to the wanted; off
   * all of them where none is clean. One of the bounds or what lies between is clean.
   */
  private Length onRule(Clean clean, Length wanted, Length low, Length high) {
    Length fine = new Length(rule.graduation().times(rule.unit().inBase()));
    for (Length step : List.of(fine.times(4), fine)) {
      Length best = step.isMore(EASY) ? null : graduation(clean, wanted, List.of(low, high, step));
      if (best != null) {
        return best;
      }
    }
    Length nearest = clean.nearest(wanted, low, high);
    if (nearest == null) {
      throw new IllegalStateException("nothing clean from " + low + " to " + high);
    }
    return nearest;
  }

  /** The nearest clean multiple of a step from the edge that is measured from. */
  private @Nullable Length graduation(Clean clean, Length wanted, List<Length> lowHighStep) {
    Length step = lowHighStep.get(2);
    Rational measured = measured(wanted).dividedBy(step);
    Length best = null;
    for (java.math.BigInteger count : List.of(measured.floor(), measured.ceiling())) {
      Length place =
          placeAt(new Length(step.inches().times(Rational.of(count, java.math.BigInteger.ONE))));
      boolean isAllowed =
          clean.has(place)
              && !place.isLess(lowHighStep.get(0))
              && !place.isMore(lowHighStep.get(1));
      boolean isNearer =
          best == null || place.minus(wanted).magnitude().isLess(best.minus(wanted).magnitude());
      best = isAllowed && isNearer ? place : best;
    }
    return best;
  }

  // ---- measuring on the driven piece

  private int ownAlong() {
    return contact.driven().ownAxis(contact.along());
  }

  /** From the left end, the bottom edge or the outside face of the driven piece. */
  private Length measured(Length place) {
    Length from = place.minus(contact.driven().corner().on(contact.along()));
    return contact.driven().direction(ownAlong()).isPositive()
        ? from
        : contact.driven().solid().extent(ownAlong()).minus(from);
  }

  private Length placeAt(Length measured) {
    Length from =
        contact.driven().direction(ownAlong()).isPositive()
            ? measured
            : contact.driven().solid().extent(ownAlong()).minus(measured);
    return contact.driven().corner().on(contact.along()).plus(from);
  }

  /** How the places are found on the driven piece. */
  Line line(List<Length> places) {
    Placed driven = contact.driven();
    int across = driven.ownAxis(contact.across());
    Length from = contact.middle().minus(driven.corner().on(contact.across()));
    Length extent = driven.solid().extent(across);
    Length low = driven.direction(across).isPositive() ? from : extent.minus(from);
    boolean isLow = !low.isMore(extent.minus(low));
    return new Line(
        side(across, !isLow),
        isLow ? low : extent.minus(low),
        side(ownAlong(), false),
        places.stream().map(this::measured).sorted().toList());
  }

  private static Side side(int axis, boolean isFar) {
    for (Side side : Side.values()) {
      if (side.axis() == axis && side.isFar() == isFar) {
        return side;
      }
    }
    throw new IllegalArgumentException("axis " + axis);
  }

  /** What one takes up. */
  Box prism(Length place) {
    Length tip = contact.tip(fastener.length());
    Point low =
        contact
            .low()
            .with(contact.along(), place.minus(half))
            .with(contact.across(), contact.middle().minus(half))
            .with(contact.way().axis(), contact.entry().min(tip));
    Point high =
        low.with(contact.along(), place.plus(half))
            .with(contact.across(), contact.middle().plus(half))
            .with(contact.way().axis(), contact.entry().max(tip));
    return new Box(low, high);
  }
}
