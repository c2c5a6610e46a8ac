package packetwright.wood.part;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import packetwright.definition.project.PartDefinition.FeatureKind;
import packetwright.definition.project.Side;
import packetwright.text.measure.Length;
import packetwright.text.source.Span;
import packetwright.wood.part.Removal.Bore;
import packetwright.wood.part.Removal.Trough;

class ThinWallTest {
  private static final Length LEAST = Length.ofInches(1, 8);

  private static Length in(long sixteenths) {
    return Length.ofInches(sixteenths, 16);
  }

  private static Point at(long x, long y, long z) {
    return new Point(in(x), in(y), in(z));
  }

  private static Part.Feature feature(String name, FeatureKind kind, Removal removal) {
    return new Part.Feature(name, kind, "", Side.INSIDE, Side.BOTTOM, Map.of(), List.of(removal));
  }

  private static Trough trough(Point low, Point high) {
    return new Trough(new Box(low, high));
  }

  /** Thin walls of a part 10 x 4 x 1/2 with these features. */
  private static List<String> thin(Part.Feature... features) {
    Solid solid = Solid.block(in(160), in(64), in(8));
    Part part =
        new Part("leg", "A", 1, "rail", solid, List.of(features), Span.startOf("project.yaml"));
    return ThinWall.of(part, LEAST).stream()
        .map(wall -> wall.feature().name() + " " + wall.thickness())
        .toList();
  }

  @Test
  void measuresFromAGrooveToTheEdgeAndToTheOtherFace() {
    Trough wide = trough(at(0, 2, 4), at(160, 8, 8));
    assertThat(thin(feature("groove", FeatureKind.GROOVE, wide))).isEmpty();
    Trough nearEdge = trough(at(0, 1, 4), at(160, 8, 8));
    assertThat(thin(feature("groove", FeatureKind.GROOVE, nearEdge)))
        .containsExactly("groove 1/16 in");
    Trough deep = trough(at(0, 8, 1), at(160, 16, 8));
    assertThat(thin(feature("groove", FeatureKind.GROOVE, deep))).containsExactly("groove 1/16 in");
  }

  @Test
  void measuresBetweenTwoCutsOnOneFaceAndOnBoth() {
    Part.Feature left = feature("left", FeatureKind.DADO, trough(at(20, 0, 5), at(30, 64, 8)));
    Part.Feature right = feature("right", FeatureKind.DADO, trough(at(31, 0, 5), at(40, 64, 8)));
    Part.Feature under = feature("under", FeatureKind.DADO, trough(at(25, 0, 0), at(35, 64, 4)));
    Part.Feature away = feature("away", FeatureKind.DADO, trough(at(80, 0, 0), at(90, 64, 4)));
    assertThat(thin(left, right)).containsExactly("left 1/16 in", "right 1/16 in");
    assertThat(thin(left, under)).containsExactly("left 1/16 in", "under 1/16 in");
    assertThat(thin(left, away)).isEmpty();
  }

  @Test
  void measuresBesideAHoleButNotInsideARabbetThatHoldsIt() {
    Bore hole = new Bore(2, at(10, 30, 0), in(8), in(18));
    assertThat(thin(feature("hole", FeatureKind.HOLE, hole))).containsExactly("hole 1/16 in");
    Part.Feature rabbet = feature("rabbet", FeatureKind.RABBET, trough(at(0, 0, 4), at(20, 64, 8)));
    Part.Feature blind =
        feature("blind", FeatureKind.HOLE, new Bore(2, at(10, 30, 4), in(4), in(18)));
    assertThat(thin(rabbet, blind)).isEmpty();
  }

  @Test
  void saysNothingOfANotch() {
    Trough deep = trough(at(0, 8, 1), at(160, 16, 8));
    assertThat(thin(feature("notch", FeatureKind.NOTCH, deep))).isEmpty();
  }
}
