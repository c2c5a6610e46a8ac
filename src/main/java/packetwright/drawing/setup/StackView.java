package packetwright.drawing.setup;

import java.util.ArrayList;
import java.util.List;
import packetwright.definition.shop.Shop.CutterSet;
import packetwright.drawing.lettering.Face;
import packetwright.drawing.sheet.Area;
import packetwright.drawing.sheet.Inscription;
import packetwright.drawing.sheet.Line;
import packetwright.text.measure.Length;
import packetwright.wood.setup.Setting;

/**
 * What a dado set is stacked from, in the order on the arbor, each with its thickness, apart from
 * one another and larger than they are.
 *
 * @param setUp the operation
 * @param set the cutter as it is set
 */
record StackView(SetUp setUp, Setting set) implements View {
  /** One above another where a row is full. */
  private static final int MOST = 7;

  private static final double TALL = 58;
  private static final double PITCH = 32;
  private static final double APART = 9;

  /** What something in a stack is. */
  private enum Kind {
    OUTSIDE,
    CHIPPER,
    SHIM
  }

  /** Some alike beside one another. */
  private record Column(Kind kind, Length thickness, int count) {}

  @Override
  public void draw(Scene scene) {
    double x = 0;
    List<Column> columns = columns();
    for (Column column : columns) {
      double wide = scene.points(column.thickness);
      double room = Math.max(PITCH, wide + APART);
      draw(scene, column, x + (room - wide) / 2, wide);
      letter(scene, column, x + room / 2);
      x += room;
    }
    scene.text(
        Inscription.of(Face.REGULAR, setUp.text("stack.total") + " ")
            .then(Inscription.graded(setUp.rule().printExactly(set.value()), setUp.words())),
        x / 2,
        40);
    scene.caption(Inscription.of(Face.ITALIC, setUp.text("stack.caption")));
    scene.caption(
        Inscription.of(Face.ITALIC, scene.scale().phrase(setUp.rule().unit(), setUp.words())));
  }

  private void draw(Scene scene, Column column, double left, double wide) {
    boolean isShim = column.kind == Kind.SHIM;
    double top = isShim ? -TALL * 0.62 : -TALL + 8;
    scene.box(isShim ? 1 : Cutter.TONE, Line.FINE, new Area(left, top, left + wide, 0));
    if (!isShim) {
      scene.fill(0.35, left, top, left, top - 7, left + wide, top - 7, left + wide, top);
    }
  }

  private void letter(Scene scene, Column column, double middle) {
    Inscription thickness =
        Inscription.graded(setUp.rule().printExactly(column.thickness), setUp.words());
    Inscription number =
        column.count == 1
            ? thickness
            : Inscription.of(Face.REGULAR, column.count + " × ").then(thickness);
    scene.text(number, middle, 13);
    scene.text(
        Inscription.of(
            Face.REGULAR,
            setUp.text("stack." + column.kind.name().toLowerCase(java.util.Locale.ROOT))),
        middle,
        -TALL - 12);
  }

  private List<Column> columns() {
    List<Length> sitting = Cutter.of(set.value().asLength(), set.stack()).stack();
    boolean isFull = sitting.size() > MOST;
    List<Column> columns = new ArrayList<>();
    for (int i = 0; i < sitting.size(); i++) {
      Column column = new Column(kind(i, sitting), sitting.get(i), 1);
      int last = columns.size() - 1;
      boolean isAlike =
          isFull
              && last >= 0
              && columns.get(last).kind == column.kind
              && columns.get(last).thickness.equals(column.thickness);
      if (isAlike) {
        columns.set(last, new Column(column.kind, column.thickness, columns.get(last).count + 1));
      } else {
        columns.add(column);
      }
    }
    return columns;
  }

  private Kind kind(int index, List<Length> sitting) {
    CutterSet owned = setUp.shop().cutters();
    if (index == 0 || index == sitting.size() - 1) {
      return Kind.OUTSIDE;
    }
    return owned.chippers().contains(sitting.get(index)) ? Kind.CHIPPER : Kind.SHIM;
  }

  @Override
  public List<String> alternative() {
    List<String> said = new ArrayList<>();
    for (Column column : columns()) {
      said.add(
          setUp
              .words()
              .plain(
                  "setup.stack.said",
                  setUp.text("stack." + column.kind.name().toLowerCase(java.util.Locale.ROOT)),
                  setUp.words().aloud(setUp.rule().printExactly(column.thickness)),
                  column.count));
    }
    return said;
  }
}
