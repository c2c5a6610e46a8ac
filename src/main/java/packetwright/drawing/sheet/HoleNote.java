package packetwright.drawing.sheet;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import packetwright.drawing.lettering.Face;
import packetwright.drawing.view.Projection;
import packetwright.text.measure.Length;
import packetwright.text.words.Words;
import packetwright.wood.part.Removal;
import packetwright.wood.part.Solid;

/**
 * The note of a round hole: its diameter, and how deep it is or that it goes through.
 *
 * @param projection the view that shows its circle
 * @param u of its centre, in the view
 * @param v of its centre, in the view
 * @param diameter of the hole
 * @param depth or null when it goes through
 */
record HoleNote(
    Projection projection, Length u, Length v, Length diameter, @Nullable Length depth) {
  private static final double SIZE = Dimension.SIZE;
  private static final double SHELF = 8;

  /** The note of a removal; null when it is no hole. */
  static @Nullable HoleNote of(Removal removal, Solid solid) {
    List<HoleNote> notes =
        removal.match(
            new Removal.Cases<List<HoleNote>>() {
              @Override
              public List<HoleNote> trough(Removal.Trough trough) {
                return List.of();
              }

              @Override
              public List<HoleNote> bore(Removal.Bore bore) {
                return List.of(of(bore, solid));
              }

              @Override
              public List<HoleNote> slope(Removal.Slope slope) {
                return List.of();
              }

              @Override
              public List<HoleNote> outline(Removal.Outline outline) {
                return List.of();
              }
            });
    return notes.isEmpty() ? null : notes.get(0);
  }

  private static HoleNote of(Removal.Bore bore, Solid solid) {
    Projection projection =
        switch (bore.axis()) {
          case 0 -> Projection.END;
          case 1 -> Projection.TOP;
          default -> Projection.FRONT;
        };
    Length start = bore.centre().on(bore.axis());
    boolean isThrough =
        start.signum() <= 0 && !start.plus(bore.depth()).isLess(solid.extent(bore.axis()));
    return new HoleNote(
        projection,
        projection.onPaper(solid, projection.across(), bore.centre().on(projection.across())),
        projection.onPaper(solid, projection.up(), bore.centre().on(projection.up())),
        bore.diameter(),
        isThrough ? null : bore.depth());
  }

  /** The note and its leader, where there is room nearest to the hole. */
  List<Mark> marks(
      Inscription across,
      @Nullable Inscription deep,
      Words words,
      Spot spot,
      Obstacles obstacles,
      Area bounds) {
    Inscription diameter = Inscription.of(Face.REGULAR, "⌀ ").then(across);
    Inscription text =
        deep == null
            ? diameter.then(Inscription.of(Face.REGULAR, words.plain("sheet.through")))
            : diameter
                .then(Inscription.of(Face.REGULAR, ", "))
                .then(deep)
                .then(Inscription.of(Face.REGULAR, words.plain("sheet.deep")));
    Label label =
        obstacles.place(
            text,
            SIZE,
            bounds,
            new Obstacles.Wish(
                spot.x + spot.radius + 40,
                spot.y - spot.radius - 30,
                found -> isClear(obstacles, Leader.of(found, spot))));
    if (label == null) {
      return List.of();
    }
    Leader leader = Leader.of(label, spot);
    double distance = Math.hypot(leader.shelf - spot.x, leader.y - spot.y);
    double towardX = (leader.shelf - spot.x) / distance;
    double towardY = (leader.y - spot.y) / distance;
    double tipX = leader.tipX;
    double tipY = leader.tipY;
    List<Mark> marks = new ArrayList<>();
    marks.add(
        Stroke.of(
            Line.LEADER,
            Outline.polyline(tipX, tipY, leader.shelf, leader.y, leader.end, leader.y)));
    double backX = tipX + towardX * Dimension.ARROW;
    double backY = tipY + towardY * Dimension.ARROW;
    double half = Dimension.ARROW / 6;
    marks.add(
        new Fill(
            Outline.polygon(
                tipX,
                tipY,
                backX - towardY * half,
                backY + towardX * half,
                backX + towardY * half,
                backY - towardX * half),
            0));
    marks.add(label);
    return marks;
  }

  private static boolean isClear(Obstacles obstacles, Leader leader) {
    return !obstacles.crossesText(leader.tipX, leader.tipY, leader.shelf, leader.y)
        && !obstacles.crossesText(leader.shelf, leader.y, leader.end, leader.y);
  }

  /** From the rim of the hole to a level shelf at the height of the text, and to the text. */
  private record Leader(double tipX, double tipY, double shelf, double end, double y) {
    static Leader of(Label label, Spot spot) {
      Area area = label.area();
      boolean isRight = (area.left() + area.right()) / 2 > spot.x;
      double end = isRight ? area.left() - 2 : area.right() + 2;
      double shelf = isRight ? end - SHELF : end + SHELF;
      double y = label.y() - Dimension.capHeight() / 2;
      double distance = Math.hypot(shelf - spot.x, y - spot.y);
      return new Leader(
          spot.x + (shelf - spot.x) / distance * spot.radius,
          spot.y + (y - spot.y) / distance * spot.radius,
          shelf,
          end,
          y);
    }
  }

  /**
   * Where the hole lies on the sheet.
   *
   * @param x of its centre
   * @param y of its centre
   * @param radius as drawn
   */
  record Spot(double x, double y, double radius) {}
}
