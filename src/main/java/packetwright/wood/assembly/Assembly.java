package packetwright.wood.assembly;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import packetwright.definition.project.AssemblyDefinition.Place;
import packetwright.definition.project.Project;
import packetwright.definition.size.Sizes;
import packetwright.text.source.Checked;
import packetwright.text.source.Finding;
import packetwright.text.source.Findings;
import packetwright.wood.part.Box;
import packetwright.wood.part.Part;
import packetwright.wood.part.Point;

/**
 * Every piece where it belongs, checked: no two share a volume, what is meant to touch does, and
 * what slides comes out without touching. Where two pieces meet in the place of a hole or a rounded
 * edge, the wood is taken as gone only when all that they share lies within it. A tilted piece must
 * lie in the plane of what carries it and leave the others their space; no other joint of it is
 * checked.
 *
 * @param pieces in the order placed
 */
public record Assembly(List<Placed> pieces) {
  /** Keeps its own copy. */
  public Assembly {
    pieces = List.copyOf(pieces);
  }

  /** A piece by name, or none. */
  public @Nullable Placed piece(String name) {
    return pieces.stream().filter(p -> p.piece().equals(name)).findFirst().orElse(null);
  }

  /** The pieces of whose joints only the mating plane is checked. */
  public List<Placed> tilted() {
    return pieces.stream().filter(p -> p.tilt() != null).toList();
  }

  /** The box that the upright pieces just fit in; none when there are none. */
  public @Nullable Box outside() {
    Box all = null;
    for (Placed piece : upright(pieces)) {
      for (Chunk chunk : piece.chunks()) {
        Box box = chunk.around();
        if (box != null) {
          all = all == null ? box : around(all, box);
        }
      }
    }
    return all;
  }

  private static Box around(Box a, Box b) {
    Point low = a.low();
    Point high = a.high();
    for (int axis = 0; axis < 3; axis++) {
      low = low.with(axis, low.on(axis).min(b.low().on(axis)));
      high = high.with(axis, high.on(axis).max(b.high().on(axis)));
    }
    return new Box(low, high);
  }

  static List<Placed> upright(List<Placed> pieces) {
    return pieces.stream().filter(p -> p.tilt() == null).toList();
  }

  /** Puts every piece in its place, and looks for what does not fit. */
  public static Checked<Assembly> of(Project project, Sizes sizes, List<Part> parts) {
    Findings findings = new Findings();
    List<Placed> pieces = new ArrayList<>();
    for (Place place : project.assembly().places()) {
      Placed placed = findings.take(Placing.placed(place, sizes, parts));
      if (placed != null) {
        pieces.add(placed);
      }
    }
    findings.addAll(LeftOut.check(project, parts));
    if (!findings.hasErrors()) {
      List<Finding> planes = MatingPlane.check(project, pieces);
      // What lies wrong on its slope is mostly in the way too, and has been said.
      findings.addAll(FitCheck.check(project, planes.isEmpty() ? pieces : upright(pieces)));
      findings.addAll(planes);
    }
    return findings.checked(new Assembly(pieces));
  }
}
