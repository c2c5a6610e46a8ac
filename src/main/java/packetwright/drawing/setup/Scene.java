package packetwright.drawing.setup;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import packetwright.drawing.lettering.Face;
import packetwright.drawing.sheet.Area;
import packetwright.drawing.sheet.DimensionBand;
import packetwright.drawing.sheet.Fill;
import packetwright.drawing.sheet.Hatching;
import packetwright.drawing.sheet.Inscription;
import packetwright.drawing.sheet.Label;
import packetwright.drawing.sheet.Line;
import packetwright.drawing.sheet.Mark;
import packetwright.drawing.sheet.Obstacles;
import packetwright.drawing.sheet.Outline;
import packetwright.drawing.sheet.Scale;
import packetwright.drawing.sheet.Sheet;
import packetwright.drawing.sheet.Stroke;
import packetwright.text.measure.Length;

/**
 * What is drawn of one set-up, in points about an origin of its own; x to the right, y downward. It
 * is put on a sheet when all is there, and its labels then find their places.
 */
final class Scene {
  /** 3.4 in: beside the text of a step. */
  static final double WIDTH = 244;

  /** 2.6 in. */
  static final double HEIGHT = 187;

  private static final int SIDES = 48;
  private static final double MARGIN = 2;

  /** How far from where it would like to stand a label looks for room first. */
  private static final double CLOSE = 24;

  /** How much more room labels get at each try, up or down. */
  private static final double STEP = 12;

  private static final double SIZE = Inscription.LEAST_SIZE;

  /** Between lines of a caption. */
  private static final double APART = 3;

  /** A label that stands no farther from what it names needs no line to it. */
  private static final double NEAR = 4;

  private final Scale scale;
  private final List<Mark> marks = new ArrayList<>();
  private final List<Wanted> labels = new ArrayList<>();
  private final List<Inscription> captions = new ArrayList<>();
  private final List<Measured> measured = new ArrayList<>();
  private boolean isRefused;

  Scene(Scale scale) {
    this.scale = scale;
  }

  Scale scale() {
    return scale;
  }

  /** A length at this scale. */
  double points(Length length) {
    return scale.points(length);
  }

  /** Says that this scale is too large, whatever else fits. */
  void refuse() {
    isRefused = true;
  }

  void add(Mark mark) {
    marks.add(mark);
  }

  void stroke(Line line, double... xy) {
    marks.add(Stroke.of(line, Outline.polyline(xy)));
  }

  void fill(double grey, double... xy) {
    marks.add(new Fill(Outline.polygon(xy), grey));
  }

  /** A rectangle with a tone and a line around. */
  void box(double grey, Line line, Area area) {
    Outline outline = Outline.rectangle(area.left(), area.top(), area.right(), area.bottom());
    marks.add(new Fill(outline, grey));
    marks.add(Stroke.of(line, outline));
  }

  /** A circle of straight lines, so that labels keep clear of all of it. */
  void circle(Line line, double x, double y, double radius) {
    double[] xy = new double[2 * SIDES + 2];
    for (int i = 0; i <= SIDES; i++) {
      double turn = 2 * Math.PI * i / SIDES;
      xy[2 * i] = x + radius * StrictMath.cos(turn);
      xy[2 * i + 1] = y + radius * StrictMath.sin(turn);
    }
    stroke(line, xy);
  }

  /** X on the waste, as large as there is room around its middle. */
  void cross(double x, double y, double room) {
    double half = Math.min(9, room);
    if (half > 1) {
      stroke(Line.FINE, x - half, y - half, x + half, y + half);
      stroke(Line.FINE, x - half, y + half, x + half, y - half);
    }
  }

  void hatch(List<double[]> rings, boolean isRising) {
    marks.addAll(Hatching.of(rings, isRising));
  }

  /** Where wood is broken off in the drawing: a thin zigzag from one height to another. */
  void breakLine(double x, double top, double bottom) {
    double middle = (top + bottom) / 2;
    stroke(
        Line.FINE,
        x,
        top - 3,
        x,
        middle - 4,
        x - 3,
        middle - 1.5,
        x + 3,
        middle + 1.5,
        x,
        middle + 4,
        x,
        bottom + 3);
  }

  /** An arrow that shows a way: a shaft and a large head at its end. */
  void arrow(double fromX, double fromY, double toX, double toY) {
    double length = Math.hypot(toX - fromX, toY - fromY);
    double ux = (toX - fromX) / length;
    double uy = (toY - fromY) / length;
    double neckX = toX - 9 * ux;
    double neckY = toY - 9 * uy;
    stroke(Line.VISIBLE, fromX, fromY, neckX, neckY);
    fill(0, toX, toY, neckX - 4 * uy, neckY + 4 * ux, neckX + 4 * uy, neckY - 4 * ux);
  }

  /**
   * Dimensions along one side.
   *
   * @param isLevel whether they run across the sheet
   * @param outline where that side lies
   * @param outward 1 below or right of it, -1 above or left
   */
  void dimension(boolean isLevel, double outline, int outward, List<Measure> measures) {
    List<DimensionBand.Wish> wishes = new ArrayList<>();
    for (Measure m : measures) {
      wishes.add(
          new DimensionBand.Wish(
              Math.min(m.from, m.to),
              Math.max(m.from, m.to),
              outward * (outline - (m.from < m.to ? m.startFrom : m.startTo)),
              outward * (outline - (m.from < m.to ? m.startTo : m.startFrom)),
              m.isBeyond,
              m.text));
      measured.add(new Measured(m.value, Math.abs(m.to - m.from)));
    }
    marks.addAll(clear(DimensionBand.arrange(isLevel, wishes), outline, outward));
  }

  /** As near to the outline as they stand in nobody's way. */
  private List<Mark> clear(DimensionBand band, double outline, int outward) {
    Ink drawn = Ink.of(marks);
    List<Mark> dimensions = band.marks(0, outline, outward, 0);
    for (double push = 4; push < 60 && Ink.of(dimensions).clashes(drawn); push += 4) {
      dimensions = band.marks(0, outline, outward, push);
    }
    return dimensions;
  }

  /** Upright dimensions at the right that are drawn larger than they are, as the caption says. */
  void stretched(double outline, List<Measure> measures) {
    int before = measured.size();
    dimension(false, outline, 1, measures);
    measured.subList(before, measured.size()).clear();
  }

  /** A name with a line to what it names, as near as there is room. */
  void label(String text, double x, double y) {
    label(text, x, y, x, y);
  }

  /** A name with a line to what it names, as near to a wanted place as there is room. */
  void label(String text, double x, double y, double wishX, double wishY) {
    label(Inscription.of(Face.REGULAR, text), x, y, wishX, wishY);
  }

  /** The same with numbers in it. */
  void label(Inscription text, double x, double y, double wishX, double wishY) {
    labels.add(new Wanted(text, x, y, wishX, wishY, true));
  }

  /** A name in the middle of what it names, or else with a line to it. */
  void name(String text, double x, double y) {
    labels.add(new Wanted(Inscription.of(Face.REGULAR, text), x, y, x, y, false));
  }

  /** A text that stands alone, as near to a place as there is room. */
  void text(Inscription text, double x, double y) {
    labels.add(new Wanted(text, Double.NaN, Double.NaN, x, y, false));
  }

  void caption(Inscription text) {
    captions.add(text);
  }

  /** What has been drawn, without labels. */
  List<Mark> marks() {
    return List.copyOf(marks);
  }

  /** What was dimensioned. */
  List<Measured> measured() {
    return List.copyOf(measured);
  }

  /** Puts all on a sheet; none when it is too large at this scale, or a label finds no place. */
  @Nullable Sheet finish(String name, String alternative) {
    Area extent = extent();
    List<Inscription> lines = lines();
    double below = lines.stream().mapToDouble(Scene::height).sum();
    double spare = HEIGHT - extent.height() - 2 * MARGIN - below;
    boolean isTooWide =
        extent.width() > WIDTH - 2 * MARGIN
            || lines.stream().anyMatch(line -> line.width(SIZE) > WIDTH - 2 * MARGIN);
    if (isRefused || spare < 0 || isTooWide) {
      return null;
    }
    double dx = (WIDTH - extent.width()) / 2 - extent.left();
    for (double room = 0; room <= spare; room += STEP) {
      for (double above : room == 0 ? new double[] {0} : new double[] {0, room / 2, room}) {
        double bottom = MARGIN + room + extent.height();
        Area bounds = new Area(MARGIN, MARGIN, WIDTH - MARGIN, bottom);
        List<Mark> placed = placed(dx, MARGIN + above - extent.top(), bounds);
        if (placed != null) {
          addLines(placed, lines, bottom);
          return new Sheet(name, WIDTH, bottom + below + MARGIN, alternative, placed);
        }
      }
    }
    return null;
  }

  /** Of all that is drawn, and up and down of the labels where they would like to stand. */
  private Area extent() {
    Area extent = Ink.of(marks).extent();
    for (Wanted wanted : labels) {
      Area area = Label.centred(wanted.wishX, wanted.wishY, SIZE, wanted.text).area().grown(2);
      double left = Math.min(extent.left(), area.left());
      double right = Math.max(extent.right(), area.right());
      boolean isTooWide = right - left > WIDTH - 2 * MARGIN;
      extent =
          new Area(
              isTooWide ? extent.left() : left,
              Math.min(extent.top(), area.top()),
              isTooWide ? extent.right() : right,
              Math.max(extent.bottom(), area.bottom()));
    }
    return extent;
  }

  private @Nullable List<Mark> placed(double dx, double dy, Area bounds) {
    List<Mark> placed = new ArrayList<>(List.of(new Moved(marks, dx, dy)));
    for (Wanted label : labels) {
      Wanted wanted = label.moved(dx, dy);
      Label found = label(wanted, Obstacles.of(placed), bounds);
      if (found == null) {
        return null;
      }
      placed.add(found);
      double[] leader = wanted.leader(found);
      // What points nowhere has no length, and is not more than anything.
      if (Math.hypot(leader[2] - leader[0], leader[3] - leader[1]) > NEAR) {
        placed.add(Stroke.of(Line.LEADER, leader[0], leader[1], leader[2], leader[3]));
        placed.add(new Fill(Outline.circle(wanted.x, wanted.y, 1.3), 0));
      }
    }
    return placed;
  }

  private static @Nullable Label label(Wanted wanted, Obstacles obstacles, Area bounds) {
    Label there = Label.centred(wanted.wishX, wanted.wishY, SIZE, wanted.text);
    double clear = wanted.isPointing ? 2 : 1;
    if (there.area().isWithin(bounds)
        && obstacles.isFree(there.area().grown(clear))
        && wanted.suits(there, obstacles)) {
      return there;
    }
    Obstacles.Wish wish =
        new Obstacles.Wish(wanted.wishX, wanted.wishY, label -> wanted.suits(label, obstacles));
    // Most find room close by, and to look everywhere takes ten times as long.
    Label near = obstacles.place(wanted.text, SIZE, around(there, bounds), wish);
    return near == null ? obstacles.place(wanted.text, SIZE, bounds, wish) : near;
  }

  private static Area around(Label label, Area bounds) {
    Area near = label.area().grown(CLOSE);
    return new Area(
        Math.max(near.left(), bounds.left()),
        Math.max(near.top(), bounds.top()),
        Math.min(near.right(), bounds.right()),
        Math.min(near.bottom(), bounds.bottom()));
  }

  /** The captions, as many on a line as fit. */
  private List<Inscription> lines() {
    List<Inscription> lines = new ArrayList<>();
    for (Inscription caption : captions) {
      Inscription longer =
          lines.isEmpty()
              ? caption
              : lines.get(lines.size() - 1).then(Inscription.of(Face.REGULAR, "   ")).then(caption);
      if (!lines.isEmpty() && longer.width(SIZE) <= WIDTH - 2 * MARGIN) {
        lines.set(lines.size() - 1, longer);
      } else {
        lines.add(caption);
      }
    }
    return lines;
  }

  private static double height(Inscription line) {
    return line.above(SIZE) + line.below(SIZE) + APART;
  }

  private static void addLines(List<Mark> placed, List<Inscription> lines, double bottom) {
    double y = bottom;
    for (Inscription line : lines) {
      placed.add(new Label(MARGIN, y + APART + line.above(SIZE), SIZE, line));
      y += height(line);
    }
  }

  /** A text that points to (x, y), unless that is no place, and would like to stand at a wish. */
  private record Wanted(
      Inscription text, double x, double y, double wishX, double wishY, boolean isPointing) {
    Wanted moved(double dx, double dy) {
      return new Wanted(text, x + dx, y + dy, wishX + dx, wishY + dy, isPointing);
    }

    /** Whether the line to what it names runs through no other text. */
    boolean suits(Label label, Obstacles obstacles) {
      double[] leader = leader(label);
      return !obstacles.crossesText(leader[0], leader[1], leader[2], leader[3]);
    }

    /** From the nearest place beside its label to what it names. */
    double[] leader(Label label) {
      Area ink = label.area().grown(2.5);
      double fromX = Math.min(Math.max(x, ink.left()), ink.right());
      double fromY = Math.min(Math.max(y, ink.top()), ink.bottom());
      return new double[] {fromX, fromY, x, y};
    }
  }

  /**
   * A length as it was dimensioned.
   *
   * @param value true length
   * @param points between its extension lines
   */
  record Measured(Length value, double points) {}

  /**
   * A dimension that is wanted.
   *
   * @param from one end, along the dimension line
   * @param to other end
   * @param startFrom where the extension line of {@code from} begins, across the dimension line
   * @param startTo where the extension line of {@code to} begins
   * @param isBeyond whether a number that does not fit goes to the greater side
   * @param value true length
   * @param text what is printed
   */
  record Measure(
      double from,
      double to,
      double startFrom,
      double startTo,
      boolean isBeyond,
      Length value,
      Inscription text) {}
}
