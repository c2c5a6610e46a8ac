package packetwright.drawing.part;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import packetwright.definition.project.Side;
import packetwright.drawing.lettering.Face;
import packetwright.drawing.sheet.Area;
import packetwright.drawing.sheet.Dimension;
import packetwright.drawing.sheet.DimensionBand;
import packetwright.drawing.sheet.Inscription;
import packetwright.drawing.sheet.Label;
import packetwright.drawing.sheet.Line;
import packetwright.drawing.sheet.Mark;
import packetwright.drawing.sheet.Obstacles;
import packetwright.drawing.sheet.Scale;
import packetwright.drawing.sheet.Sheet;
import packetwright.drawing.view.Projection;
import packetwright.drawing.view.View;
import packetwright.text.measure.Length;
import packetwright.wood.part.Part;

/** A part's views, dimensions, notes and names put on a sheet at one scale. */
final class PartLayout {
  private static final double MARGIN = 6;

  /** A line of notes below the views. */
  private static final double ROW = 16;

  private final Showing showing;
  private final PartSheet.Style style;
  private final Scale scale;
  private final PartMeasures measures;
  private final PartRoom room;
  private final List<Note> notes;
  private final List<Mark> marks = new ArrayList<>();

  /** Where lines end, which every dimension asks for. */
  private final Map<Projection, List<List<Length>>> ends = new EnumMap<>(Projection.class);

  PartLayout(Showing showing, Scale scale, PartSheet.Style style) {
    this.showing = showing;
    this.style = style;
    this.scale = scale;
    this.measures = PartMeasures.of(showing);
    this.notes = Note.of(showing, style.rule(), style.words());
    Map<Band, DimensionBand> bands = new EnumMap<>(Band.class);
    measures.bands().forEach((band, wanted) -> bands.put(band, arrange(band, wanted)));
    this.room = new PartRoom(showing, bands, scale, style.arrangement());
  }

  Showing showing() {
    return showing;
  }

  Scale scale() {
    return scale;
  }

  /** What is said on leaders. */
  List<Note> notes() {
    return notes;
  }

  double width(Projection projection) {
    return room.width(projection);
  }

  double height(Projection projection) {
    return room.height(projection);
  }

  private Part part() {
    return showing.part();
  }

  boolean fits() {
    return room.contentWidth() + 2 * MARGIN <= PartSheet.WIDTH
        && room.contentHeight() <= most()
        && (layOut(0) || layOut(most() - room.contentHeight()));
  }

  private DimensionBand arrange(Band band, List<Measure> wanted) {
    List<DimensionBand.Wish> wishes = new ArrayList<>();
    for (Measure measure : wanted) {
      Length one = showing.onPaper(band.projection(), measure.axis(), measure.from());
      Length other = showing.onPaper(band.projection(), measure.axis(), measure.to());
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
              Inscription.graded(style.rule().print(measure.value()), style.words())));
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
    View view = showing.view(band.projection());
    return band.isLevel() ? view.width() : view.height();
  }

  /** How far inside the outline the line that is measured to ends. */
  private double inset(Band band, Length place) {
    View view = showing.view(band.projection());
    Length deep = band.isLevel() ? view.height() : view.width();
    Length nearest = deep;
    boolean isFar = band.isLevel() ? band.outward() < 0 : band.outward() > 0;
    for (List<Length> end : ends.computeIfAbsent(band.projection(), p -> Places.ends(view))) {
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

  /** The sheet, as good as it gets at this scale. */
  Sheet finish(TitleStrip.Entry entry) {
    double more = 0;
    while (!layOut(more) && room.contentHeight() + more + ROW < most()) {
      more += ROW;
    }
    nameSides();
    double width = sheetWidth();
    double height = sheetHeight(more);
    marks.addAll(new TitleStrip(part(), style).marks(width, height, entry, scale));
    String name = "part-" + part().name().replace('_', '-');
    String alternative = new PartWords(part(), style.rule(), style.words()).describe(showing);
    return new Sheet(name, width, height, alternative, marks);
  }

  /**
   * All but the title strip, anew.
   *
   * @param more room below the views for notes
   * @return whether every section, note and name that must be there found a place
   */
  private boolean layOut(double more) {
    marks.clear();
    for (Projection projection : showing.views().keySet()) {
      place(projection);
    }
    boolean isDone = true;
    for (Projection cut : showing.cuts().keySet()) {
      isDone &= addCut(cut);
    }
    if (measures.isThicknessSaid()) {
      isDone &= sayThickness(sheetArea(more));
    }
    // Notes are put on the sheet in any case, as many as find room.
    boolean isNoted = note(sheetArea(more));
    return isDone && isNoted;
  }

  private Area sheetArea(double more) {
    return new Area(
        MARGIN, MARGIN, sheetWidth() - MARGIN, sheetHeight(more) - TitleStrip.HEIGHT - MARGIN);
  }

  private double x(Projection projection) {
    return Math.max(MARGIN, (PartSheet.WIDTH - room.contentWidth()) / 2) + room.x(projection);
  }

  private double y(Projection projection) {
    return MARGIN + room.y(projection);
  }

  private Area area(Projection projection) {
    double x = x(projection);
    double y = y(projection);
    return new Area(x, y, x + width(projection), y + height(projection));
  }

  private double sheetWidth() {
    return Math.max(PartSheet.WIDTH, room.contentWidth() + 2 * MARGIN);
  }

  private double sheetHeight(double more) {
    return room.contentHeight() + more + 2 * MARGIN + TitleStrip.HEIGHT;
  }

  private static double most() {
    return PartSheet.MOST_HEIGHT - 2 * MARGIN - TitleStrip.HEIGHT;
  }

  private ViewMarks onSheet(Projection projection) {
    List<Length> seams = projection == Projection.END ? List.of() : showing.fold().seams();
    return new ViewMarks(showing.view(projection), scale, x(projection), y(projection), seams);
  }

  private void place(Projection projection) {
    ViewMarks view = onSheet(projection);
    marks.addAll(CutMarks.lining(showing, projection, view));
    marks.addAll(view.marks());
    Area area = area(projection);
    for (Band band : Band.of(projection)) {
      double outline =
          band.isLevel()
              ? (band.outward() > 0 ? area.bottom() : area.top())
              : (band.outward() > 0 ? area.right() : area.left());
      marks.addAll(room.marks(band, band.isLevel() ? area.left() : area.top(), outline));
    }
  }

  /** The plane of a section, and its name over the section. */
  private boolean addCut(Projection projection) {
    Showing.Cut cut = Objects.requireNonNull(showing.cuts().get(projection));
    List<Mark> plane =
        CutMarks.plane(
            cut,
            projection == Projection.END,
            onSheet(Projection.FRONT),
            area(Projection.FRONT),
            marks);
    marks.addAll(plane);
    Area view = area(projection);
    return !plane.isEmpty()
        && name(
            Inscription.of(Face.BOLD, style.words().plain("sheet.section", cut.letter())),
            over(view, 60),
            (view.left() + view.right()) / 2,
            view.top() - 8);
  }

  /** Over a view, and beside that. */
  private static Area over(Area view, double beside) {
    return new Area(view.left() - beside, MARGIN, view.right() + beside, view.top() - 2);
  }

  private boolean sayThickness(Area bounds) {
    Inscription text =
        Inscription.graded(style.rule().print(part().solid().thickness()), style.words())
            .then(Inscription.of(Face.REGULAR, style.words().plain("sheet.thick")));
    Area front = area(Projection.FRONT);
    Label label =
        Obstacles.of(marks)
            .place(
                text,
                Dimension.SIZE,
                bounds,
                (front.left() + front.right()) / 2,
                (front.top() + front.bottom()) / 2 + 18);
    if (label != null) {
      marks.add(label);
    }
    return label != null;
  }

  /** Names what a student must tell apart, where there is room. */
  private void nameSides() {
    Area front = area(Projection.FRONT);
    double across = (front.left() + front.right()) / 2;
    name("sheet.inside_face", front.grown(-2), across, (front.top() + front.bottom()) / 2);
    name("sheet.top_edge", over(front, 0), across, front.top() - 8);
    name(
        "sheet.bottom_edge",
        new Area(
            front.left(), front.bottom() + 2, front.right(), front.bottom() + DimensionBand.FIRST),
        across,
        front.bottom() + 9);
    if (showing.has(Projection.TOP) && hasOutside()) {
      Area top = area(Projection.TOP);
      name("sheet.outside_face", over(top, 0), across, top.top() - 8);
    }
    if (showing.has(Projection.END) && !showing.cuts().containsKey(Projection.END)) {
      Area end = area(Projection.END);
      name("sheet.right_end", over(end, 40), (end.left() + end.right()) / 2, end.top() - 8);
    }
  }

  private boolean hasOutside() {
    return part().features().stream().anyMatch(f -> f.face() == Side.OUTSIDE);
  }

  private void name(String key, Area bounds, double x, double y) {
    name(Inscription.of(Face.ITALIC, style.words().plain(key)), bounds, x, y);
  }

  private boolean name(Inscription text, Area bounds, double x, double y) {
    Label label = Obstacles.of(marks).place(text, Inscription.LEAST_SIZE, bounds, x, y);
    if (label != null) {
      marks.add(label);
    }
    return label != null;
  }

  /** Notes on leaders, each where its feature shows its true shape. */
  private boolean note(Area bounds) {
    boolean isNoted = true;
    for (Note note : notes) {
      ViewMarks view = onSheet(note.projection());
      List<Mark> found =
          note.marks(anchor -> anchor.onSheet(view, scale.pointsPerInch()), marks, bounds);
      isNoted &= !found.isEmpty();
      marks.addAll(found);
    }
    return isNoted;
  }

  private double points(Length length) {
    return length.inches().approximate() * scale.pointsPerInch();
  }
}
