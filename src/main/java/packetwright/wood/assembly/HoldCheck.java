package packetwright.wood.assembly;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import packetwright.definition.project.AssemblyDefinition.Joint;
import packetwright.definition.project.Project;
import packetwright.text.measure.Length;
import packetwright.text.source.Finding;

/**
 * Whether the pieces of a joint hold each other: a corner closes up on two sides, what is let into
 * a dado has no play there, and a panel stays in its grooves wherever it is pushed.
 */
final class HoldCheck {
  /** So wide a gap is too wide for a glue line; common practice, no source. */
  private static final Length TOO_WIDE = Length.ofInches(1, 32);

  private final Project project;
  private final List<Placed> pieces;
  private final Joint joint;
  private final List<Placed> meeting;

  /**
   * @param pieces all of them; no two overlap
   * @param meeting those of the joint, its first one first
   */
  HoldCheck(Project project, List<Placed> pieces, Joint joint, List<Placed> meeting) {
    this.project = project;
    this.pieces = pieces;
    this.joint = joint;
    this.meeting = List.copyOf(meeting);
  }

  List<Finding> check() {
    if (meeting.size() < 2) {
      return List.of();
    }
    Placed first = meeting.get(0);
    List<Placed> others = meeting.subList(1, meeting.size());
    return switch (joint.kind()) {
      case "rabbet" ->
          others.stream().map(o -> corner(first, o)).flatMap(Stream::ofNullable).toList();
      case "dado" -> others.stream().map(o -> dado(first, o)).flatMap(Stream::ofNullable).toList();
      case "groove", "slide" -> panel(first, others);
      default -> List.of();
    };
  }

  // ---- corners and dadoes

  /** None when the two meet, or nearly, along two axes. */
  private @Nullable Finding corner(Placed holder, Placed held) {
    List<Length> open = new ArrayList<>();
    int tight = 0;
    String along = "";
    for (int axis = 0; axis < 3; axis++) {
      Length gap = held.gapTo(holder, axis);
      if (gap == null) {
        continue;
      }
      if (gap.isLess(TOO_WIDE)) {
        tight++;
      } else if (open.isEmpty() || gap.isLess(open.get(0))) {
        open.add(0, gap);
        along = letter(axis);
      }
    }
    if (tight >= 2) {
      return null;
    }
    String names = "`" + held.piece() + "` and `" + holder.piece() + "`";
    String closes = ", and a " + joint.kind() + " joint closes up on two sides";
    return open.isEmpty()
        ? error(
            "joint-apart",
            names + " meet on one side only" + closes,
            "write `butt` for the joint, or let one of them into the other")
        : error(
            "joint-apart",
            names + " leave " + print(open.get(0)) + " open along " + along + closes,
            "change the "
                + joint.kind()
                + " or a piece by "
                + print(open.get(0))
                + " along "
                + along);
  }

  private @Nullable Finding dado(Placed first, Placed other) {
    int across = across(first, other);
    if (across < 0) {
      return notWithin(first, other);
    }
    Length play = Objects.requireNonNull(play(first, other, across));
    return play.isLess(TOO_WIDE)
        ? corner(other, first)
        : error(
            "joint-loose",
            "`"
                + first.piece()
                + "` has "
                + print(play)
                + " of play along "
                + letter(across)
                + " in the dado of `"
                + other.piece()
                + "`",
            "make the dado as wide as what goes in it; it holds with less than "
                + print(TOO_WIDE)
                + " of play");
  }

  private Finding notWithin(Placed first, Placed other) {
    return error(
        "piece-not-held",
        "`" + first.piece() + "` lies in no " + trough() + " of `" + other.piece() + "`",
        "cut a " + trough() + " in `" + other.piece() + "` for it, or leave it out of the joint");
  }

  private String trough() {
    return joint.kind().equals("dado") ? "dado" : "groove";
  }

  // ---- panels

  private List<Finding> panel(Placed panel, List<Placed> holders) {
    List<Finding> findings = new ArrayList<>();
    for (Placed holder : holders) {
      if (across(panel, holder) < 0) {
        findings.add(notWithin(panel, holder));
      }
    }
    if (findings.isEmpty()) {
      for (Direction way : Direction.all()) {
        Length room = room(panel, pieces, way);
        if (room == null) {
          leaves(panel, way).forEach(findings::add);
        } else {
          falls(panel, holders, way, room).forEach(findings::add);
        }
      }
      jams(panel, holders).forEach(findings::add);
    }
    return findings;
  }

  /** A panel that is fastened too, or slides that way, may have nothing before it. */
  private Stream<Finding> leaves(Placed panel, Direction way) {
    boolean isFastened =
        project.assembly().joints().stream()
            .filter(j -> !j.name().equals(joint.name()))
            .flatMap(j -> j.pieces().stream())
            .anyMatch(p -> p.value().equals(panel.piece()));
    return isFastened || joint.glued() || way.toString().equals(joint.out())
        ? Stream.empty()
        : Stream.of(
            error(
                "piece-not-held",
                "nothing keeps `" + panel.piece() + "` from coming out toward " + way,
                "close the groove off on that side, or write a slide joint with `out: "
                    + way
                    + "`"));
  }

  /** Pushed against one side, it must still lie in the grooves of the others. */
  private Stream<Finding> falls(Placed panel, List<Placed> holders, Direction way, Length room) {
    Placed pushed = panel.moved(way, room);
    return holders.stream()
        .filter(holder -> play(pushed, holder, across(panel, holder)) == null)
        .map(
            holder ->
                error(
                    "piece-not-held",
                    "`"
                        + panel.piece()
                        + "` can move "
                        + print(room)
                        + " toward "
                        + way
                        + ", and comes out of `"
                        + holder.piece()
                        + "`",
                    "make it larger, or the groove in `" + holder.piece() + "` deeper"));
  }

  private Stream<Finding> jams(Placed panel, List<Placed> holders) {
    Direction out = joint.out() == null ? null : Direction.of(joint.out());
    if (out == null) {
      return Stream.empty();
    }
    List<Finding> findings = new ArrayList<>();
    for (int axis = 0; axis < 3; axis++) {
      Length up = room(panel, holders, new Direction(axis, true));
      Length down = room(panel, holders, new Direction(axis, false));
      if (axis != out.axis() && up != null && down != null && up.plus(down).signum() == 0) {
        findings.add(
            error(
                "slide-without-play",
                "`" + panel.piece() + "` has no play along " + letter(axis) + ", and would jam",
                "make it less along " + letter(axis) + " than the room that it slides in"));
      }
    }
    return findings.stream();
  }

  // ---- room

  /** The axis along which one lies between wood of the other; less than 0 when it does not. */
  private static int across(Placed one, Placed other) {
    for (int axis = 0; axis < 3; axis++) {
      if (play(one, other, axis) != null) {
        return axis;
      }
    }
    return -1;
  }

  private static @Nullable Length play(Placed one, Placed other, int axis) {
    Length up = one.room(other, new Direction(axis, true));
    Length down = one.room(other, new Direction(axis, false));
    return up == null || down == null ? null : up.plus(down);
  }

  private static @Nullable Length room(Placed piece, List<Placed> others, Direction way) {
    return others.stream()
        .filter(other -> !other.piece().equals(piece.piece()))
        .map(other -> piece.room(other, way))
        .flatMap(Stream::ofNullable)
        .min(Length::compareTo)
        .orElse(null);
  }

  // ---- words

  private Finding error(String code, String message, String hint) {
    return Finding.error(code, joint.name().at(), message, hint);
  }

  private static String letter(int axis) {
    return "xyz".substring(axis, axis + 1);
  }

  private String print(Length length) {
    return project.rule().printExactly(length).toString();
  }
}
