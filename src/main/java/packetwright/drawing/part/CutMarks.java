package packetwright.drawing.part;

import java.util.ArrayList;
import java.util.List;
import packetwright.drawing.lettering.Face;
import packetwright.drawing.sheet.Area;
import packetwright.drawing.sheet.Dimension;
import packetwright.drawing.sheet.Fill;
import packetwright.drawing.sheet.Hatching;
import packetwright.drawing.sheet.Inscription;
import packetwright.drawing.sheet.Label;
import packetwright.drawing.sheet.Line;
import packetwright.drawing.sheet.Mark;
import packetwright.drawing.sheet.Obstacles;
import packetwright.drawing.sheet.Outline;
import packetwright.drawing.sheet.Stroke;
import packetwright.drawing.view.Projection;
import packetwright.drawing.view.Section;
import packetwright.drawing.view.View.Place;
import packetwright.wood.part.Removal;

/**
 * The section lining of a section, and the ends of its cutting plane beside the front view: thick
 * strokes outside the outline, arrows that look the way the section is seen, a letter at each.
 */
final class CutMarks {
  private static final double START = 3;
  private static final double STROKE = 16;
  private static final double SHAFT = 13;
  private static final double LETTER = 10;

  /** Half the width of an area that one end of the plane takes. */
  private static final double HALF = 17;

  private CutMarks() {}

  /** Lines over the wood that is cut, in a view whose top left corner lies at a point. */
  static List<Mark> lining(Showing showing, Projection projection, OnSheet onSheet) {
    List<Mark> marks = new ArrayList<>();
    Showing.Cut cut = showing.cuts().get(projection);
    if (cut != null) {
      for (Section.Cut area : cut.section().areas()) {
        List<double[]> rings =
            area.rings().stream().map(ring -> ring(showing, projection, ring, onSheet)).toList();
        for (double[] stretch : onSheet.stretches()) {
          marks.addAll(
              Hatching.of(
                  rings.stream().map(r -> Clip.between(r, stretch[0], stretch[1])).toList(), true));
        }
      }
    }
    return marks;
  }

  private static double[] ring(
      Showing showing, Projection projection, List<Place> ring, OnSheet onSheet) {
    double[] xy = new double[2 * ring.size()];
    int axisU = Removal.acrossU(projection.depth());
    int axisV = Removal.acrossV(projection.depth());
    for (int i = 0; i < ring.size(); i++) {
      double u = projection.onPaper(showing.solid(), axisU, ring.get(i).u());
      double v = projection.onPaper(showing.solid(), axisV, ring.get(i).v());
      boolean isAcrossFirst = projection.across() == axisU;
      xy[2 * i] = onSheet.x(isAcrossFirst ? u : v);
      xy[2 * i + 1] = onSheet.y(isAcrossFirst ? v : u);
    }
    return xy;
  }

  /** The arrows of a section's plane; nothing where there is no room for them. */
  static List<Mark> plane(
      Showing.Cut cut, boolean isUpright, OnSheet front, Area outline, List<Mark> sheet) {
    Obstacles obstacles = Obstacles.of(sheet);
    double low = at(cut.low().inches().approximate(), isUpright, front);
    double high = at(cut.high().inches().approximate(), isUpright, front);
    double middle = (low + high) / 2;
    double slack = Math.abs(high - low) / 2;
    for (double off = 0; off == 0 || off < slack; off += 3) {
      for (double at : new double[] {middle + off, middle - off}) {
        Ends ends = new Ends(isUpright, at, outline, cut.letter());
        if (ends.areas().stream().allMatch(obstacles::isFree)) {
          return ends.marks();
        }
      }
    }
    return List.of();
  }

  private static double at(double place, boolean isUpright, OnSheet front) {
    return isUpright ? front.x(place) : front.y(place);
  }

  /** How a view lies on the sheet. */
  interface OnSheet {
    double x(double u);

    double y(double v);

    /** From where to where it is drawn without a break, across. */
    List<double[]> stretches();
  }

  /**
   * Both ends of a plane.
   *
   * @param isUpright whether the plane runs up the sheet, seen from the right; else seen from above
   * @param at where it crosses the outline
   */
  private record Ends(boolean isUpright, double at, Area outline, String letter) {
    List<Area> areas() {
      return isUpright
          ? List.of(
              new Area(at - HALF, outline.top() - 21, at + HALF, outline.top() - 1),
              new Area(at - HALF, outline.bottom() + 1, at + HALF, outline.bottom() + 21))
          : List.of(
              new Area(outline.left() - 23, at - HALF, outline.left() - 1, at + HALF),
              new Area(outline.right() + 1, at - HALF, outline.right() + 23, at + HALF));
    }

    List<Mark> marks() {
      List<Mark> marks = new ArrayList<>();
      if (isUpright) {
        marks.addAll(upright(outline.top(), -1));
        marks.addAll(upright(outline.bottom(), 1));
      } else {
        marks.addAll(level(outline.left(), -1));
        marks.addAll(level(outline.right(), 1));
      }
      return marks;
    }

    private List<Mark> upright(double side, int outward) {
      double end = side + outward * STROKE;
      return List.of(
          Stroke.of(
              Line.CUTTING,
              Outline.polyline(at, side + outward * START, at, end, at - SHAFT + 5, end)),
          head(at - SHAFT, end, at - SHAFT + Dimension.ARROW, end),
          letter(at + 8, side + outward * 12));
    }

    private List<Mark> level(double side, int outward) {
      double end = side + outward * STROKE;
      return List.of(
          Stroke.of(
              Line.CUTTING,
              Outline.polyline(side + outward * START, at, end, at, end, at + SHAFT - 5)),
          head(end, at + SHAFT, end, at + SHAFT - Dimension.ARROW),
          letter(side + outward * 14, at - 9));
    }

    private Mark letter(double x, double y) {
      return Label.centred(x, y, LETTER, Inscription.of(Face.BOLD, letter));
    }

    private static Mark head(double tipX, double tipY, double backX, double backY) {
      double half = Dimension.ARROW / 5;
      boolean isLevel = tipY == backY;
      return new Fill(
          isLevel
              ? Outline.polygon(tipX, tipY, backX, backY - half, backX, backY + half)
              : Outline.polygon(tipX, tipY, backX - half, backY, backX + half, backY),
          0);
    }
  }

  /** Rings cut off at upright lines (Sutherland and Hodgman 1974). */
  private static final class Clip {
    private Clip() {}

    static double[] between(double[] ring, double left, double right) {
      return beyond(beyond(ring, left, 1), right, -1);
    }

    private static double[] beyond(double[] ring, double line, int side) {
      List<Double> kept = new ArrayList<>();
      for (int i = 0; i < ring.length; i += 2) {
        int next = (i + 2) % ring.length;
        double one = side * (ring[i] - line);
        double other = side * (ring[next] - line);
        if (one >= 0) {
          kept.add(ring[i]);
          kept.add(ring[i + 1]);
        }
        if ((one >= 0) != (other >= 0)) {
          kept.add(line);
          kept.add(ring[i + 1] + one / (one - other) * (ring[next + 1] - ring[i + 1]));
        }
      }
      return kept.stream().mapToDouble(Double::doubleValue).toArray();
    }
  }
}
