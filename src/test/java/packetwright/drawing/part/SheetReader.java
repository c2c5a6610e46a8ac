package packetwright.drawing.part;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import packetwright.definition.project.Side;
import packetwright.drawing.sheet.Dimension;
import packetwright.drawing.sheet.Inscription;
import packetwright.drawing.sheet.Label;
import packetwright.drawing.sheet.Mark;
import packetwright.drawing.sheet.Sheet;
import packetwright.drawing.view.Projection;
import packetwright.text.measure.Length;
import packetwright.text.measure.Rational;
import packetwright.text.measure.Rule;
import packetwright.text.measure.Unit;
import packetwright.text.words.Words;
import packetwright.wood.part.Box;
import packetwright.wood.part.Part;
import packetwright.wood.part.Point;
import packetwright.wood.part.Removal;
import packetwright.wood.part.Removal.Bore;
import packetwright.wood.part.Removal.Outline;
import packetwright.wood.part.Removal.Slope;
import packetwright.wood.part.Removal.Trough;
import packetwright.wood.part.Shapes;
import packetwright.wood.part.Solid;

/**
 * A reader who sees from the views what shapes there are and which lines belong together, and
 * measures nothing: every place is unknown until dimensions that are printed on the sheet lead to
 * it, every diameter, depth and radius until a note says it. What nothing on the sheet gives is
 * guessed, always wrong, so that only a complete sheet gives the part again.
 */
final class SheetReader {
  private static final Pattern NUMBER = Pattern.compile("(?:(\\d+) )?(\\d+)/(\\d+)|(\\d+)");

  private static final Rule RULE = new Rule(Rational.of(1, 32), Unit.INCH);
  private static final Words WORDS = Words.of("en");

  private final Showing showing;
  private final Solid solid;
  private final List<Note> notes;
  private final List<Map<Length, Length>> places = new ArrayList<>();

  private SheetReader(Part part, Showing showing, Map<Band, List<Measure>> bands) {
    this.showing = showing;
    this.solid = part.solid();
    this.notes = Note.of(showing, RULE, WORDS);
    for (int axis = 0; axis < 3; axis++) {
      places.add(places(axis, bands));
    }
  }

  /** The part that the sheet describes. */
  static Solid read(Part part, Sheet sheet) {
    Showing showing = Showing.of(part, Fold.NONE);
    Map<Band, List<Measure>> bands = PartMeasures.of(showing).bands();
    assertIsPrinted(sheet, bands, Note.of(showing, RULE, WORDS));
    return new SheetReader(part, showing, bands).rebuild();
  }

  /** The part as it would be read if these were the dimensions on its sheet. */
  static Solid read(Part part, Map<Band, List<Measure>> bands) {
    return new SheetReader(part, Showing.of(part, Fold.NONE), bands).rebuild();
  }

  private static void assertIsPrinted(
      Sheet sheet, Map<Band, List<Measure>> bands, List<Note> notes) {
    List<Inscription> printed = new ArrayList<>();
    List<Inscription> lettered = new ArrayList<>();
    for (Mark mark : sheet.marks()) {
      if (mark instanceof Dimension dimension) {
        printed.add(dimension.text());
      } else if (mark instanceof Label label) {
        lettered.add(label.text());
      }
    }
    List<Inscription> wanted =
        bands.values().stream().flatMap(List::stream).map(SheetReader::print).toList();
    assertThat(printed).containsExactlyInAnyOrderElementsOf(wanted);
    assertThat(lettered).containsAll(notes.stream().map(Note::text).toList());
  }

  private static Inscription print(Measure measure) {
    return Inscription.graded(RULE.print(measure.value()), WORDS);
  }

  /** A place as one view shows it; the outer sides are the same in all views. */
  private record Node(Projection projection, Length at) {}

  private record Way(Node to, Length by) {}

  private Node node(Projection projection, int axis, Length at) {
    boolean isOuter = at.signum() == 0 || at.equals(solid.extent(axis));
    return new Node(isOuter ? Projection.FRONT : projection, at);
  }

  /** What each place on an axis comes to, by adding up printed dimensions. */
  private Map<Length, Length> places(int axis, Map<Band, List<Measure>> bands) {
    Map<Node, List<Way>> ways = new LinkedHashMap<>();
    bands.forEach(
        (band, measures) -> {
          for (Measure m : measures) {
            if (m.axis() == axis) {
              boolean isExact = RULE.print(m.value()).equals(RULE.printExactly(m.value()));
              Length by = isExact ? numbers(flat(print(m))).get(0) : m.value();
              Node from = node(band.projection(), axis, m.from());
              Node to = node(band.projection(), axis, m.to());
              ways.computeIfAbsent(from, n -> new ArrayList<>()).add(new Way(to, by));
              ways.computeIfAbsent(to, n -> new ArrayList<>())
                  .add(new Way(from, Length.ZERO.minus(by)));
            }
          }
        });
    boolean isSaid = axis == 2 && PartMeasures.of(showing).isThicknessSaid();
    Map<Node, Length> reached = new LinkedHashMap<>();
    Deque<Node> waiting = new ArrayDeque<>();
    reach(new Node(Projection.FRONT, Length.ZERO), Length.ZERO, reached, waiting);
    if (isSaid) {
      reach(new Node(Projection.FRONT, solid.extent(2)), solid.extent(2), reached, waiting);
    }
    int used = 0;
    while (!waiting.isEmpty()) {
      Node node = waiting.remove();
      for (Way way : ways.getOrDefault(node, List.of())) {
        Length at = reached.getOrDefault(node, Length.ZERO).plus(way.by);
        used++;
        if (reached.containsKey(way.to)) {
          assertThat(reached.get(way.to)).isEqualTo(at);
        } else {
          reach(way.to, at, reached, waiting);
        }
      }
    }
    // A tree: no dimension could be reckoned from the others in its view.
    assertThat(used).as("ways on axis %s", axis).isLessThanOrEqualTo(2 * (reached.size() - 1));
    Map<Length, Length> places = new TreeMap<>();
    reached.forEach((node, at) -> places.put(node.at, at));
    guess(axis, places);
    return places;
  }

  private static void reach(Node node, Length at, Map<Node, Length> reached, Deque<Node> waiting) {
    reached.put(node, at);
    waiting.add(node);
  }

  /** Wrong places for what nothing gives, in the order in which the lines stand. */
  private void guess(int axis, Map<Length, Length> places) {
    TreeSet<Length> missing = new TreeSet<>();
    for (Removal removal : solid.removals()) {
      Box box = removal.around(solid.block());
      if (box != null) {
        missing.add(box.low().on(axis));
        missing.add(box.high().on(axis));
      }
    }
    missing.removeAll(places.keySet());
    Map<Length, Length> known = new TreeMap<>(places);
    for (Length at : missing) {
      Length before = Length.ZERO;
      Length after = solid.extent(axis);
      for (Map.Entry<Length, Length> entry : known.entrySet()) {
        boolean isBefore = entry.getKey().isLess(at);
        before = isBefore ? before.max(entry.getValue()) : before;
        after = isBefore ? after : after.min(entry.getValue());
      }
      Length guess = before.plus(after.minus(before).times(3).dividedBy(7));
      known.put(at, guess.equals(at) ? guess.plus(after.minus(guess).dividedBy(9)) : guess);
    }
    places.putAll(known);
  }

  private Length place(int axis, Length at) {
    Length place = places.get(axis).get(at);
    return place == null ? at.plus(Length.ofInches(1, 97)) : place;
  }

  private Solid rebuild() {
    List<Removal> removals = new ArrayList<>();
    for (Removal removal : solid.removals()) {
      if (removal.around(solid.block()) != null) {
        removals.add(removal.match(new Again()));
      }
    }
    return new Solid(
        place(0, solid.length()), place(1, solid.width()), place(2, solid.thickness()), removals);
  }

  private static String flat(Inscription text) {
    StringBuilder flat = new StringBuilder();
    for (Inscription.Piece piece : text.pieces()) {
      if (piece instanceof Inscription.Stack stack) {
        flat.append(' ').append(stack.numerator()).append('/').append(stack.denominator());
      } else if (piece instanceof Inscription.Run run) {
        flat.append(run.text());
      }
    }
    return flat.toString().replaceAll(" +", " ").strip();
  }

  private static List<Length> numbers(String text) {
    List<Length> numbers = new ArrayList<>();
    Matcher matcher = NUMBER.matcher(text);
    while (matcher.find()) {
      if (matcher.group(4) != null) {
        numbers.add(Length.ofInches(Long.parseLong(matcher.group(4))));
      } else {
        long whole = matcher.group(1) == null ? 0 : Long.parseLong(matcher.group(1));
        numbers.add(
            Length.ofInches(whole)
                .plus(
                    Length.ofInches(
                        Long.parseLong(matcher.group(2)), Long.parseLong(matcher.group(3)))));
      }
    }
    return numbers;
  }

  /** The numbers of the note whose leader points at a removal, after a sign. */
  private List<Length> noted(Removal removal, int axis, String sign) {
    Box box = removal.around(solid.block());
    assertThat(box).isNotNull();
    Projection projection = Showing.endOn(axis);
    for (Note note : notes) {
      String text = flat(note.text());
      boolean isThere =
          note.projection() == projection
              && note.anchors().stream().anyMatch(anchor -> isIn(anchor, projection, box));
      boolean isAround = text.contains("around");
      if (text.contains(sign) && (isThere || isAround)) {
        String said = text.replaceFirst("^\\d+ × (?=[⌀R\\d])", "");
        return numbers(said);
      }
    }
    return List.of();
  }

  private boolean isIn(Note.Anchor anchor, Projection projection, Box box) {
    return isBetween(anchor.u(), projection, projection.across(), box)
        && isBetween(anchor.v(), projection, projection.up(), box);
  }

  private boolean isBetween(double at, Projection projection, int axis, Box box) {
    double one = showing.onPaper(projection, axis, box.low().on(axis)).inches().approximate();
    double other = showing.onPaper(projection, axis, box.high().on(axis)).inches().approximate();
    return at > Math.min(one, other) - 1e-6 && at < Math.max(one, other) + 1e-6;
  }

  private Side side(int axis, Length at) {
    boolean isFar = at.equals(solid.extent(axis));
    return switch (axis) {
      case 0 -> isFar ? Side.RIGHT : Side.LEFT;
      case 1 -> isFar ? Side.TOP : Side.BOTTOM;
      default -> isFar ? Side.INSIDE : Side.OUTSIDE;
    };
  }

  private final class Again implements Removal.Cases<Removal> {
    @Override
    public Removal trough(Trough trough) {
      Box box = trough.around(solid.block());
      assertThat(box).isNotNull();
      return new Trough(new Box(placed(box.low()), placed(box.high())));
    }

    private Point placed(Point point) {
      Point placed = point;
      for (int axis = 0; axis < 3; axis++) {
        placed = placed.with(axis, place(axis, point.on(axis)));
      }
      return placed;
    }

    @Override
    public Removal bore(Bore bore) {
      List<Length> said = noted(bore, bore.axis(), "⌀");
      assertThat(said).as("what is said of %s", bore).isNotEmpty();
      Length extent = solid.extent(bore.axis());
      Length depth = said.size() > 1 ? said.get(1) : extent;
      boolean isFromLow = bore.centre().on(bore.axis()).signum() <= 0;
      Point centre = bore.centre();
      for (int axis = 0; axis < 3; axis++) {
        Length at =
            axis == bore.axis()
                ? (isFromLow ? Length.ZERO : extent.minus(depth))
                : place(axis, bore.centre().on(axis));
        centre = centre.with(axis, at);
      }
      return new Bore(bore.axis(), centre, depth, said.get(0));
    }

    /** Through two places on the outer sides, from dimensions; or a chamfer, from its note. */
    @Override
    public Removal slope(Slope slope) {
      int u = Removal.acrossU(slope.axis());
      int v = Removal.acrossV(slope.axis());
      List<Length> said = noted(slope, slope.axis(), "45°");
      for (Length atU : List.of(Length.ZERO, solid.extent(u))) {
        for (Length atV : List.of(Length.ZERO, solid.extent(v))) {
          if (slope.side(atU, atV) > 0 && !said.isEmpty()) {
            return Shapes.chamfer(solid, side(u, atU), side(v, atV), said.get(0));
          }
        }
      }
      List<List<Length>> ends = new ArrayList<>();
      for (Length at : List.of(Length.ZERO, solid.extent(u))) {
        add(ends, List.of(at, over(slope.c(), slope.a(), at, slope.b())), u, v);
      }
      for (Length at : List.of(Length.ZERO, solid.extent(v))) {
        add(ends, List.of(over(slope.c(), slope.b(), at, slope.a()), at), u, v);
      }
      assertThat(ends).hasSize(2);
      Length u1 = place(u, ends.get(0).get(0));
      Length v1 = place(v, ends.get(0).get(1));
      Length u2 = place(u, ends.get(1).get(0));
      Length v2 = place(v, ends.get(1).get(1));
      Slope again = Slope.leftOf(slope.axis(), u1, v1, u2, v2);
      for (Length atU : List.of(Length.ZERO, solid.extent(u))) {
        for (Length atV : List.of(Length.ZERO, solid.extent(v))) {
          if (slope.side(atU, atV) > 0 && again.side(atU, atV) < 0) {
            return Slope.leftOf(slope.axis(), u2, v2, u1, v1);
          }
        }
      }
      return again;
    }

    /** Where the slope's plane lies on one axis at a place of the other. */
    private Length over(Length c, Rational factor, Length at, Rational other) {
      return new Length(c.inches().minus(factor.times(at.inches())).dividedBy(other));
    }

    private void add(List<List<Length>> ends, List<Length> end, int u, int v) {
      boolean isOn =
          end.get(0).signum() >= 0
              && !end.get(0).isMore(solid.extent(u))
              && end.get(1).signum() >= 0
              && !end.get(1).isMore(solid.extent(v));
      if (isOn && !ends.contains(end)) {
        ends.add(end);
      }
    }

    /** A rounded edge or corner from its radius; a curve from its chord and rise. */
    @Override
    public Removal outline(Outline outline) {
      int u = Removal.acrossU(outline.axis());
      int v = Removal.acrossV(outline.axis());
      Box box = outline.around(solid.block());
      assertThat(box).isNotNull();
      boolean isAtU = isOuter(u, box.low().on(u)) || isOuter(u, box.high().on(u));
      boolean isAtV = isOuter(v, box.low().on(v)) || isOuter(v, box.high().on(v));
      if (isAtU && isAtV) {
        List<Length> said = noted(outline, outline.axis(), "R ");
        assertThat(said).as("what is said of %s", outline).isNotEmpty();
        return Shapes.rounded(solid, outer(u, box), outer(v, box), said.get(0));
      }
      int edge = isAtU ? u : v;
      int along = isAtU ? v : u;
      Length start = place(along, box.low().on(along));
      Length chord = place(along, box.high().on(along)).minus(start);
      Length rise = place(edge, box.high().on(edge)).minus(place(edge, box.low().on(edge)));
      return Shapes.curve(solid, outer(edge, box), start, chord, rise.min(chord.dividedBy(2)));
    }

    private boolean isOuter(int axis, Length at) {
      return at.signum() == 0 || at.equals(solid.extent(axis));
    }

    private Side outer(int axis, Box box) {
      return side(
          axis, isOuter(axis, box.low().on(axis)) ? box.low().on(axis) : box.high().on(axis));
    }
  }
}
