package packetwright.drawing.view;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A straight stretch along which the surface of a solid turns; of a round rim one chord.
 *
 * @param from one end
 * @param to other end
 * @param faces that meet there: two, or more where wood touches wood along a line
 */
record Crease(Vector from, Vector to, List<Face> faces) {
  /** cos 0.3°: less than any edge that is meant, more than rounding. */
  private static final double SMOOTH = 0.99998;

  /** Keeps its own copy. */
  Crease {
    faces = List.copyOf(faces);
  }

  /**
   * A facet beside a crease.
   *
   * @param facet the facet
   * @param outward square to it, out of the wood
   */
  record Face(Facet facet, Vector outward) {
    /** Which way it looks: 1 toward the eye, -1 away, 0 when it is seen side-on. */
    int facing(Vector eye) {
      double facing = outward.dot(eye);
      return Math.abs(facing) < 1e-9 ? 0 : facing > 0 ? 1 : -1;
    }

    /** The same for the round surface that the facet stands for. */
    private Vector trueOutward(Vector place) {
      Vector normal = facet.normalAt(place);
      return normal.dot(outward) < 0 ? normal.times(-1) : normal;
    }
  }

  Vector middle() {
    return from.toward(to, 0.5);
  }

  /** Whether the surface goes on without a bend: between chords, or from a flat into an arc. */
  boolean isSmooth() {
    Vector middle = middle();
    return faces.size() == 2
        && faces.get(0).trueOutward(middle).dot(faces.get(1).trueOutward(middle)) > SMOOTH;
  }

  /** Whether the eye sees it: as an edge, or as the outermost line of a round surface. */
  boolean isLine(Vector eye) {
    return !isSmooth() || faces.get(0).facing(eye) != faces.get(1).facing(eye);
  }

  /** The circle whose chord it is, if its axis runs along this one; none when it is no chord. */
  @Nullable Round chordOf(int axis) {
    for (Face face : faces) {
      Round round = face.facet.round();
      if (round != null && round.axis() == axis && isChord(round)) {
        return round;
      }
    }
    return null;
  }

  /** Whether the true edge is curved and also looks curved from the eye. */
  boolean isCurved(Vector eye) {
    boolean isRound =
        faces.stream()
            .anyMatch(
                face -> {
                  Round round = face.facet.round();
                  return round != null && isChord(round);
                });
    return isRound && faces.stream().noneMatch(f -> f.facet.round() == null && f.facing(eye) == 0);
  }

  private boolean isChord(Round round) {
    Vector way = to.minus(from);
    return Math.abs(way.on(round.axis())) < 0.999999 * way.length();
  }
}
