package packetwright.wood.operation;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import packetwright.text.measure.Length;
import packetwright.text.source.Located;
import packetwright.text.source.NearMiss;
import packetwright.wood.part.Part;
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

  /** The pieces named, or those that the targets live in now. */
  static List<Workpiece> pieces(Situation s, List<Aim> aims) {
    Located<String> named = s.operation().piece();
    if (named != null) {
      return s.pieces(named);
    }
    Set<Workpiece> pieces = new LinkedHashSet<>();
    for (Aim aim : aims) {
      List<Workpiece> free = s.bench().named(aim.part().name());
      pieces.addAll(
          free.isEmpty() ? s.pieces(new Located<>(aim.part().blank(), aim.target().at())) : free);
    }
    return List.copyOf(pieces);
  }
}
