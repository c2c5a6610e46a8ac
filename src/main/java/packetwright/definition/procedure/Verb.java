package packetwright.definition.procedure;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** What an operation does, by the trade's words. */
public enum Verb {
  ROUGH_CUT,
  PLANE_TO_THICKNESS,
  JOINT_FACE,
  JOINT_EDGE,
  RIP,
  SQUARE_END,
  LAY_OUT,
  CUT,
  CROSSCUT,
  CUT_TO_FIT,
  DRILL,
  SAW_CURVE,
  ROUT,
  EASE,
  SAND,
  GLUE,
  NAIL,
  SCREW,
  DRY_FIT,
  FINISH,
  INSPECT;

  /** As written in files: {@code joint_edge}. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** The verb of that name, or none. */
  public static @Nullable Verb of(String word) {
    return Arrays.stream(values()).filter(v -> v.word().equals(word)).findFirst().orElse(null);
  }

  /** All the names, for near misses. */
  public static List<String> words() {
    return Arrays.stream(values()).map(Verb::word).toList();
  }
}
