package packetwright.drawing.figure;

import java.util.ArrayList;
import java.util.List;
import packetwright.definition.project.AssemblyDefinition.Joint;
import packetwright.drawing.figure.PictorialSheet.Frame;
import packetwright.drawing.sheet.Sheet;
import packetwright.drawing.view.Isometric.Eye;
import packetwright.drawing.view.Placed;
import packetwright.drawing.view.Placed.Heading;
import packetwright.plan.lesson.Lesson;
import packetwright.text.measure.Length;
import packetwright.text.words.Words;
import packetwright.wood.assembly.Direction;
import packetwright.wood.assembly.Tilt;
import packetwright.wood.part.Box;
import packetwright.wood.part.Point;

/** Pictures of the whole project. */
final class Pictures {
  private static final Point NOWHERE = new Point(Length.ZERO, Length.ZERO, Length.ZERO);

  private final Lesson lesson;
  private final Words words;

  Pictures(Lesson lesson, Words words) {
    this.lesson = lesson;
    this.words = words;
  }

  /** The finished project, what slides being halfway out; none when nothing is placed. */
  List<Sheet> finished() {
    List<Placed> pieces = new ArrayList<>();
    for (packetwright.wood.assembly.Placed piece : lesson.assembly().pieces()) {
      pieces.add(placed(piece, slid(piece)));
    }
    return draw("cover", pieces, new Frame(240, 150, false), "packet.picture");
  }

  /** Every piece moved away from the middle, with its letter. */
  List<Sheet> apart() {
    Box outside = lesson.assembly().outside();
    List<Placed> pieces = new ArrayList<>();
    if (outside != null) {
      for (packetwright.wood.assembly.Placed piece : lesson.assembly().pieces()) {
        pieces.add(placed(piece, away(piece, outside)));
      }
    }
    return draw("exploded", pieces, new Frame(360, 270, true), "packet.picture.apart");
  }

  private List<Sheet> draw(String name, List<Placed> pieces, Frame frame, String alternative) {
    return pieces.isEmpty()
        ? List.of()
        : List.of(
            PictorialSheet.draw(
                name,
                pieces,
                Eye.LOW_X_LOW_Y,
                frame,
                words.plain(alternative, lesson.project().title())));
  }

  private static Placed placed(packetwright.wood.assembly.Placed piece, Point shift) {
    Tilt tilt = piece.tilt();
    return new Placed(
        piece.part().letter(),
        piece.solid(),
        piece.corner(),
        heading(piece.inside()),
        heading(piece.top()),
        shift,
        tilt == null ? null : new Placed.Tilt(heading(tilt.about()), tilt.rise(), tilt.run()));
  }

  private static Heading heading(Direction direction) {
    return new Heading(direction.axis(), direction.isPositive());
  }

  private Point slid(packetwright.wood.assembly.Placed piece) {
    for (Joint joint : lesson.project().assembly().joints()) {
      String out = joint.out();
      Direction direction = out == null ? null : Direction.of(out);
      if (direction != null && joint.pieces().get(0).value().equals(piece.piece())) {
        Length half = piece.part().solid().length().dividedBy(2);
        return NOWHERE.with(direction.axis(), direction.isPositive() ? half : half.times(-1));
      }
    }
    return NOWHERE;
  }

  /** Along the way its faces look, out from the middle. */
  private static Point away(packetwright.wood.assembly.Placed piece, Box outside) {
    int axis = piece.inside().axis();
    Length middle = outside.low().on(axis).plus(outside.high().on(axis)).dividedBy(2);
    Length half = piece.part().solid().thickness().dividedBy(2);
    boolean isLow = piece.corner().on(axis).plus(half).isLess(middle);
    Length far = outside.extent(0).max(outside.extent(1)).dividedBy(4);
    return NOWHERE.with(axis, isLow ? far.times(-1) : far);
  }
}
