package packetwright.drawing.figure;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import packetwright.drawing.lettering.Face;
import packetwright.drawing.sheet.Area;
import packetwright.drawing.sheet.Fill;
import packetwright.drawing.sheet.Inscription;
import packetwright.drawing.sheet.Label;
import packetwright.drawing.sheet.Line;
import packetwright.drawing.sheet.Mark;
import packetwright.drawing.sheet.Obstacles;
import packetwright.drawing.sheet.Outline;
import packetwright.drawing.sheet.Sheet;
import packetwright.drawing.sheet.Stroke;
import packetwright.drawing.view.Isometric;
import packetwright.drawing.view.Isometric.Eye;
import packetwright.drawing.view.Pictorial;
import packetwright.drawing.view.Pictorial.Region;
import packetwright.drawing.view.Pictorial.Spot;
import packetwright.drawing.view.Placed;

/**
 * Placed pieces in a true isometric drawing: hidden lines removed, the outline of each piece thick
 * and its inner edges thin; where pieces are drawn apart, their letters in balloons and thin lines
 * to their places.
 */
public final class PictorialSheet {
  private static final double MARGIN = 6;
  private static final double BALLOON = 9;
  private static final double DOT = 1.4;

  /** Air around a balloon. */
  private static final double CLEAR = 2;

  /** A balloon stands no farther from its part, in points. */
  private static final double FAR = 90;

  private final Pictorial picture;
  private final double scale;
  private final double left;
  private final double top;
  private final List<Mark> marks = new ArrayList<>();

  private PictorialSheet(Pictorial picture, double scale, double left, double top) {
    this.picture = picture;
    this.scale = scale;
    this.left = left;
    this.top = top;
  }

  /**
   * Draws pieces as large as fits.
   *
   * @param name of the sheet
   * @param pieces in place, or shifted
   * @param eye from which corner
   * @param frame the most that it may take, and whether each part's letter stands on it
   * @param alternative what is seen, in words
   */
  public static Sheet draw(
      String name, List<Placed> pieces, Eye eye, Frame frame, String alternative) {
    Pictorial picture = Isometric.draw(pieces, eye);
    Area extent = extent(picture);
    double margin = frame.hasLetters ? MARGIN + 2 * BALLOON : MARGIN;
    double scale =
        Math.min(
            (frame.width - 2 * margin) / extent.width(),
            (frame.height - 2 * margin) / extent.height());
    PictorialSheet sheet =
        new PictorialSheet(
            picture, scale, margin - extent.left() * scale, margin + extent.bottom() * scale);
    double width = extent.width() * scale + 2 * margin;
    double height = extent.height() * scale + 2 * margin;
    sheet.paintLines();
    if (frame.hasLetters) {
      sheet.paintMoves();
      sheet.letter(pieces, new Area(0, 0, width, height));
    }
    return new Sheet(name, width, height, alternative, sheet.marks);
  }

  /** In inches, v upward: the area's top is its least v. */
  private static Area extent(Pictorial picture) {
    List<Spot> spots = new ArrayList<>();
    picture.lines().forEach(line -> spots.addAll(line.spots()));
    picture.moves().forEach(move -> spots.addAll(List.of(move.from(), move.to())));
    return new Area(
        spots.stream().mapToDouble(Spot::u).min().orElse(0),
        spots.stream().mapToDouble(Spot::v).min().orElse(0),
        spots.stream().mapToDouble(Spot::u).max().orElse(1),
        spots.stream().mapToDouble(Spot::v).max().orElse(1));
  }

  private void paintLines() {
    picture.lines().stream()
        .sorted(Comparator.comparing(Pictorial.Line::isOutline))
        .forEach(this::line);
  }

  private void line(Pictorial.Line line) {
    List<Spot> spots = line.spots();
    boolean isClosed = spots.get(0).equals(spots.get(spots.size() - 1));
    Outline path =
        isClosed
            ? Outline.polygon(places(spots.subList(0, spots.size() - 1)))
            : Outline.polyline(places(spots));
    marks.add(Stroke.of(line.isOutline() ? Line.VISIBLE : Line.FINE, path));
  }

  private void paintMoves() {
    for (Pictorial.Move move : picture.moves()) {
      double[] ends = places(List.of(move.from(), move.to()));
      marks.add(Stroke.of(Line.EXPLOSION, ends[0], ends[1], ends[2], ends[3]));
    }
  }

  private double[] places(List<Spot> spots) {
    double[] places = new double[2 * spots.size()];
    for (int i = 0; i < spots.size(); i++) {
      places[2 * i] = x(spots.get(i));
      places[2 * i + 1] = y(spots.get(i));
    }
    return places;
  }

  /** Each letter once: on the roomiest area that shows its part, or beside it with a leader. */
  private void letter(List<Placed> pieces, Area paper) {
    Map<String, List<Region>> shown = new LinkedHashMap<>();
    picture.regions().stream()
        .sorted(Comparator.comparingDouble(Region::room).reversed())
        .forEach(
            region ->
                shown
                    .computeIfAbsent(pieces.get(region.piece()).letter(), l -> new ArrayList<>())
                    .add(region));
    shown.forEach((letter, regions) -> letter(letter, regions, paper));
  }

  private void letter(String letter, List<Region> regions, Area paper) {
    Obstacles obstacles = Obstacles.of(marks);
    for (Region region : regions) {
      Area balloon = around(x(region.middle()), y(region.middle()));
      if (region.room() * scale > BALLOON + CLEAR && obstacles.isFree(balloon)) {
        balloon(letter, x(region.middle()), y(region.middle()));
        return;
      }
    }
    double x = x(regions.get(0).middle());
    double y = y(regions.get(0).middle());
    double[] beside = beside(x, y, regions, obstacles, paper);
    double away = Math.hypot(beside[0] - x, beside[1] - y);
    if (away > 0) {
      double rim = 1 - BALLOON / away;
      double rimX = x + (beside[0] - x) * rim;
      double rimY = y + (beside[1] - y) * rim;
      marks.add(Stroke.of(Line.LEADER, x, y, rimX, rimY));
      marks.add(new Fill(Outline.circle(x, y, DOT), 0));
    }
    balloon(letter, beside[0], beside[1]);
  }

  private void balloon(String letter, double x, double y) {
    marks.add(new Fill(Outline.circle(x, y, BALLOON), 1));
    marks.add(Stroke.of(Line.FINE, Outline.circle(x, y, BALLOON)));
    marks.add(Label.centred(x, y, 11, Inscription.of(Face.BOLD, letter)));
  }

  /**
   * The nearest free middle of a balloon, before the background or the part itself; else before
   * another part; else the place itself.
   */
  private double[] beside(double x, double y, List<Region> own, Obstacles obstacles, Area paper) {
    double[] second = {x, y};
    for (double away = 2 * BALLOON; away <= FAR; away += BALLOON / 2) {
      for (int turn = 0; turn < 24; turn++) {
        // First up and to the right, as a leader is drawn.
        double angle = Math.PI / 12 * (turn + 3);
        double toX = x + away * StrictMath.cos(angle);
        double toY = y - away * StrictMath.sin(angle);
        Area balloon = around(toX, toY);
        if (balloon.isWithin(paper)
            && obstacles.isFree(balloon)
            && !obstacles.crossesText(x, y, toX, toY)) {
          if (isClearOfOthers(toX, toY, own)) {
            return new double[] {toX, toY};
          }
          second = second[0] == x && second[1] == y ? new double[] {toX, toY} : second;
        }
      }
    }
    return second;
  }

  /** No line runs through a balloon, so its middle tells before which part it stands. */
  private boolean isClearOfOthers(double x, double y, List<Region> own) {
    Spot spot = new Spot((x - left) / scale, (top - y) / scale);
    return picture.regions().stream().noneMatch(r -> !own.contains(r) && holds(r, spot));
  }

  /** Even and odd: a ray to the right crosses the rings an odd number of times. */
  private static boolean holds(Region region, Spot spot) {
    boolean isInside = false;
    for (List<Spot> ring : region.rings()) {
      for (int i = 1; i < ring.size(); i++) {
        Spot from = ring.get(i - 1);
        Spot to = ring.get(i);
        double part = (spot.v() - from.v()) / (to.v() - from.v());
        if (from.v() > spot.v() != to.v() > spot.v()
            && spot.u() < from.u() + (to.u() - from.u()) * part) {
          isInside = !isInside;
        }
      }
    }
    return isInside;
  }

  private static Area around(double x, double y) {
    return new Area(x, y, x, y).grown(BALLOON + CLEAR);
  }

  private double x(Spot spot) {
    return left + spot.u() * scale;
  }

  private double y(Spot spot) {
    return top - spot.v() * scale;
  }

  /**
   * What a picture is fitted into.
   *
   * @param width in points
   * @param height in points
   * @param hasLetters whether each part's letter stands on it, and lines run to the places of the
   *     pieces that are shifted
   */
  public record Frame(double width, double height, boolean hasLetters) {}
}
