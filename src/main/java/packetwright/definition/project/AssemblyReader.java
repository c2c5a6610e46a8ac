package packetwright.definition.project;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import packetwright.text.document.Node;
import packetwright.text.source.Finding;
import packetwright.text.source.Findings;
import packetwright.text.source.Located;
import packetwright.text.source.NearMiss;

/** Reads {@code assembly:}, whose shape the schema has checked. */
final class AssemblyReader {
  private static final List<String> JOINTS =
      List.of("rabbet", "groove", "slide", "butt", "dado", "rest");

  private final Node.Mapping root;
  private final List<String> pieces;
  private final Set<String> uncounted;
  private final Findings findings;

  AssemblyReader(Node.Mapping root, Findings findings) {
    this.root = root;
    this.findings = findings;
    this.pieces = new ArrayList<>();
    this.uncounted = new HashSet<>();
    for (Node.Entry entry : root.entries("parts")) {
      Node.Mapping part = entry.value().asMapping();
      addPieces(entry.key().value(), part == null ? 0 : part.whole("count", 0));
    }
  }

  /** A part whose count cannot be read may have any number of pieces. */
  private void addPieces(String part, int count) {
    if (count == 0) {
      uncounted.add(part);
    }
    for (int i = 1; i <= count; i++) {
      pieces.add(count == 1 ? part : part + " " + i);
    }
  }

  AssemblyDefinition assembly() {
    Node.Mapping assembly = root.mapping("assembly");
    return assembly == null
        ? new AssemblyDefinition(List.of(), List.of())
        : new AssemblyDefinition(places(assembly), joints(assembly));
  }

  private List<AssemblyDefinition.Place> places(Node.Mapping assembly) {
    List<AssemblyDefinition.Place> places = new ArrayList<>();
    for (Node.Entry entry : assembly.entries("places")) {
      checkPiece(entry.key());
      Node.Mapping place = entry.value().asMapping();
      AssemblyDefinition.Place read = place == null ? null : place(entry.key(), place);
      if (read != null) {
        places.add(read);
      }
    }
    return places;
  }

  private static AssemblyDefinition.@Nullable Place place(
      Located<String> piece, Node.Mapping place) {
    Located<String> inside = place.text("inside");
    Located<String> top = place.text("top");
    List<Located<String>> corner = place.texts("corner");
    return inside == null || top == null || corner.size() != 3
        ? null
        : new AssemblyDefinition.Place(piece, corner, inside, top, tilt(place.mapping("tilt")));
  }

  private static AssemblyDefinition.@Nullable Tilt tilt(Node.@Nullable Mapping tilt) {
    if (tilt == null) {
      return null;
    }
    Located<String> rise = tilt.text("rise");
    Located<String> run = tilt.text("run");
    Located<String> about = tilt.text("about");
    return rise == null || run == null || about == null
        ? null
        : new AssemblyDefinition.Tilt(rise, run, about);
  }

  private List<AssemblyDefinition.Joint> joints(Node.Mapping assembly) {
    List<AssemblyDefinition.Joint> joints = new ArrayList<>();
    for (Node.Entry entry : assembly.entries("joints")) {
      Node.Mapping joint = entry.value().asMapping();
      List<String> kinds =
          joint == null ? List.of() : JOINTS.stream().filter(joint.keys()::contains).toList();
      if (joint == null) {
        continue;
      }
      if (kinds.size() != 1) {
        findings.add(
            Finding.error(
                "joint-kind",
                entry.key().at(),
                "`"
                    + entry.key().value()
                    + "` is "
                    + (kinds.isEmpty() ? "no" : "more than one")
                    + " joint",
                "write exactly one of " + String.join(", ", JOINTS)));
        continue;
      }
      List<Located<String>> meeting = joint.texts(kinds.get(0));
      meeting.forEach(this::checkPiece);
      if (kinds.get(0).equals("slide") && joint.text("out") == null) {
        findings.add(
            Finding.error(
                "slide-without-out",
                entry.key().at(),
                "nothing says which way `" + entry.key().value() + "` slides out",
                "add `out:` with one of +x, -x, +y, -y, +z, -z"));
      }
      joints.add(
          new AssemblyDefinition.Joint(
              entry.key(), kinds.get(0), meeting, out(joint), joint.flag("glued")));
    }
    return joints;
  }

  private static @Nullable String out(Node.Mapping joint) {
    Located<String> out = joint.text("out");
    return out == null ? null : out.value();
  }

  private void checkPiece(Located<String> piece) {
    String part = piece.value().replaceFirst(" [0-9]+$", "");
    if (!pieces.contains(piece.value()) && !uncounted.contains(part)) {
      findings.add(
          Finding.error(
              "unknown-piece",
              piece.at(),
              "there is no piece `" + piece.value() + "`",
              NearMiss.hint(piece.value(), pieces)));
    }
  }
}
