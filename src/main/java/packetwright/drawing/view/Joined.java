package packetwright.drawing.view;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import packetwright.drawing.view.View.Sight;

/** Neighbouring intervals that look the same: from one wall of the grid to another. */
record Joined(Sight sight, int from, int to) {

  static List<Joined> of(@Nullable Sight[] intervals) {
    List<Joined> runs = new ArrayList<>();
    int start = 0;
    for (int i = 1; i <= intervals.length; i++) {
      if (i == intervals.length || intervals[i] != intervals[start]) {
        Sight sight = intervals[start];
        if (sight != null) {
          runs.add(new Joined(sight, start, i));
        }
        start = i;
      }
    }
    return runs;
  }
}
