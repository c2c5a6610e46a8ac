package packetwright.drawing.part;

import java.util.Arrays;
import java.util.List;
import packetwright.drawing.view.Projection;

/** A side of a view along which dimensions stand. */
enum Band {
  FRONT_BELOW(Projection.FRONT, true, 1),
  FRONT_ABOVE(Projection.FRONT, true, -1),
  FRONT_LEFT(Projection.FRONT, false, -1),
  FRONT_RIGHT(Projection.FRONT, false, 1),
  TOP_ABOVE(Projection.TOP, true, -1),
  TOP_LEFT(Projection.TOP, false, -1),
  TOP_RIGHT(Projection.TOP, false, 1),
  END_LEFT(Projection.END, false, -1),
  END_RIGHT(Projection.END, false, 1),
  END_BELOW(Projection.END, true, 1);

  private final Projection projection;
  private final boolean level;
  private final int outward;

  Band(Projection projection, boolean level, int outward) {
    this.projection = projection;
    this.level = level;
    this.outward = outward;
  }

  Projection projection() {
    return projection;
  }

  /** Whether its dimension lines run across the sheet. */
  boolean isLevel() {
    return level;
  }

  /** 1 below or right of the view, -1 above or left. */
  int outward() {
    return outward;
  }

  /** The axis of the piece that is measured along it. */
  int axis() {
    return level ? projection.across() : projection.up();
  }

  static List<Band> of(Projection projection) {
    return Arrays.stream(values()).filter(b -> b.projection == projection).toList();
  }

  /** Those along which an axis is measured. */
  static List<Band> along(int axis) {
    return Arrays.stream(values()).filter(b -> b.axis() == axis).toList();
  }
}
