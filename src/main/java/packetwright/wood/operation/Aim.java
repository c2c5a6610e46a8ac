package packetwright.wood.operation;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import packetwright.definition.project.Side;
import packetwright.definition.size.Size;
import packetwright.text.measure.Length;
import packetwright.text.source.Located;
import packetwright.text.source.NearMiss;
import packetwright.wood.operation.Simulation.Inputs;
import packetwright.wood.part.Part;
import packetwright.wood.part.Removal;
import packetwright.wood.part.Solid;
import packetwright.wood.workpiece.Workpiece;

/**
 * A feature to be made.
 *
 * @param part it is drawn on
 * @param feature as drawn
 * @param target where it is named
 */
record Aim(Part part, Part.Feature feature, Located<String> target) {
  /** The full name of one of the feature's sizes. */
  String size(String key) {
    return part.name() + "." + feature.name() + "." + key;
  }

  /** One of the feature's sizes; a missing one is nought. */
  Length length(String key) {
    return feature.sizes().getOrDefault(key, Length.ZERO);
  }

  /** The measured sizes that some of its sizes depend on; all are to be measured before. */
  Set<String> fitted(Situation s, List<String> keys) {
    Set<String> fitted = new TreeSet<>();
    for (String key : keys) {
      Size size = s.inputs().sizes().find(size(key));
      fitted.addAll(size == null ? Set.of() : size.fitted());
    }
    s.requireInspected(fitted);
    return fitted;
  }

  /** The full names of what is aimed at. */
  static Set<String> names(List<Aim> aims) {
    return aims.stream().map(a -> a.target().value()).collect(Collectors.toUnmodifiableSet());
  }

  /** What the operation's targets name; findings for those that name nothing. */
  static List<Aim> all(Situation s) {
    List<Aim> aims = new ArrayList<>();
    for (Located<String> target : s.operation().targets()) {
      int dot = target.value().indexOf('.');
      Part part = s.inputs().part(dot < 0 ? target.value() : target.value().substring(0, dot));
      if (part == null || dot < 0) {
        s.error(
            "unknown-part",
            target.at(),
            "`" + target.value() + "` names no feature of a part",
            "write a part's name, a dot and the feature's name, such as `side.lid_groove`");
        continue;
      }
      String name = target.value().substring(dot + 1);
      Part.Feature feature = part.feature(name);
      if (feature == null) {
        s.error(
            "unknown-feature",
            target.at(),
            "part `" + part.name() + "` has no feature `" + name + "`",
            NearMiss.hint(name, part.features().stream().map(Part.Feature::name).toList()));
        continue;
      }
      aims.add(new Aim(part, feature, target));
    }
    return aims;
  }

  /** What a feature's full name stands for, or nothing. */
  static Part.@Nullable Feature find(Inputs inputs, String target) {
    int dot = target.indexOf('.');
    Part part = dot < 0 ? null : inputs.part(target.substring(0, dot));
    return part == null ? null : part.feature(target.substring(dot + 1));
  }

  /** The pieces named, or those that the targets live in now. */
  static List<Workpiece> pieces(Situation s, List<Aim> aims) {
    Located<String> named = s.operation().piece();
    Set<Workpiece> pieces = new LinkedHashSet<>();
    if (named != null) {
      pieces.addAll(s.pieces(named));
    } else {
      for (Aim aim : aims) {
        List<Workpiece> free = s.bench().named(aim.part().name());
        pieces.addAll(
            free.isEmpty() ? s.pieces(new Located<>(aim.part().blank(), aim.target().at())) : free);
      }
    }
    requireUncut(s, aims, pieces);
    return List.copyOf(pieces);
  }

  private static void requireUncut(Situation s, List<Aim> aims, Set<Workpiece> pieces) {
    for (Aim aim : aims) {
      String name = aim.target().value();
      boolean isCut = pieces.stream().anyMatch(p -> p.history().aims().contains(name));
      if (isCut && s.told().isNew("feature-cut-twice", name)) {
        s.error(
            "feature-cut-twice",
            aim.target().at(),
            "`" + name + "` is cut already at this step",
            "delete one of the two operations, or name the `piece` that still lacks it");
      }
    }
  }

  /** Those of the aims that a piece gets: its own part's, or all where it is still a blank. */
  static List<Aim> on(Workpiece piece, List<Aim> aims) {
    List<Aim> own =
        aims.stream().filter(a -> a.part().name().equals(Part.nameOf(piece.name()))).toList();
    return own.isEmpty() ? aims : own;
  }

  /** The first of the pieces that an aim is cut in. */
  static Workpiece first(Aim aim, List<Workpiece> pieces) {
    return pieces.stream()
        .filter(piece -> Part.nameOf(piece.name()).equals(aim.part().name()))
        .findFirst()
        .orElse(pieces.get(0));
  }

  /** The side of a piece that a side of the drawing is: left and right change in a mirror image. */
  Side side(Workpiece piece, Side drawn) {
    return drawn.axis() == 0 && isMirrored(piece) ? drawn.opposite() : drawn;
  }

  /** Whether a piece is the mirror image of the drawing. */
  boolean isMirrored(Workpiece piece) {
    return Part.nameOf(piece.name()).equals(part.name()) && part.isMirrored(piece.name());
  }

  /** What an aim takes out of a piece, in the frame of the drawing. */
  interface Shape {
    /** The removals, from the settings and the piece as it is now. */
    List<Removal> of(Aim aim, Solid solid);
  }

  /** The pieces with their aims cut, each by the hand that it is of. */
  static List<Workpiece> cut(Situation s, List<Aim> aims, List<Workpiece> pieces, Shape shape) {
    List<Workpiece> after = new ArrayList<>();
    for (Workpiece piece : pieces) {
      Workpiece cut = piece;
      List<Aim> own = on(piece, aims);
      for (Aim aim : own) {
        for (Removal removal : shape.of(aim, piece.solid())) {
          boolean isMirrored = aim.isMirrored(piece);
          cut =
              cut.minus(isMirrored ? removal.mirrored(piece.solid().length()) : removal, s.index());
        }
      }
      for (Aim aim : own) {
        cut = withoutLostSides(s, cut, aim);
      }
      after.add(cut.withHistory(cut.history().aimedAt(names(own))));
    }
    return after;
  }

  /** An edge or end of which a cut leaves next to nothing is none to measure from. */
  private static Workpiece withoutLostSides(Situation s, Workpiece piece, Aim aim) {
    Length taken =
        switch (aim.feature().kind()) {
          case RABBET -> aim.length("depth");
          case CHAMFER -> aim.length("size");
          case ROUNDOVER -> aim.length("radius");
          default -> Length.ZERO;
        };
    boolean isKept =
        taken.signum() == 0
            || !piece.solid().thickness().minus(taken).isLess(Order.thinnestWall(s.inputs()));
    if (isKept) {
      return piece;
    }
    Workpiece lost = piece;
    for (Side side : aim.sides()) {
      lost = lost.fresh(aim.side(piece, side));
    }
    return lost;
  }

  /** The ends and edges that the feature runs along. */
  private List<Side> sides() {
    Side side = Side.of(feature.where());
    return side != null
        ? List.of(side)
        : feature.where().equals("around")
            ? List.of(Side.LEFT, Side.RIGHT, Side.BOTTOM, Side.TOP)
            : List.of(Side.LEFT, Side.RIGHT);
  }
}
