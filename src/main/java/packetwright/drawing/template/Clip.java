package packetwright.drawing.template;

import java.util.ArrayList;
import java.util.List;
import packetwright.drawing.sheet.Area;
import packetwright.drawing.sheet.Outline;
import packetwright.drawing.view.View.Place;

/** Lines cut off at the edge of an area. */
final class Clip {
  private Clip() {}

  /** What of straight lines from place to place lies in an area, each run as one path. */
  static List<Outline> to(Area area, List<Place> places) {
    List<Outline> runs = new ArrayList<>();
    List<Place> run = new ArrayList<>();
    for (int i = 1; i < places.size(); i++) {
      List<Place> inside = inside(area, places.get(i - 1), places.get(i));
      boolean isOn = !inside.isEmpty() && !run.isEmpty() && last(run).equals(inside.get(0));
      if (!isOn) {
        addRun(runs, run);
        run = new ArrayList<>(inside);
      } else {
        run.add(inside.get(1));
      }
    }
    addRun(runs, run);
    return runs;
  }

  private static Place last(List<Place> run) {
    return run.get(run.size() - 1);
  }

  private static void addRun(List<Outline> runs, List<Place> run) {
    if (run.size() > 1) {
      double[] xy = new double[2 * run.size()];
      for (int i = 0; i < run.size(); i++) {
        xy[2 * i] = run.get(i).u();
        xy[2 * i + 1] = run.get(i).v();
      }
      runs.add(Outline.polyline(xy));
    }
  }

  /** Two ends, or none (Liang and Barsky 1984, clipping). */
  private static List<Place> inside(Area area, Place from, Place to) {
    double across = to.u() - from.u();
    double down = to.v() - from.v();
    double[] gain = {-across, across, -down, down};
    double[] room = {
      from.u() - area.left(),
      area.right() - from.u(),
      from.v() - area.top(),
      area.bottom() - from.v()
    };
    double enter = 0;
    double leave = 1;
    for (int i = 0; i < 4; i++) {
      if (gain[i] == 0 && room[i] < 0) {
        return List.of();
      }
      if (gain[i] < 0) {
        enter = Math.max(enter, room[i] / gain[i]);
      } else if (gain[i] > 0) {
        leave = Math.min(leave, room[i] / gain[i]);
      }
    }
    if (enter >= leave) {
      return List.of();
    }
    return List.of(
        enter == 0 ? from : new Place(from.u() + across * enter, from.v() + down * enter),
        leave == 1 ? to : new Place(from.u() + across * leave, from.v() + down * leave));
  }
}
