package packetwright.wood.part;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import packetwright.text.measure.Length;

class ColumnsTest {
  private static final Solid BLOCK =
      Solid.block(Length.ofInches(8), Length.ofInches(8), Length.ofInches(4));

  private static Box box(long x1, long y1, long z1, long x2, long y2, long z2) {
    return new Box(
        new Point(Length.ofInches(x1), Length.ofInches(y1), Length.ofInches(z1)),
        new Point(Length.ofInches(x2), Length.ofInches(y2), Length.ofInches(z2)));
  }

  @Test
  void groovesFromBothFacesThatMeetCutItInTwo() {
    Box outside = box(0, 2, 0, 8, 4, 2);
    Box inside = box(0, 3, 2, 8, 5, 4);
    assertThat(new Columns(BLOCK, List.of(outside)).isOnePiece()).isTrue();
    assertThat(new Columns(BLOCK, List.of(outside, inside)).isOnePiece()).isFalse();
  }

  @Test
  void groovesBesideEachOtherThatOnlyTouchCutItInTwo() {
    Box outside = box(0, 2, 0, 8, 4, 2);
    Box inside = box(0, 4, 2, 8, 5, 4);
    assertThat(new Columns(BLOCK, List.of(outside, inside)).isOnePiece())
        .as("only a line is left between them")
        .isFalse();
  }

  @Test
  void aRabbetThroughTheThicknessTakesTheEnd() {
    Columns columns = new Columns(BLOCK, List.of(box(0, 0, 0, 1, 8, 4)));
    assertThat(columns.isOnePiece()).isTrue();
    assertThat(columns.isFullSize()).isFalse();
    assertThat(new Columns(BLOCK, List.of(box(0, 0, 0, 1, 8, 3))).isFullSize()).isTrue();
  }

  @Test
  void aNotchThroughItLeavesAFrame() {
    Columns columns = new Columns(BLOCK, List.of(box(2, 2, 0, 6, 6, 4)));
    assertThat(columns.isOnePiece()).isTrue();
    assertThat(columns.isFullSize()).isTrue();
  }

  @Test
  void allTakenLeavesNothing() {
    assertThat(new Columns(BLOCK, List.of(box(0, 0, 0, 8, 8, 4))).isEmpty()).isTrue();
    assertThat(new Columns(BLOCK, List.of()).isEmpty()).isFalse();
  }

  /** Laths that cross like a lattice, 100 each way, none of them as thick as the block. */
  @Test
  @Timeout(5)
  void answersForTwoHundredTroughs() {
    List<Box> troughs = new ArrayList<>();
    for (int i = 0; i < 100; i++) {
      Length low = Length.ofInches(i * 8L + 2, 101);
      Length high = Length.ofInches(i * 8L + 6, 101);
      Point top = new Point(Length.ofInches(8), Length.ofInches(8), Length.ofInches(3));
      Point origin = new Point(Length.ZERO, Length.ZERO, Length.ZERO);
      troughs.add(new Box(origin.with(0, low), top.with(0, high)));
      troughs.add(
          new Box(
              origin.with(1, low).with(2, Length.ofInches(2)),
              top.with(1, high).with(2, Length.ofInches(4))));
    }
    Columns columns = new Columns(BLOCK, troughs);
    assertThat(columns.isOnePiece()).isTrue();
    assertThat(columns.isFullSize()).isTrue();
  }
}
