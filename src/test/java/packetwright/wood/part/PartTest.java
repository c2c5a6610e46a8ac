package packetwright.wood.part;

import static org.assertj.core.api.Assertions.assertThat;
import static packetwright.text.measure.Length.ofInches;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import packetwright.definition.project.PartDefinition.FeatureKind;
import packetwright.definition.project.Side;
import packetwright.text.measure.Length;
import packetwright.text.measure.Rational;
import packetwright.text.measure.Rule;
import packetwright.text.measure.Unit;
import packetwright.text.source.Span;
import packetwright.wood.part.Part.Feature;

class PartTest {
  private static final Span HERE = new Span("project.yaml", 1, 1, 1);
  private static final Solid BLOCK = Solid.block(ofInches(12), ofInches(5), ofInches(1));

  private static Feature feature(
      FeatureKind kind, String where, @Nullable Side from, Map<String, Length> sizes) {
    Feature bare = new Feature("it", kind, where, Side.INSIDE, from, sizes, List.of());
    return new Feature("it", kind, where, Side.INSIDE, from, sizes, removals(bare));
  }

  private static List<Removal> removals(Feature bare) {
    return FeatureShape.removals(bare, BLOCK, HERE, new Rule(Rational.of(1, 32), Unit.INCH))
        .value();
  }

  /** At least one feature of every kind, in all the ways that a mirror tells apart. */
  static List<Feature> features() {
    Length quarter = ofInches(1, 4);
    Length one = ofInches(1);
    Map<String, Length> band = Map.of("at", one, "width", quarter, "depth", quarter);
    Map<String, Length> hole = Map.of("at", one, "across", ofInches(2), "diameter", quarter);
    Map<String, Length> arc = Map.of("length", ofInches(3), "rise", one);
    Map<String, Length> arcAt = Map.of("length", ofInches(3), "rise", one, "at", quarter);
    List<Feature> features = new ArrayList<>();
    for (String end : List.of("left", "right", "both ends", "top")) {
      features.add(feature(FeatureKind.RABBET, end, null, Map.of("width", one, "depth", quarter)));
    }
    features.add(feature(FeatureKind.GROOVE, "along", Side.TOP, band));
    features.add(feature(FeatureKind.DADO, "across", Side.LEFT, band));
    features.add(
        feature(
            FeatureKind.NOTCH,
            "middle",
            Side.RIGHT,
            Map.of("at", one, "width", quarter, "length", ofInches(2), "depth", quarter)));
    features.add(feature(FeatureKind.HOLE, "through", Side.LEFT, hole));
    features.add(feature(FeatureKind.HOLE, "through", Side.TOP, hole));
    features.add(
        feature(FeatureKind.HOLE, "through", Side.TOP, Map.of("at", one, "diameter", quarter)));
    features.add(feature(FeatureKind.MITER, "left", Side.BOTTOM, Map.of("by", one)));
    features.add(feature(FeatureKind.BEVEL, "right", Side.OUTSIDE, Map.of("by", quarter)));
    features.add(feature(FeatureKind.TAPER, "top", Side.LEFT, Map.of("by", one)));
    for (String where : List.of("left", "top", "around")) {
      features.add(feature(FeatureKind.CHAMFER, where, null, Map.of("size", quarter)));
      features.add(feature(FeatureKind.ROUNDOVER, where, null, Map.of("radius", quarter)));
    }
    for (String where : List.of("left", "top", "all")) {
      features.add(feature(FeatureKind.CORNER, where, null, Map.of("radius", one)));
    }
    for (String where : List.of("left", "bottom")) {
      features.add(feature(FeatureKind.CURVE, where, null, arc));
      features.add(feature(FeatureKind.CURVE, where, null, arcAt));
    }
    return features;
  }

  @Test
  void seesEveryKindOfFeature() {
    assertThat(features()).extracting(Feature::kind).contains(FeatureKind.values());
  }

  @ParameterizedTest
  @MethodSource("features")
  void mirroredWordsAndSizesDescribeTheMirroredWood(Feature feature) {
    Feature mirrored = feature.mirrored(BLOCK.length());
    assertThat(removals(mirrored)).containsExactlyInAnyOrderElementsOf(mirrored.removals());
  }

  @ParameterizedTest
  @MethodSource("features")
  void mirroredTwiceIsTheSame(Feature feature) {
    Feature twice = feature.mirrored(BLOCK.length()).mirrored(BLOCK.length());
    assertThat(twice).isEqualTo(feature);
  }

  @Test
  void everySecondPieceOfAPairIsMirrored() {
    Feature miter = feature(FeatureKind.MITER, "left", Side.BOTTOM, Map.of("by", ofInches(1)));
    Solid solid = BLOCK.minus(miter.removals().get(0));
    Part part = new Part("rail", "A", 4, true, "board", solid, List.of(miter), HERE);
    assertThat(List.of(1, 2, 3, 4))
        .extracting(number -> part.isMirrored(part.pieceName(number)))
        .containsExactly(false, true, false, true);
    assertThat(part.solidOf("rail 1")).isEqualTo(solid);
    assertThat(part.solidOf("rail 2").removals())
        .containsExactly(Shapes.slant(BLOCK, Side.RIGHT, Side.BOTTOM, ofInches(1)));
    Feature second = part.featureOf("rail 2", "it");
    assertThat(second).isNotNull();
    assertThat(second.where()).isEqualTo("right");
    assertThat(part.featuresOf("rail 2")).containsExactly(second);
  }

  @Test
  void piecesThatAreNoPairAreAllAlike() {
    Feature miter = feature(FeatureKind.MITER, "left", Side.BOTTOM, Map.of("by", ofInches(1)));
    Solid solid = BLOCK.minus(miter.removals().get(0));
    Part part = new Part("rail", "A", 2, "board", solid, List.of(miter), HERE);
    assertThat(part.solidOf("rail 2")).isEqualTo(solid);
    assertThat(part.featureOf("rail 2", "it")).isEqualTo(miter);
  }
}
