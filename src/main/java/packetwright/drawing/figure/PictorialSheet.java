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
import packetwright.drawing.sheet.Outline;
import packetwright.drawing.sheet.Painter;
import packetwright.drawing.sheet.Sheet;
import packetwright.drawing.sheet.Stroke;
import packetwright.drawing.view.Isometric;
import packetwright.drawing.view.Isometric.Eye;
import packetwright.drawing.view.Pictorial;
import packetwright.drawing.view.Pictorial.Facing;
import packetwright.drawing.view.Pictorial.Region;
import packetwright.drawing.view.Pictorial.Spot;
import packetwright.drawing.view.Placed;

/** Placed pieces in a true isometric drawing: three greys, hidden lines removed, part letters. */
public final class PictorialSheet {
  private static final double MARGIN = 6;
  private static final double BALLOON = 9;
  private static final double OUTLINE = 1.6;
  private static final double INNER = 0.8;

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
    double scale =
        Math.min(
            (frame.width - 2 * MARGIN) / extent.width(),
            (frame.height - 2 * MARGIN) / extent.height());
    PictorialSheet sheet =
        new PictorialSheet(
            picture, scale, MARGIN - extent.left() * scale, MARGIN + extent.bottom() * scale);
    sheet.paint();
    if (frame.hasLetters) {
      sheet.letter(pieces);
    }
    return new Sheet(
        name,
        extent.width() * scale + 2 * MARGIN,
        extent.height() * scale + 2 * MARGIN,
        alternative,
        sheet.marks);
  }

  /** In inches, v upward: the area's top is its least v. */
  private static Area extent(Pictorial picture) {
    List<Spot> spots = picture.lines().stream().flatMap(l -> l.spots().stream()).toList();
    return new Area(
        spots.stream().mapToDouble(Spot::u).min().orElse(0),
        spots.stream().mapToDouble(Spot::v).min().orElse(0),
        spots.stream().mapToDouble(Spot::u).max().orElse(1),
        spots.stream().mapToDouble(Spot::v).max().orElse(1));
  }

  private void paint() {
    for (Region region : picture.regions()) {
      List<Outline.Segment> segments = new ArrayList<>();
      for (List<Spot> ring : region.rings()) {
        segments.addAll(Outline.polygon(places(ring.subList(0, ring.size() - 1))).segments());
      }
      marks.add(new Fill(new Outline(segments), tone(region.facing())));
    }
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
    marks.add(new Stroke(path, new Painter.Pen(line.isOutline() ? OUTLINE : INNER, List.of(), 0)));
  }

  private double[] places(List<Spot> spots) {
    double[] places = new double[2 * spots.size()];
    for (int i = 0; i < spots.size(); i++) {
      places[2 * i] = x(spots.get(i));
      places[2 * i + 1] = y(spots.get(i));
    }
    return places;
  }

  /** Light from above left; steps wide enough for a copier. */
  private static double tone(Facing facing) {
    return switch (facing) {
      case UP -> 1;
      case LEFT -> 0.9;
      case RIGHT -> 0.76;
    };
  }

  /** Each letter once, on the roomiest area that shows its part. */
  private void letter(List<Placed> pieces) {
    Map<String, Region> roomiest = new LinkedHashMap<>();
    for (Region region : picture.regions()) {
      roomiest.merge(
          pieces.get(region.piece()).letter(),
          region,
          (one, other) -> other.room() > one.room() ? other : one);
    }
    roomiest.forEach(
        (letter, region) -> {
          double x = x(region.middle());
          double y = y(region.middle());
          marks.add(new Fill(Outline.circle(x, y, BALLOON), 1));
          marks.add(Stroke.of(Line.FINE, Outline.circle(x, y, BALLOON)));
          marks.add(Label.centred(x, y, 11, Inscription.of(Face.BOLD, letter)));
        });
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
   * @param hasLetters whether each part's letter stands on it
   */
  public record Frame(double width, double height, boolean hasLetters) {}
}
