package packetwright.wood.operation;

import java.util.List;
import java.util.Random;
import packetwright.wood.operation.TrialCut.Meaning;

/** Random features, each with what its verb means at a point; sizes in 16ths of an inch. */
final class TrialCuts {
  private static final List<String> EDGES = List.of("bottom", "top");
  private static final List<String> ENDS = List.of("left", "right");
  private static final List<String> FACES = List.of("outside", "inside");

  /** Kinds that {@link #random} knows. */
  static final List<String> KINDS =
      List.of(
          "groove",
          "dado",
          "rabbet_end",
          "rabbet_edge",
          "notch",
          "hole",
          "miter",
          "bevel_edge",
          "bevel_end",
          "taper",
          "curve_edge",
          "curve_end",
          "corner",
          "chamfer",
          "roundover",
          "routed_groove");

  private final Random random;
  private final double l;
  private final double w;
  private final double t;
  private final List<Integer> size;

  private TrialCuts(Random random) {
    this.random = random;
    this.size = List.of(between(232, 300), between(60, 96), between(9, 13));
    this.l = size.get(0) / 16.0;
    this.w = size.get(1) / 16.0;
    this.t = size.get(2) / 16.0;
  }

  /** A cut of a kind, always the same for one seed. */
  static TrialCut random(String kind, long seed) {
    return new TrialCuts(new Random(seed * 31 + KINDS.indexOf(kind))).cut(kind);
  }

  private int between(int least, int most) {
    return least + random.nextInt(most - least + 1);
  }

  private String one(List<String> words) {
    return words.get(random.nextInt(words.size()));
  }

  private TrialCut cut(String kind) {
    return switch (kind) {
      case "groove" -> groove(kind, "dado_set", "featherboard, push_block, sacrificial_fence");
      case "routed_groove" -> groove(kind, "router_table", "push_block");
      case "dado" -> dado();
      case "rabbet_end" -> endRabbet();
      case "rabbet_edge" -> edgeRabbet();
      case "notch" -> notch();
      case "hole" -> hole();
      case "miter" -> miter();
      case "bevel_edge" -> bevel(one(EDGES), "table_saw", "push_block");
      case "bevel_end" -> bevel(one(ENDS), "miter_saw", "clamps");
      case "taper" -> taper();
      case "curve_edge" -> curve(one(EDGES));
      case "curve_end" -> curve(one(ENDS));
      case "corner" -> corner();
      case "chamfer" -> profile("chamfer", "size", "- ease: leg.cut\n  at: block_plane");
      case "roundover" ->
          profile(
              "roundover",
              "radius",
              "- rout: leg.cut\n  at: router_table\n  with: [push_block, backer]");
      default -> throw new IllegalArgumentException(kind);
    };
  }

  private TrialCut of(String name, String feature, String operation, Meaning meaning) {
    return new TrialCut(name, size, "{" + feature + "}", operation, meaning);
  }

  /** How far a point is from a side. */
  private double from(String side, double x, double y, double z) {
    return switch (side) {
      case "left" -> x;
      case "right" -> l - x;
      case "bottom" -> y;
      case "top" -> w - y;
      case "outside" -> z;
      case "inside" -> t - z;
      default -> throw new IllegalArgumentException(side);
    };
  }

  private static boolean isIn(double value, double least, double most) {
    return value > least && value < most;
  }

  private TrialCut groove(String name, String tool, String controls) {
    String from = one(EDGES);
    String face = one(FACES);
    int at = between(4, 20);
    int wide = between(4, 16);
    int deep = between(1, 6);
    return of(
        name,
        "groove: along, face: %s, from: %s, at: %d/16, width: %d/16, depth: %d/16"
            .formatted(face, from, at, wide, deep),
        "- cut: leg.cut\n  at: %s\n  with: [%s]".formatted(tool, controls),
        (x, y, z) ->
            isIn(from(from, x, y, z), at / 16.0, (at + wide) / 16.0)
                && from(face, x, y, z) < deep / 16.0);
  }

  private TrialCut dado() {
    String from = one(ENDS);
    String face = one(FACES);
    int at = between(4, 90);
    int wide = between(4, 24);
    int deep = between(1, 6);
    return of(
        "dado",
        "dado: across, face: %s, from: %s, at: %d/16, width: %d/16, depth: %d/16"
            .formatted(face, from, at, wide, deep),
        "- cut: leg.cut\n  with: [miter_gauge, clamps]",
        (x, y, z) ->
            isIn(from(from, x, y, z), at / 16.0, (at + wide) / 16.0)
                && from(face, x, y, z) < deep / 16.0);
  }

  private TrialCut endRabbet() {
    String where = one(List.of("left", "right", "both ends"));
    String face = one(FACES);
    int wide = between(4, 24);
    int deep = between(1, 6);
    List<String> ends = where.equals("both ends") ? ENDS : List.of(where);
    return of(
        "rabbet_end",
        "rabbet: %s, face: %s, width: %d/16, depth: %d/16".formatted(where, face, wide, deep),
        "- cut: leg.cut\n  stop: true\n  with: [miter_gauge, clamps]",
        (x, y, z) ->
            ends.stream().anyMatch(end -> from(end, x, y, z) < wide / 16.0)
                && from(face, x, y, z) < deep / 16.0);
  }

  private TrialCut edgeRabbet() {
    String where = one(EDGES);
    String face = one(FACES);
    int wide = between(4, 12);
    int deep = between(1, 6);
    return of(
        "rabbet_edge",
        "rabbet: %s, face: %s, width: %d/16, depth: %d/16".formatted(where, face, wide, deep),
        "- cut: leg.cut\n  with: [featherboard, push_block, sacrificial_fence]",
        (x, y, z) -> from(where, x, y, z) < wide / 16.0 && from(face, x, y, z) < deep / 16.0);
  }

  private TrialCut notch() {
    String from = one(ENDS);
    String face = one(FACES);
    int at = between(2, 40);
    int wide = between(2, 20);
    int across = between(8, 40);
    int deep = between(1, 6);
    return of(
        "notch",
        "notch: middle, face: %s, from: %s, at: %d/16, width: %d/16, length: %d/16, depth: %d/16"
            .formatted(face, from, at, wide, across, deep),
        "- cut: leg.cut\n  with: [clamps]",
        (x, y, z) ->
            isIn(from(from, x, y, z), at / 16.0, (at + wide) / 16.0)
                && Math.abs(y - w / 2) < across / 32.0
                && from(face, x, y, z) < deep / 16.0);
  }

  private TrialCut hole() {
    String from = one(ENDS);
    String face = one(FACES);
    int at = between(16, 80);
    int across = between(16, 40);
    int wide = between(4, 20);
    int deep = between(2, 8);
    boolean isThrough = random.nextBoolean();
    return of(
        "hole",
        "hole: %s, face: %s, from: %s, at: %d/16, across: %d/16, diameter: %d/16%s"
            .formatted(
                isThrough ? "through" : "blind",
                face,
                from,
                at,
                across,
                wide,
                isThrough ? "" : ", depth: " + deep + "/16"),
        "- drill: leg.cut\n  with: [clamps, backer]",
        (x, y, z) ->
            Math.hypot(from(from, x, y, z) - at / 16.0, y - across / 16.0) < wide / 32.0
                && (isThrough || from(face, x, y, z) < deep / 16.0));
  }

  private TrialCut miter() {
    String end = one(ENDS);
    String full = one(EDGES);
    int by = between(4, 58);
    return of(
        "miter",
        "miter: %s, from: %s, by: %d/16".formatted(end, full, by),
        "- cut: leg.cut\n  with: [clamps]",
        (x, y, z) -> from(end, x, y, z) < by / 16.0 * from(full, x, y, z) / w);
  }

  private TrialCut bevel(String side, String tool, String controls) {
    String full = one(FACES);
    int by = between(2, 8);
    return of(
        "bevel",
        "bevel: %s, from: %s, by: %d/16".formatted(side, full, by),
        "- cut: leg.cut\n  at: %s\n  with: [%s]".formatted(tool, controls),
        (x, y, z) -> from(side, x, y, z) < by / 16.0 * from(full, x, y, z) / t);
  }

  private TrialCut taper() {
    String edge = one(EDGES);
    String full = one(ENDS);
    int by = between(4, 40);
    return of(
        "taper",
        "taper: %s, from: %s, by: %d/16".formatted(edge, full, by),
        "- cut: leg.cut\n  at: " + one(List.of("band_saw", "hand_saw")),
        (x, y, z) -> from(edge, x, y, z) < by / 16.0 * from(full, x, y, z) / l);
  }

  private TrialCut curve(String side) {
    boolean isEnd = ENDS.contains(side);
    int start = between(2, 16);
    int chord = between(16, isEnd ? 40 : 120);
    int rise = between(2, 8);
    double middle = (start + chord / 2.0) / 16;
    double half = chord / 32.0;
    double high = rise / 16.0;
    double radius = (half * half + high * high) / (2 * high);
    return of(
        "curve",
        "curve: %s, length: %d/16, rise: %d/16, at: %d/16".formatted(side, chord, rise, start),
        "- saw_curve: leg.cut\n  stacked: 2",
        (x, y, z) ->
            Math.hypot((isEnd ? y : x) - middle, from(side, x, y, z) + radius - high) < radius);
  }

  private TrialCut corner() {
    String where = one(List.of("left", "right", "top", "bottom", "all"));
    int radius = between(4, 24);
    double r = radius / 16.0;
    return of(
        "corner",
        "corner: %s, radius: %d/16".formatted(where, radius),
        "- saw_curve: leg.cut",
        (x, y, z) -> {
          String end = x < l / 2 ? "left" : "right";
          String edge = y < w / 2 ? "bottom" : "top";
          double a = from(end, x, y, z);
          double b = from(edge, x, y, z);
          return List.of("all", end, edge).contains(where)
              && a < r
              && b < r
              && Math.hypot(r - a, r - b) > r;
        });
  }

  private TrialCut profile(String kind, String key, String operation) {
    String where = one(List.of("left", "right", "top", "bottom", "around"));
    String face = one(FACES);
    int much = between(1, 6);
    double r = much / 16.0;
    List<String> sides =
        where.equals("around") ? List.of("left", "right", "top", "bottom") : List.of(where);
    return of(
        kind,
        "%s: %s, face: %s, %s: %d/16".formatted(kind, where, face, key, much),
        operation,
        (x, y, z) ->
            sides.stream()
                .anyMatch(
                    side -> {
                      double a = from(side, x, y, z);
                      double b = from(face, x, y, z);
                      boolean isAtEdge = a < r && b < r;
                      return isAtEdge
                          && (kind.equals("chamfer") ? a + b < r : Math.hypot(r - a, r - b) > r);
                    }));
  }
}
