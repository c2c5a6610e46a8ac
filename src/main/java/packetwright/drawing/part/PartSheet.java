package packetwright.drawing.part;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Function;
import packetwright.definition.project.Side;
import packetwright.drawing.lettering.Face;
import packetwright.drawing.part.PartMeasures.Band;
import packetwright.drawing.sheet.Area;
import packetwright.drawing.sheet.DimensionBand;
import packetwright.drawing.sheet.Inscription;
import packetwright.drawing.sheet.Label;
import packetwright.drawing.sheet.Line;
import packetwright.drawing.sheet.Mark;
import packetwright.drawing.sheet.Obstacles;
import packetwright.drawing.sheet.Sheet;
import packetwright.drawing.view.Projection;
import packetwright.drawing.view.View;
import packetwright.drawing.view.Views;
import packetwright.text.measure.Length;
import packetwright.text.measure.Rule;
import packetwright.text.words.Phrase;
import packetwright.text.words.Words;
import packetwright.wood.part.Part;

/** The three-view drawing of a part: front, top and right end in third-angle arrangement. */
public final class PartSheet {
  /** 7.1 in, in points. */
  public static final double WIDTH = 7.1 * 72;

  /** 5.5 in, in points. */
  public static final double MOST_HEIGHT = 5.5 * 72;

  private static final double MARGIN = 6;

  /** A part drawn shorter than 3/4 in is hard to read. */
  private static final double LEAST_DRAWN = 54;

  /** A line of notes below the views. */
  private static final double ROW = 16;

  private final Part part;
  private final Rule rule;
  private final Words words;
  private final ViewMarks.Scale scale;
  private final Map<Projection, View> views;
  private final PartRoom room;
  private final List<Note> notes;
  private final List<Mark> marks = new ArrayList<>();

  private PartSheet(Seen seen, Rule rule, Words words, ViewMarks.Scale scale) {
    this.part = seen.part;
    this.rule = rule;
    this.words = words;
    this.scale = scale;
    this.views = seen.views;
    this.notes = Note.of(part, rule, words);
    Map<Band, DimensionBand> bands = new EnumMap<>(Band.class);
    PartMeasures.of(part).forEach((band, measures) -> bands.put(band, arrange(band, measures)));
    this.room = new PartRoom(views, bands, scale);
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
    return room.contentWidth() + 2 * MARGIN <= WIDTH
        && room.contentHeight() <= most()
        && (notes.isEmpty() || layOut(0) || layOut(most() - room.contentHeight()));
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
              Inscription.graded(rule.print(measure.value()), words)));
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

  /** Places that an extension line may begin at: ends of lines, and where an arc turns back. */
  private static List<List<Length>> ends(View view) {
    List<List<Length>> ends = new ArrayList<>();
    for (View.Edge edge : view.edges()) {
      ends.add(List.of(edge.u1(), edge.v1()));
      ends.add(List.of(edge.u2(), edge.v2()));
    }
    view.arcs().forEach(arc -> ends.addAll(arc.turningPoints()));
    return ends;
  }

  /** How far inside the outline the line that is measured to ends. */
  private double inset(Band band, Length place) {
    View view = view(band.projection());
    Length deep = band.isLevel() ? view.height() : view.width();
    Length nearest = deep;
    boolean isFar = band.isLevel() ? band.outward() < 0 : band.outward() > 0;
    for (List<Length> end : ends(view)) {
      if (end.get(band.isLevel() ? 0 : 1).equals(place)) {
        Length along = end.get(band.isLevel() ? 1 : 0);
        nearest = nearest.min(isFar ? deep.minus(along) : along);
      }
    }
    double past = 0;
    for (View.Hole hole : view.holes()) {
      if ((band.isLevel() ? hole.u() : hole.v()).equals(place)) {
        Length centre = band.isLevel() ? hole.v() : hole.u();
        Length distance = (isFar ? deep.minus(centre) : centre).minus(hole.radius());
        nearest = nearest.min(distance);
        past = Line.CENTRE_PAST;
      }
    }
    return Math.max(0, points(nearest) - past);
  }

  private Sheet finish(Phrase material) {
    double more = 0;
    while (!layOut(more) && room.contentHeight() + more + ROW < most()) {
      more += ROW;
    }
    nameSides(left(), frontTop());
    double width = width();
    double height = height(more);
    marks.addAll(new TitleStrip(part, rule, words).marks(width, height, material, scale));
    String name = "part-" + part.name().replace('_', '-');
    return new Sheet(name, width, height, new PartWords(part, rule, words).describe(), marks);
  }

  /**
   * All but the title strip, anew.
   *
   * @param more room below the views for notes
   * @return whether every note found a place
   */
  private boolean layOut(double more) {
    marks.clear();
    double left = left();
    double frontTop = frontTop();
    place(Projection.FRONT, left, frontTop);
    place(Projection.TOP, left, MARGIN + room.aboveReach());
    place(Projection.END, left + width(Projection.FRONT) + room.gapAcross(), frontTop);
    return note(left, frontTop, more);
  }

  private double left() {
    return Math.max(MARGIN, (WIDTH - room.contentWidth()) / 2) + room.leftReach();
  }

  private double frontTop() {
    return MARGIN + room.aboveReach() + height(Projection.TOP) + room.gapUp();
  }

  private double width() {
    return Math.max(WIDTH, room.contentWidth() + 2 * MARGIN);
  }

  private double height(double more) {
    return room.contentHeight() + more + 2 * MARGIN + TitleStrip.HEIGHT;
  }

  private static double most() {
    return MOST_HEIGHT - 2 * MARGIN - TitleStrip.HEIGHT;
  }

  private void place(Projection projection, double x, double y) {
    marks.addAll(ViewMarks.of(view(projection), scale, x, y));
    for (Band band : Band.of(projection)) {
      double outline =
          band.isLevel()
              ? (band.outward() > 0 ? y + height(projection) : y)
              : (band.outward() > 0 ? x + width(projection) : x);
      marks.addAll(room.marks(band, band.isLevel() ? x : y, outline));
    }
  }

  /** Names what a student must tell apart, where there is room. */
  private void nameSides(double left, double top) {
    double right = left + width(Projection.FRONT);
    double bottom = top + height(Projection.FRONT);
    Area front = new Area(left, top, right, bottom);
    double end = right + room.gapAcross();
    double endMiddle = end + width(Projection.END) / 2;
    name("sheet.inside_face", front.grown(-2), (left + right) / 2, (top + bottom) / 2);
    name(
        "sheet.top_edge",
        new Area(left, top - room.gapUp() + 2, right, top - 2),
        (left + right) / 2,
        top - 8);
    name(
        "sheet.bottom_edge",
        new Area(left, bottom + 2, right, bottom + DimensionBand.FIRST),
        (left + right) / 2,
        bottom + 9);
    double above = top - room.gapUp() - height(Projection.TOP);
    if (part.features().stream().anyMatch(f -> f.face() == Side.OUTSIDE)) {
      name(
          "sheet.outside_face",
          new Area(left, above - room.aboveReach(), right, above - 2),
          (left + right) / 2,
          above - 8);
    }
    name(
        "sheet.right_end",
        new Area(end - 40, top - room.gapUp() - height(Projection.TOP), end + 90, top - 2),
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

  /** Notes on leaders, each where its feature shows its true shape. */
  private boolean note(double left, double top, double more) {
    Area bounds =
        new Area(MARGIN, MARGIN, width() - MARGIN, height(more) - TitleStrip.HEIGHT - MARGIN);
    boolean isNoted = true;
    for (Note note : notes) {
      Projection projection = note.projection();
      double x =
          projection == Projection.END ? left + width(Projection.FRONT) + room.gapAcross() : left;
      double y = projection == Projection.TOP ? top - room.gapUp() - height(Projection.TOP) : top;
      List<Mark> found =
          note.marks(
              anchor -> anchor.onSheet(x, y + height(projection), scale.pointsPerInch()),
              marks,
              bounds);
      isNoted &= !found.isEmpty();
      marks.addAll(found);
    }
    return isNoted;
  }

  private View view(Projection projection) {
    return Objects.requireNonNull(views.get(projection));
  }

  private double width(Projection projection) {
    return room.width(projection);
  }

  private double height(Projection projection) {
    return room.height(projection);
  }

  private double points(Length length) {
    return length.inches().approximate() * scale.pointsPerInch();
  }
}
