package packetwright.wood.caution;

import java.util.Arrays;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** The kinds of hazard that a rule can be against: the columns of the hazard matrix. */
public enum Hazard {
  /** The cutter throws the workpiece back, or grabs it. */
  KICKBACK,
  /** A hand comes near the cutter. */
  HANDS,
  /** The piece is too short, narrow or thin to be held there. */
  SMALL_PIECE,
  /** A guard, riving knife or blade guide is off or wrongly set. */
  GUARD,
  /** Too much wood is taken at once. */
  DEPTH,
  /** The wood, or the tool, is moved the wrong way. */
  FEED,
  /** A piece is caught between the cutter and a stop or fence. */
  TRAPPED,
  /** A long, wide, bowed, round or unseated piece tips or binds. */
  SUPPORT,
  /** Thin wood, a blade or a bit breaks; wood splits. */
  BREAKING,
  /** Chips, splinters or fasteners fly. */
  FLYING,
  /** Hair, sleeves, gloves or rings are caught. */
  CAUGHT,
  DUST,
  NOISE,
  /** Glue or finish on skin, in eyes, or breathed. */
  CHEMICAL,
  FIRE,
  /** Something heavy is lifted. */
  LIFTING;

  /** Whether an instructor may ever accept a refusal against it, with a reason. */
  boolean isWaivable() {
    return this != GUARD && this != TRAPPED;
  }

  /** As written in files: {@code small_piece}. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** The kind of that name, or none. */
  static @Nullable Hazard of(String word) {
    return Arrays.stream(values()).filter(h -> h.word().equals(word)).findFirst().orElse(null);
  }
}
