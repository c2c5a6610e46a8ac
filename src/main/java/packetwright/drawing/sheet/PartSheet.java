package packetwright.drawing.sheet;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Function;
import packetwright.definition.project.Side;
import packetwright.drawing.lettering.Face;
import packetwright.drawing.sheet.PartMeasures.Band;
import packetwright.drawing.view.Projection;
import packetwright.drawing.view.View;
import packetwright.drawing.view.Views;
import packetwright.text.measure.Figure;
import packetwright.text.measure.Length;
import packetwright.text.measure.Rule;
import packetwright.text.words.Phrase;
import packetwright.text.words.Words;
import packetwright.wood.part.Part;
import packetwright.wood.part.Removal;

/** The three-view drawing of a part: front, top and right end in third-angle arrangement. */
public final class PartSheet {
  /** 7.1 in, in points. */
  public static final double WIDTH = 7.1 * 72;

  /** 5.5 in, in points. */
  public static final double MOST_HEIGHT = 5.5 * 72;

  private static final double MARGIN = 6;
  private static final double LEAST_GAP = 30;

  /** A part drawn shorter than 3/4 in is hard to read. */
  private static final double LEAST_DRAWN = 54;

  /** Half the height of a number in a level band, and air. */
  private static final double ROW_HALF = 12;

  /** A line of small text over the top view. */
  private static final double NAME_ROOM = 15;

  private final Part part;
  private final Rule rule;
  private final Words words;
  private final ViewMarks.Scale scale;
  private final Map<Projection, View> views;
  private final Map<Band, DimensionBand> bands = new EnumMap<>(Band.class);
  private final List<Mark> marks = new ArrayList<>();

  private PartSheet(Seen seen, Rule rule, Words words, ViewMarks.Scale scale) {
    this.part = seen.part;
    this.rule = rule;
    this.words = words;
    this.scale = scale;
    this.views = seen.views;
    PartMeasures.of(part).forEach((band, measures) -> bands.put(band, arrange(band, measures)));
  }

  /**
   * Draws a part at the largest preferred scale that fits.
   *
   * @param material as the title strip names it
   */
  public static Sheet draw(Part part, Phrase material, Rule rule, Words words) {
    return largest(Seen.of(part), rule, words).finish(material);
  }

  /**
   * Draws parts at one scale, the largest preferred one at which all fit; a part that would be too
   * small to read has its own.
   *
   * @param material of a part, as the title strip names it
   */
  public static List<Sheet> drawAll(
      List<Part> parts, Function<Part, Phrase> material, Rule rule, Words words) {
    List<Seen> all = parts.stream().map(Seen::of).toList();
    int common =
        all.stream().mapToInt(p -> largest(p, rule, words).scale.reduction()).max().orElse(1);
    List<Sheet> sheets = new ArrayList<>();
    for (Seen part : all) {
      PartSheet sheet = new PartSheet(part, rule, words, new ViewMarks.Scale(common));
      boolean isReadable = sheet.fits() && sheet.width(Projection.FRONT) >= LEAST_DRAWN;
      sheets.add(
          (isReadable ? sheet : largest(part, rule, words)).finish(material.apply(part.part)));
    }
    return sheets;
  }

  private static PartSheet largest(Seen part, Rule rule, Words words) {
    PartSheet sheet = null;
    for (ViewMarks.Scale scale : ViewMarks.Scale.preferred(rule.unit())) {
      sheet = new PartSheet(part, rule, words, scale);
      if (sheet.fits()) {
        break;
      }
    }
    if (sheet == null) {
      throw new IllegalStateException("no preferred scale for " + rule);
    }
    return sheet;
  }

  /** A part and its views, which are the same at every scale. */
  private record Seen(Part part, Map<Projection, View> views) {
    static Seen of(Part part) {
      return new Seen(part, Views.all(part.solid()));
    }
  }

  private boolean fits() {
    return contentWidth() + 2 * MARGIN <= WIDTH
        && contentHeight() + 2 * MARGIN + TitleStrip.HEIGHT <= MOST_HEIGHT;
  }

  private DimensionBand arrange(Band band, List<PartMeasures.Measure> measures) {
    List<DimensionBand.Wish> wishes = new ArrayList<>();
    for (PartMeasures.Measure measure : measures) {
      Projection projection = band.projection();
      Length one = projection.onPaper(part.solid(), measure.axis(), measure.from());
      Length other = projection.onPaper(part.solid(), measure.axis(), measure.to());
      Length low = one.min(other);
      Length high = one.max(other);
      // Along an upright side the sheet counts downward, the view upward.
      Length from = band.isLevel() ? low : extent(band).minus(high);
      Length to = band.isLevel() ? high : extent(band).minus(low);
      double insetLow = inset(band, low);
      double insetHigh = inset(band, high);
      wishes.add(
          new DimensionBand.Wish(
              points(from),
              points(to),
              band.isLevel() ? insetLow : insetHigh,
              band.isLevel() ? insetHigh : insetLow,
              // Left of the end view stand the numbers of its upright band.
              band == Band.END_BELOW || isOutwardFirst(from, to, extent(band)),
              text(measure.value())));
    }
    return DimensionBand.arrange(band.isLevel(), wishes);
  }

  /** A place is lettered away from the part, a size toward its middle. */
  private static boolean isOutwardFirst(Length from, Length to, Length extent) {
    boolean isPastMiddle = from.plus(to).isMore(extent);
    boolean isAtEnd = from.signum() == 0 || to.equals(extent);
    return isAtEnd == isPastMiddle;
  }

  private Length extent(Band band) {
    View view = view(band.projection());
    return band.isLevel() ? view.width() : view.height();
  }

  /** How far inside the outline the line that is measured to ends. */
  private double inset(Band band, Length place) {
    View view = view(band.projection());
    Length deep = band.isLevel() ? view.height() : view.width();
    Length nearest = deep;
    boolean isFar = band.isLevel() ? band.outward() < 0 : band.outward() > 0;
    for (View.Edge edge : view.edges()) {
      boolean isOnIt =
          edge.isLevel() != band.isLevel()
              && (band.isLevel() ? edge.u1() : edge.v1()).equals(place);
      if (isOnIt) {
        Length end =
            isFar
                ? deep.minus(band.isLevel() ? edge.v2() : edge.u2())
                : band.isLevel() ? edge.v1() : edge.u1();
        nearest = nearest.min(end);
      }
    }
    double past = 0;
    for (View.Hole hole : view.holes()) {
      if ((band.isLevel() ? hole.u() : hole.v()).equals(place)) {
        Length centre = band.isLevel() ? hole.v() : hole.u();
        Length distance = (isFar ? deep.minus(centre) : centre).minus(hole.radius());
        nearest = nearest.min(distance);
        past = ViewMarks.CENTRE_PAST;
      }
    }
    return Math.max(0, points(nearest) - past);
  }

  private Inscription text(Length value) {
    Figure figure = rule.print(value);
    Inscription number = Inscription.of(Face.REGULAR, figure);
    return switch (figure.grade()) {
      case EXACT -> number;
      case FULL -> number.then(Inscription.of(Face.REGULAR, words.plain("sheet.full")));
      case SCANT -> number.then(Inscription.of(Face.REGULAR, words.plain("sheet.scant")));
    };
  }

  private Sheet finish(Phrase material) {
    double height = contentHeight() + 2 * MARGIN + TitleStrip.HEIGHT;
    double left = Math.max(MARGIN, (WIDTH - contentWidth()) / 2) + leftReach();
    double frontTop = MARGIN + aboveReach() + height(Projection.TOP) + gapUp();
    place(Projection.FRONT, left, frontTop);
    place(Projection.TOP, left, MARGIN + aboveReach());
    place(Projection.END, left + width(Projection.FRONT) + gapAcross(), frontTop);
    double width = Math.max(WIDTH, contentWidth() + 2 * MARGIN);
    noteHoles(left, frontTop, width, height);
    nameSides(left, frontTop);
    marks.addAll(new TitleStrip(part, rule, words).marks(width, height, material, scale));
    String name = "part-" + part.name().replace('_', '-');
    return new Sheet(name, width, height, PartWords.describe(part, rule, words), marks);
  }

  private void place(Projection projection, double x, double y) {
    marks.addAll(ViewMarks.of(view(projection), scale, x, y));
    for (Band band : Band.of(projection)) {
      double outline =
          band.isLevel()
              ? (band.outward() > 0 ? y + height(projection) : y)
              : (band.outward() > 0 ? x + width(projection) : x);
      marks.addAll(band(band).marks(band.isLevel() ? x : y, outline, band.outward(), push(band)));
    }
  }

  /** Names what a student must tell apart, where there is room. */
  private void nameSides(double left, double top) {
    double right = left + width(Projection.FRONT);
    double bottom = top + height(Projection.FRONT);
    Area front = new Area(left, top, right, bottom);
    double end = right + gapAcross();
    double endMiddle = end + width(Projection.END) / 2;
    name("sheet.inside_face", front.grown(-2), (left + right) / 2, (top + bottom) / 2);
    name(
        "sheet.top_edge",
        new Area(left, top - gapUp() + 2, right, top - 2),
        (left + right) / 2,
        top - 8);
    name(
        "sheet.bottom_edge",
        new Area(left, bottom + 2, right, bottom + DimensionBand.FIRST),
        (left + right) / 2,
        bottom + 9);
    double above = top - gapUp() - height(Projection.TOP);
    if (part.features().stream().anyMatch(f -> f.face() == Side.OUTSIDE)) {
      name(
          "sheet.outside_face",
          new Area(left, above - aboveReach(), right, above - 2),
          (left + right) / 2,
          above - 8);
    }
    name(
        "sheet.right_end",
        new Area(end - 40, top - gapUp() - height(Projection.TOP), end + 90, top - 2),
        endMiddle,
        top - 8);
  }

  private void name(String key, Area bounds, double x, double y) {
    Inscription text = Inscription.of(Face.ITALIC, words.plain(key));
    Label label = Obstacles.of(marks).place(text, Inscription.LEAST_SIZE, bounds, x, y);
    if (label != null) {
      marks.add(label);
    }
  }

  /** A note on a leader for each round hole, where its circle is seen. */
  private void noteHoles(double left, double top, double width, double height) {
    Area bounds = new Area(MARGIN, MARGIN, width - MARGIN, height - TitleStrip.HEIGHT - MARGIN);
    for (Part.Feature feature : part.features()) {
      for (Removal removal : feature.removals()) {
        HoleNote note = HoleNote.of(removal, part.solid());
        if (note != null) {
          boolean isEnd = note.projection() == Projection.END;
          double x = isEnd ? left + width(Projection.FRONT) + gapAcross() : left;
          double y =
              note.projection() == Projection.TOP ? top - gapUp() - height(Projection.TOP) : top;
          double v = height(note.projection()) - points(note.v());
          marks.addAll(
              note.marks(
                  text(note.diameter()),
                  note.depth() == null ? null : text(note.depth()),
                  words,
                  new HoleNote.Spot(x + points(note.u()), y + v, points(note.diameter()) / 2),
                  Obstacles.of(marks),
                  bounds));
        }
      }
    }
  }

  private double depth(Band band) {
    return reach(band(band).depth(), push(band));
  }

  /**
   * How far a level band moves outward so that what hangs over at its ends clears what hangs over
   * from the upright bands at the same corner.
   */
  private double push(Band band) {
    double over = band(band).greatest() - width(band.projection());
    double before = -band(band).least();
    double height = height(band.projection());
    return switch (band) {
      case FRONT_BELOW -> clash(before, band(Band.FRONT_LEFT), false, height);
      case END_BELOW ->
          Math.max(
              clash(before, band(Band.END_LEFT), false, height),
              clash(over, band(Band.END_RIGHT), false, height));
      case TOP_ABOVE ->
          Math.max(
              clash(before, band(Band.TOP_LEFT), true, height),
              clash(over, band(Band.TOP_RIGHT), true, height));
      default -> 0;
    };
  }

  private static double clash(double over, DimensionBand upright, boolean isAbove, double height) {
    double hang = isAbove ? -upright.least() : upright.greatest() - height;
    boolean meets = over > upright.nearest();
    return meets ? Math.max(0, hang - DimensionBand.FIRST + ROW_HALF) : 0;
  }

  private double contentWidth() {
    double right = reach(band(Band.END_RIGHT).depth(), 0);
    double below = band(Band.END_BELOW).greatest() - width(Projection.END);
    return leftReach()
        + width(Projection.FRONT)
        + gapAcross()
        + width(Projection.END)
        + Math.max(right, below);
  }

  private double contentHeight() {
    double below =
        Math.max(
            Math.max(depth(Band.FRONT_BELOW), depth(Band.END_BELOW)),
            sideReach(height(Projection.FRONT)));
    return aboveReach()
        + height(Projection.TOP)
        + gapUp()
        + height(Projection.FRONT)
        + Math.max(below, DimensionBand.FIRST);
  }

  /** How far numbers of the upright bands beside the front and end views reach below them. */
  private double sideReach(double height) {
    return Math.max(
            Math.max(band(Band.FRONT_LEFT).greatest(), band(Band.END_LEFT).greatest()),
            band(Band.END_RIGHT).greatest())
        - height;
  }

  private double leftReach() {
    return Math.max(
        Math.max(band(Band.FRONT_LEFT).depth(), band(Band.TOP_LEFT).depth()),
        Math.max(-band(Band.FRONT_BELOW).least(), -band(Band.TOP_ABOVE).least()));
  }

  private double aboveReach() {
    return Math.max(
        Math.max(NAME_ROOM, depth(Band.TOP_ABOVE)),
        Math.max(-band(Band.TOP_LEFT).least(), -band(Band.TOP_RIGHT).least()));
  }

  private double gapUp() {
    double down =
        Math.max(band(Band.TOP_LEFT).greatest(), band(Band.TOP_RIGHT).greatest())
            - height(Projection.TOP);
    double up =
        Math.max(
            Math.max(-band(Band.FRONT_LEFT).least(), -band(Band.END_LEFT).least()),
            -band(Band.END_RIGHT).least());
    return Math.max(LEAST_GAP, reach(down, 0) + reach(up, 6));
  }

  private double gapAcross() {
    double below =
        band(Band.FRONT_BELOW).greatest()
            - width(Projection.FRONT)
            - Math.min(0, band(Band.END_BELOW).least());
    double beside = reach(band(Band.END_LEFT).depth(), 12);
    boolean hangs =
        band(Band.END_LEFT).greatest() - height(Projection.FRONT) > DimensionBand.FIRST - ROW_HALF;
    double needed = hangs ? reach(below, 4) + beside : Math.max(reach(below, 4), beside);
    return Math.max(LEAST_GAP, needed);
  }

  private static double reach(double distance, double more) {
    return distance > 0 ? distance + more : 0;
  }

  private View view(Projection projection) {
    return Objects.requireNonNull(views.get(projection));
  }

  private DimensionBand band(Band band) {
    return Objects.requireNonNull(bands.get(band));
  }

  private double width(Projection projection) {
    return points(view(projection).width());
  }

  private double height(Projection projection) {
    return points(view(projection).height());
  }

  private double points(Length length) {
    return length.inches().approximate() * scale.pointsPerInch();
  }
}
