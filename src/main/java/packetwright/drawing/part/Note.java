package packetwright.drawing.part;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import packetwright.drawing.sheet.Area;
import packetwright.drawing.sheet.Dimension;
import packetwright.drawing.sheet.Fill;
import packetwright.drawing.sheet.Inscription;
import packetwright.drawing.sheet.Label;
import packetwright.drawing.sheet.Line;
import packetwright.drawing.sheet.Mark;
import packetwright.drawing.sheet.Obstacles;
import packetwright.drawing.sheet.Outline;
import packetwright.drawing.sheet.Stroke;
import packetwright.drawing.view.Projection;
import packetwright.text.measure.Length;
import packetwright.text.measure.Rule;
import packetwright.text.words.Words;
import packetwright.wood.part.Box;
import packetwright.wood.part.Part;
import packetwright.wood.part.Part.Feature;
import packetwright.wood.part.Removal;
import packetwright.wood.part.Removal.Bend;
import packetwright.wood.part.Removal.Bore;
import packetwright.wood.part.Removal.Corner;
import packetwright.wood.part.Solid;

/**
 * What stands on a leader beside a feature: the diameter of a hole, a radius, an angle. Features
 * that would say the same in one view share one note, with their number before it.
 *
 * @param projection the view that shows the true shape
 * @param anchors what it may point at, in the view, in inches
 * @param text what it says
 */
record Note(Projection projection, List<Anchor> anchors, Inscription text) {
  private static final double SIZE = Dimension.SIZE;
  private static final double SHELF = 8;

  /** Between a note and other numbers, in points, so that they do not read as one. */
  private static final double APART = 8;

  /** From a place to the middle of its note, in points, where there is room. */
  private static final double AWAY = 50;

  /** Keeps its own copy. */
  Note {
    anchors = List.copyOf(anchors);
  }

  /** The notes of a part, in the order of its features. */
  static List<Note> of(Showing showing, Rule rule, Words words) {
    Part part = showing.part();
    PartWords texts = new PartWords(part, rule, words);
    Map<Note, List<Anchor>> same = new LinkedHashMap<>();
    for (Feature feature : part.features()) {
      for (Removal removal : PartWords.noted(feature)) {
        Projection projection = Showing.endOn(axis(removal));
        Note bare = new Note(projection, List.of(), texts.note(feature, removal));
        same.computeIfAbsent(bare, n -> new ArrayList<>())
            .add(anchor(removal, showing, projection));
      }
    }
    List<Note> notes = new ArrayList<>();
    same.forEach(
        (note, anchors) ->
            notes.add(
                new Note(note.projection, anchors, texts.counted(note.text, anchors.size()))));
    return notes;
  }

  /** The axis along which what has a note is seen in its true shape. */
  static int axis(Removal removal) {
    return removal.match(
        new Removal.Cases<Integer>() {
          @Override
          public Integer trough(Removal.Trough trough) {
            throw new IllegalArgumentException("a note on " + trough);
          }

          @Override
          public Integer bore(Bore bore) {
            return bore.axis();
          }

          @Override
          public Integer slope(Removal.Slope slope) {
            return slope.axis();
          }

          @Override
          public Integer outline(Removal.Outline outline) {
            return outline.axis();
          }
        });
  }

  private static Anchor anchor(Removal removal, Showing showing, Projection projection) {
    Solid solid = showing.part().solid();
    Anchor anchor =
        removal.match(
            new Removal.Cases<Anchor>() {
              @Override
              public Anchor trough(Removal.Trough trough) {
                throw new IllegalArgumentException("a note on " + trough);
              }

              @Override
              public Anchor bore(Bore bore) {
                return new Anchor(
                    inches(bore.centre().on(Removal.acrossU(bore.axis()))),
                    inches(bore.centre().on(Removal.acrossV(bore.axis()))),
                    inches(bore.diameter()) / 2,
                    0,
                    0);
              }

              @Override
              public Anchor slope(Removal.Slope slope) {
                Anchor middle = middle(slope, slope.axis(), solid);
                return middle.looking(slope.a().approximate(), slope.b().approximate());
              }

              @Override
              public Anchor outline(Removal.Outline outline) {
                return onArc(outline, solid);
              }
            });
    return anchor.onPaper(showing, projection);
  }

  private static double inches(Length length) {
    return length.inches().approximate();
  }

  /** The middle of what is taken, which for a wedge lies on its slant. */
  private static Anchor middle(Removal removal, int axis, Solid solid) {
    Box around = removal.around(solid.block());
    Box box = around == null ? solid.block() : around;
    int u = Removal.acrossU(axis);
    int v = Removal.acrossV(axis);
    return new Anchor(
        (inches(box.low().on(u)) + inches(box.high().on(u))) / 2,
        (inches(box.low().on(v)) + inches(box.high().on(v))) / 2,
        0,
        0,
        0);
  }

  /** The middle of the first arc of a path. */
  private static Anchor onArc(Removal.Outline outline, Solid solid) {
    for (int i = 0; i < outline.path().size(); i++) {
      Corner from = outline.path().get(i);
      Corner to = outline.path().get((i + 1) % outline.path().size());
      Bend bend = from.bend();
      if (bend != null) {
        double u = inches(bend.u());
        double v = inches(bend.v());
        double toU = (inches(from.u()) + inches(to.u())) / 2 - u;
        double toV = (inches(from.v()) + inches(to.v())) / 2 - v;
        double radius = Math.hypot(inches(from.u()) - u, inches(from.v()) - v);
        double far = radius / Math.hypot(toU, toV);
        // What is taken lies at the left of the path.
        double out = bend.isCounterclockwise() ? -1 : 1;
        return new Anchor(u + toU * far, v + toV * far, 0, 0, 0).looking(out * toU, out * toV);
      }
    }
    return middle(outline, outline.axis(), solid);
  }

  /**
   * The note and its leader, where there is room nearest to one of its anchors; nothing where there
   * is none.
   *
   * @param toSheet an anchor's place on the sheet, in points
   */
  List<Mark> marks(UnaryOperator<Anchor> toSheet, List<Mark> sheet, Area bounds) {
    Obstacles obstacles = Obstacles.of(sheet);
    return anchors.stream()
        .map(toSheet)
        .map(spot -> leader(spot, obstacles, bounds))
        .flatMap(List::stream)
        .min(Comparator.comparingDouble(Leader::length))
        .map(Leader::marks)
        .orElse(List.of());
  }

  private List<Leader> leader(Anchor spot, Obstacles obstacles, Area bounds) {
    Label label =
        obstacles.place(
            text,
            SIZE,
            bounds,
            new Obstacles.Wish(
                spot.u + spot.radius + AWAY * spot.towardU,
                spot.v - spot.radius + AWAY * spot.towardV,
                found ->
                    obstacles.isApart(found.area().grown(APART))
                        && Leader.of(found, spot).isClear(obstacles, bounds)));
    return label == null ? List.of() : List.of(Leader.of(label, spot));
  }

  /** From the rim of a hole, or a place, to a level shelf at the height of the text. */
  private record Leader(Label label, double tipX, double tipY, double shelf, double end, double y) {
    static Leader of(Label label, Anchor spot) {
      Area area = label.area();
      boolean isRight = (area.left() + area.right()) / 2 > spot.u;
      double end = isRight ? area.left() - 2 : area.right() + 2;
      double shelf = isRight ? end - SHELF : end + SHELF;
      double y = label.y() - Dimension.capHeight() / 2;
      double distance = Math.hypot(shelf - spot.u, y - spot.v);
      return new Leader(
          label,
          spot.u + (shelf - spot.u) / distance * spot.radius,
          spot.v + (y - spot.v) / distance * spot.radius,
          shelf,
          end,
          y);
    }

    boolean isClear(Obstacles obstacles, Area bounds) {
      return shelf > bounds.left()
          && shelf < bounds.right()
          && length() > Dimension.ARROW
          && !label.area().grown(1.5).isCrossedBy(tipX, tipY, shelf, y)
          && !obstacles.crossesText(tipX, tipY, shelf, y)
          && !obstacles.crossesText(shelf, y, end, y)
          && !obstacles.crossesLine(shelf, y, end, y);
    }

    double length() {
      return Math.hypot(shelf - tipX, y - tipY);
    }

    List<Mark> marks() {
      double towardX = (shelf - tipX) / length();
      double towardY = (y - tipY) / length();
      double backX = tipX + towardX * Dimension.ARROW;
      double backY = tipY + towardY * Dimension.ARROW;
      double half = Dimension.ARROW / 6;
      return List.of(
          Stroke.of(Line.LEADER, Outline.polyline(tipX, tipY, shelf, y, end, y)),
          new Fill(
              Outline.polygon(
                  tipX,
                  tipY,
                  backX - towardY * half,
                  backY + towardX * half,
                  backX + towardY * half,
                  backY - towardX * half),
              0),
          label);
    }
  }

  /**
   * A place that a leader may point at, or the circle of a hole.
   *
   * @param u across; of the circle's centre
   * @param v up in a view, down on a sheet
   * @param radius 0 for a place
   * @param towardU which way the wood ends there, an inch long; 0 for a hole
   * @param towardV the same
   */
  record Anchor(double u, double v, double radius, double towardU, double towardV) {
    Anchor looking(double outU, double outV) {
      double size = Math.hypot(outU, outV);
      return new Anchor(u, v, radius, outU / size, outV / size);
    }

    /** From the plane across an axis of the piece into its view. */
    Anchor onPaper(Showing showing, Projection projection) {
      boolean isAcrossFirst = projection.across() < projection.up();
      double across = isAcrossFirst ? u : v;
      double up = isAcrossFirst ? v : u;
      double paperU = showing.onPaper(projection, projection.across(), across);
      double paperV = showing.onPaper(projection, projection.up(), up);
      double outU = isAcrossFirst ? towardU : towardV;
      double outV = isAcrossFirst ? towardV : towardU;
      return new Anchor(
          paperU,
          paperV,
          radius,
          showing.onPaper(projection, projection.across(), across + outU) - paperU,
          showing.onPaper(projection, projection.up(), up + outV) - paperV);
    }

    /** From its view to the sheet. A hole's note stands right. */
    Anchor onSheet(CutMarks.OnSheet view, double points) {
      boolean isHole = radius > 0;
      return new Anchor(
          view.x(u), view.y(v), radius * points, isHole ? 0.8 : towardU, isHole ? -0.6 : -towardV);
    }
  }
}
