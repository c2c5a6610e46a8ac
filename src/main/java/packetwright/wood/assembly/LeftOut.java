package packetwright.wood.assembly;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import packetwright.definition.project.AssemblyDefinition.Joint;
import packetwright.definition.project.AssemblyDefinition.Place;
import packetwright.definition.project.Project;
import packetwright.text.source.Finding;
import packetwright.wood.part.Part;

/**
 * Pieces that the assembly leaves out: without a place or a joint nothing of their fit is known.
 */
final class LeftOut {
  private LeftOut() {}

  /** A project that places nothing is no assembly, and leaves nothing out. */
  static List<Finding> check(Project project, List<Part> parts) {
    List<Place> places = project.assembly().places();
    if (places.isEmpty()) {
      return List.of();
    }
    List<Finding> findings = new ArrayList<>();
    Set<String> placed = new HashSet<>();
    places.forEach(place -> placed.add(place.piece().value()));
    for (Part part : parts) {
      for (int number = 1; number <= part.count(); number++) {
        if (!placed.contains(part.pieceName(number))) {
          findings.add(withoutPlace(part, part.pieceName(number)));
        }
      }
    }
    Set<String> joined = new HashSet<>();
    for (Joint joint : project.assembly().joints()) {
      joint.pieces().forEach(piece -> joined.add(piece.value()));
    }
    for (Place place : places) {
      if (places.size() > 1 && !joined.contains(place.piece().value())) {
        findings.add(withoutJoint(place));
      }
    }
    return findings;
  }

  private static Finding withoutPlace(Part part, String piece) {
    return Finding.note(
        "piece-without-place",
        part.at(),
        "`" + piece + "` has no place in the assembly, so nobody knows whether it fits",
        "add `" + piece + "` under `places`");
  }

  private static Finding withoutJoint(Place place) {
    String piece = place.piece().value();
    return Finding.note(
        "piece-without-joint",
        place.piece().at(),
        "no joint holds `" + piece + "`",
        "add a joint that names `" + piece + "` and what it meets");
  }
}
