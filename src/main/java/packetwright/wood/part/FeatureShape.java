package packetwright.wood.part;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import packetwright.definition.project.Side;
import packetwright.text.measure.Length;
import packetwright.text.measure.Rule;
import packetwright.text.source.Checked;
import packetwright.text.source.Finding;
import packetwright.text.source.Findings;
import packetwright.text.source.Span;
import packetwright.wood.part.Removal.Bore;
import packetwright.wood.part.Removal.Trough;

/** Turns a feature's words and sizes into the wood that it takes out of its part. */
final class FeatureShape {
  private final Part.Feature feature;
  private final Solid block;
  private final Span at;
  private final Rule rule;
  private final Findings findings = new Findings();

  private FeatureShape(Part.Feature feature, Solid block, Span at, Rule rule) {
    this.feature = feature;
    this.block = block;
    this.at = at;
    this.rule = rule;
  }

  /** The removals as drawn, in a block of the part's finished size. */
  static Checked<List<Removal>> removals(Part.Feature feature, Solid block, Span at, Rule rule) {
    FeatureShape shape = new FeatureShape(feature, block, at, rule);
    List<Removal> removals =
        switch (feature.kind()) {
          case RABBET -> shape.rabbet();
          case GROOVE, DADO -> shape.groove();
          case NOTCH -> shape.notch();
          case HOLE -> shape.hole();
          case MITER, BEVEL, TAPER -> shape.slant();
          case CHAMFER -> shape.alongEdges("size", Shapes::chamfer);
          case ROUNDOVER -> shape.alongEdges("radius", Shapes::rounded);
          case CORNER -> shape.corners();
          case CURVE -> shape.curve();
        };
    return shape.findings.checked(removals);
  }

  private List<Removal> rabbet() {
    List<Side> ends =
        switch (feature.where()) {
          case "both ends" -> List.of(Side.LEFT, Side.RIGHT);
          case "left" -> List.of(Side.LEFT);
          case "right" -> List.of(Side.RIGHT);
          case "top" -> List.of(Side.TOP);
          case "bottom" -> List.of(Side.BOTTOM);
          default -> throw unknownWhere();
        };
    return ends.stream().flatMap(end -> band(end, Length.ZERO)).toList();
  }

  private List<Removal> groove() {
    Side from = from();
    int axis =
        switch (feature.where()) {
          case "along" -> 1;
          case "across" -> 0;
          default -> throw unknownWhere();
        };
    if (from.axis() != axis) {
      findings.add(
          Finding.error(
              "wrong-reference",
              at,
              "`"
                  + feature.name()
                  + "` runs "
                  + feature.where()
                  + ", so it cannot be located from "
                  + "the "
                  + from.word(),
              axis == 1 ? "write `from: bottom` or `from: top`" : "write `from: left`"));
      return List.of();
    }
    return band(from, size("at")).toList();
  }

  /** A cut the whole way through the other axis, {@code at} from a side, as deep as it says. */
  private Stream<Removal> band(Side from, Length offset) {
    Length near = offset;
    Length far = offset.plus(size("width"));
    List<Length> span = block.measuredFrom(from, near, far);
    Point low = depthBand(true).with(from.axis(), span.get(0));
    Point high = depthBand(false).with(from.axis(), span.get(1));
    return trough(low, high);
  }

  /** A shallow pocket: {@code width} inward from {@code at}, {@code length} the other way. */
  private List<Removal> notch() {
    Side from = from();
    int across = 1 - from.axis();
    List<Length> span = block.measuredFrom(from, size("at"), size("at").plus(size("width")));
    Length margin = block.extent(across).minus(size("length")).dividedBy(2);
    Point low = depthBand(true).with(from.axis(), span.get(0)).with(across, margin);
    Point high =
        depthBand(false)
            .with(from.axis(), span.get(1))
            .with(across, block.extent(across).minus(margin));
    return trough(low, high).toList();
  }

  /**
   * A round hole: its centre {@code at} from a side, and {@code across} the other way or middle.
   */
  private List<Removal> hole() {
    Side from = from();
    int across = 1 - from.axis();
    boolean isThrough = feature.where().equals("through");
    Length depth = isThrough ? block.thickness() : size("depth");
    Length begin = feature.face() == Side.INSIDE ? block.thickness().minus(depth) : Length.ZERO;
    Length along = block.measuredFrom(from, size("at"), size("at")).get(0);
    Length stated = feature.sizes().get("across");
    Length other = stated == null ? block.extent(across).dividedBy(2) : stated;
    Point centre =
        new Point(Length.ZERO, Length.ZERO, begin).with(from.axis(), along).with(across, other);
    return depth.signum() > 0 && size("diameter").signum() > 0
        ? List.of(new Bore(2, centre, depth, size("diameter")))
        : nothing("depth and diameter");
  }

  /** A miter, bevel or taper: full at {@code from}, {@code by} less at the side opposite to it. */
  private List<Removal> slant() {
    Side at = sideNamed();
    Side full = from();
    if (full.axis() == at.axis() || !slantsAcross(at, full)) {
      findings.add(
          Finding.error(
              "wrong-reference",
              this.at,
              "a %s at the %s cannot be full at the %s"
                  .formatted(feature.kind().word(), at.word(), full.word()),
              "write `from: " + slantHint(at) + "`"));
      return List.of();
    }
    return requireLess("by", block.extent(at.axis()))
        ? List.of(Shapes.slant(block, at, full, size("by")))
        : List.of();
  }

  /** A miter and a taper slant in the face, a bevel through the thickness. */
  private boolean slantsAcross(Side at, Side full) {
    return switch (feature.kind()) {
      case MITER -> at.axis() == 0 && full.axis() == 1;
      case TAPER -> at.axis() == 1 && full.axis() == 0;
      default -> at.axis() != 2 && full.axis() == 2;
    };
  }

  private String slantHint(Side at) {
    return switch (feature.kind()) {
      case MITER -> "bottom";
      case TAPER -> "left";
      default -> at == Side.INSIDE ? "bottom" : "outside";
    };
  }

  /** Along one edge or end of the face, or around it. */
  private List<Removal> alongEdges(String key, Edging edging) {
    List<Side> sides =
        feature.where().equals("around")
            ? List.of(Side.LEFT, Side.RIGHT, Side.BOTTOM, Side.TOP)
            : List.of(sideNamed());
    Length most = block.thickness().min(block.width()).min(block.length());
    boolean fits = key.equals("size") ? requireLess(key, most) : requireAtMost(key, most);
    return fits
        ? sides.stream()
            .<Removal>map(side -> edging.of(block, side, feature.face(), size(key)))
            .toList()
        : List.of();
  }

  /** What is taken along the edge between two sides. */
  private interface Edging {
    Removal of(Solid solid, Side one, Side other, Length size);
  }

  /** The two corners at an edge or end, or all four. */
  private List<Removal> corners() {
    if (!requireAtMost("radius", block.width().min(block.length()).dividedBy(2))) {
      return List.of();
    }
    List<Removal> corners = new ArrayList<>();
    for (Side end : List.of(Side.LEFT, Side.RIGHT)) {
      for (Side edge : List.of(Side.BOTTOM, Side.TOP)) {
        if (List.of("all", end.word(), edge.word()).contains(feature.where())) {
          corners.add(Shapes.rounded(block, end, edge, size("radius")));
        }
      }
    }
    return corners;
  }

  /** An arc in an edge or end, in its middle unless it says `at`, measured from left or bottom. */
  private List<Removal> curve() {
    Side edge = sideNamed();
    Length extent = block.extent(1 - edge.axis());
    boolean fits =
        requireLess("rise", block.extent(edge.axis()))
            && requireAtMost("length", extent)
            && requireFlat(size("length"), size("rise"));
    if (!fits) {
      return List.of();
    }
    Length stated = feature.sizes().get("at");
    Length start = stated == null ? extent.minus(size("length")).dividedBy(2) : stated;
    return List.of(Shapes.curve(block, edge, start, size("length"), size("rise")));
  }

  /** An arc is at most half a circle, so that it does not reach back under itself. */
  private boolean requireFlat(Length chord, Length rise) {
    Length most = chord.dividedBy(2);
    if (rise.isMore(most)) {
      findings.add(
          Finding.error(
              "curve-too-high",
              at,
              "the rise of `%s`, %s, is more than half its length, %s"
                  .formatted(feature.name(), print(rise), print(chord)),
              "make `rise` at most " + print(most)));
    }
    return !rise.isMore(most);
  }

  private boolean requireAtMost(String key, Length most) {
    return require(key, !size(key).isMore(most), "at most " + print(most));
  }

  private boolean requireLess(String key, Length most) {
    return require(key, size(key).isLess(most), "less than " + print(most));
  }

  private boolean require(String key, boolean isSmall, String allowed) {
    boolean isGood = isSmall && size(key).signum() > 0;
    if (!isGood && findings.list().isEmpty()) {
      findings.add(
          Finding.error(
              "feature-outside-part",
              at,
              "`%s` of `%s`, %s, does not fit its part"
                  .formatted(key, feature.name(), print(size(key))),
              "make it more than 0 and " + allowed));
    }
    return isGood;
  }

  private String print(Length length) {
    return rule.printExactly(length).toString();
  }

  private Side sideNamed() {
    Side side = Side.of(feature.where());
    if (side == null) {
      throw unknownWhere();
    }
    return side;
  }

  private Stream<Removal> trough(Point low, Point high) {
    for (int axis = 0; axis < 3; axis++) {
      if (!low.on(axis).isLess(high.on(axis))) {
        return nothing("width, length and depth").stream();
      }
    }
    return Stream.of(new Trough(new Box(low, high)));
  }

  /** A corner of the whole block, but for the depth of the feature from its face. */
  private Point depthBand(boolean isLow) {
    Length depth = size("depth");
    Length low = feature.face() == Side.INSIDE ? block.thickness().minus(depth) : Length.ZERO;
    Length high = feature.face() == Side.INSIDE ? block.thickness() : depth;
    return isLow
        ? new Point(Length.ZERO, Length.ZERO, low)
        : new Point(block.length(), block.width(), high);
  }

  /** The side that the schema makes every feature but a rabbet name. */
  private Side from() {
    @Nullable Side from = feature.from();
    if (from == null) {
      throw new IllegalStateException(feature.name() + " is located from nothing");
    }
    return from;
  }

  private Length size(String key) {
    Length length = feature.sizes().get(key);
    if (length == null) {
      findings.add(
          Finding.error(
              "missing-size",
              at,
              "`" + feature.name() + "` has no `" + key + "`",
              "add `" + key + ":` with a size"));
      return Length.ofInches(1);
    }
    return length;
  }

  private List<Removal> nothing(String sizes) {
    findings.add(
        Finding.error(
            "feature-without-volume",
            at,
            "`" + feature.name() + "` takes no wood away",
            "make " + sizes + " more than 0"));
    return List.of();
  }

  /** The schema lists what may be written. */
  private IllegalStateException unknownWhere() {
    return new IllegalStateException(feature.kind().word() + " " + feature.where());
  }
}
