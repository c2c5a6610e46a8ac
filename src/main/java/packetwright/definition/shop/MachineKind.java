package packetwright.definition.shop;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** Machines and hand tools, by the trade's words. */
public enum MachineKind {
  MITER_SAW(true),
  TABLE_SAW(true),
  /** A stacked cutter in the table saw. */
  DADO_SET(true),
  BAND_SAW(true),
  JOINTER(true),
  PLANER(true),
  DRILL_PRESS(true),
  ROUTER_TABLE(true),
  HANDHELD_ROUTER(true),
  BELT_SANDER(true),
  DISC_SANDER(true),
  ORBITAL_SANDER(true),
  NAILER(true),
  BLOCK_PLANE(false),
  HAND_SAW(false),
  CHISEL(false),
  MARKING_KNIFE(false),
  SANDING_BLOCK(false),
  BRUSH(false),
  CLAMP(false),
  HAND_DRILL(false),
  HAMMER(false),
  SCREWDRIVER(false),
  /** A jack or jointer plane: long, for faces and long edges. */
  BENCH_PLANE(false),
  /** A plane with a fence and a depth stop, for grooves along the grain. */
  PLOW_PLANE(false),
  /** A narrow blade in a frame, for curves. */
  COPING_SAW(false);

  private final boolean powered;

  MachineKind(boolean powered) {
    this.powered = powered;
  }

  /** Whether it has a switch. */
  public boolean isPowered() {
    return powered;
  }

  /** As written in files: {@code table_saw}. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** The kind of that name, or none. */
  public static @Nullable MachineKind of(String word) {
    return Arrays.stream(values()).filter(k -> k.word().equals(word)).findFirst().orElse(null);
  }

  /** All the names, for near misses. */
  public static List<String> words() {
    return Arrays.stream(values()).map(MachineKind::word).toList();
  }
}
