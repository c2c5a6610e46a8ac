package packetwright.drawing.view;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import packetwright.drawing.view.View.Arc;
import packetwright.drawing.view.View.Edge;
import packetwright.drawing.view.View.Hole;
import packetwright.drawing.view.View.Sight;
import packetwright.text.measure.Length;
import packetwright.wood.part.Solid;

/**
 * Projects a solid. For troughs the lines are exactly right. A hole is drawn on the block that the
 * troughs leave: where two holes cross, or a trough cuts a hole lengthwise, their meeting curve is
 * not drawn, and nothing is seen through a hole.
 */
public final class Views {
  /** A step beside a circle, in inches: less than any graduation, more than rounding. */
  private static final double BESIDE = 1e-6;

  private final ViewGrid grid;
  private final Sight[][] level;
  private final Sight[][] upright;
  private final List<Edge> edges = new ArrayList<>();
  private final List<Arc> arcs = new ArrayList<>();
  private final List<Hole> holes = new ArrayList<>();

  private Views(ViewGrid grid) {
    this.grid = grid;
    // By the index of the line, then of the interval along it.
    this.level = new Sight[grid.cells(1) + 1][grid.cells(0)];
    this.upright = new Sight[grid.cells(0) + 1][grid.cells(1)];
  }

  /** The lines of one view. */
  public static View project(Solid solid, Projection projection) {
    Views views = new Views(new ViewGrid(solid, projection));
    views.seeCells();
    views.grid.bores().forEach(views::seeBore);
    views.join();
    return new View(
        solid.extent(projection.across()),
        solid.extent(projection.up()),
        views.edges,
        views.arcs,
        views.holes);
  }

  private void seeCells() {
    for (int v = 0; v < level.length; v++) {
      for (int u = 0; u < grid.cells(0); u++) {
        see(level, v, u, new Columns(u, v - 1, u, v));
      }
    }
    for (int u = 0; u < upright.length; u++) {
      for (int v = 0; v < grid.cells(1); v++) {
        see(upright, u, v, new Columns(u - 1, v, u, v));
      }
    }
  }

  private void see(Sight[][] lines, int line, int interval, Columns beside) {
    if (grid.top(beside.u1, beside.v1) != grid.top(beside.u2, beside.v2)) {
      lines[line][interval] = Sight.VISIBLE;
    } else if (hasEdge(beside)) {
      lines[line][interval] = Sight.HIDDEN;
    }
  }

  /** Whether, at some depth, the four cells around the line between two columns are not flat. */
  private boolean hasEdge(Columns beside) {
    for (int d = 0; d <= grid.cells(2); d++) {
      boolean farOne = grid.isFilled(beside.u1, beside.v1, d - 1);
      boolean farOther = grid.isFilled(beside.u2, beside.v2, d - 1);
      boolean nearOne = grid.isFilled(beside.u1, beside.v1, d);
      boolean nearOther = grid.isFilled(beside.u2, beside.v2, d);
      boolean isFacing = farOne == farOther && nearOne == nearOther;
      boolean isSideOn = farOne == nearOne && farOther == nearOther;
      if (!isFacing && !isSideOn) {
        return true;
      }
    }
    return false;
  }

  private void seeBore(BoreInView bore) {
    if (bore.index() == 2) {
      seeCircle(bore);
    } else {
      seeSide(bore);
    }
  }

  private void seeCircle(BoreInView bore) {
    Hole hole = new Hole(bore.centre().get(0), bore.centre().get(1), bore.radius());
    holes.add(hole);
    List<Double> turns = crossings(hole);
    for (int i = 0; i < turns.size() - 1; i++) {
      double middle = (turns.get(i) + turns.get(i + 1)) / 2;
      double radius = hole.radius().inches().approximate() + BESIDE;
      int u = grid.cellAt(0, hole.u().inches().approximate() + radius * StrictMath.cos(middle));
      int v = grid.cellAt(1, hole.v().inches().approximate() + radius * StrictMath.sin(middle));
      Sight sight = rim(u, v, bore);
      if (sight != null) {
        addArc(new Arc(sight, hole, turns.get(i), turns.get(i + 1)));
      }
    }
  }

  private void addArc(Arc arc) {
    Arc last = arcs.isEmpty() ? null : arcs.get(arcs.size() - 1);
    boolean goesOn =
        last != null
            && last.hole().equals(arc.hole())
            && last.sight() == arc.sight()
            && last.to() == arc.from();
    if (last != null && goesOn) {
      arcs.set(arcs.size() - 1, new Arc(arc.sight(), arc.hole(), last.from(), arc.to()));
    } else {
      arcs.add(arc);
    }
  }

  /** Whether the wall of a hole beside a column is seen, hidden, or (null) not there. */
  private @Nullable Sight rim(int u, int v, BoreInView bore) {
    int top = -1;
    for (int d = 0; d < grid.cells(2); d++) {
      if (grid.isFilled(u, v, d) && isWithin(d, bore)) {
        top = d;
      }
    }
    if (top < 0) {
      return null;
    }
    return top == grid.top(u, v) ? Sight.VISIBLE : Sight.HIDDEN;
  }

  private boolean isWithin(int d, BoreInView bore) {
    return !grid.lines(2).get(d).isLess(bore.low(2))
        && !grid.lines(2).get(d + 1).isMore(bore.high(2));
  }

  /** Angles at which a circle crosses walls of the grid, from 0 to a full turn, both included. */
  private List<Double> crossings(Hole hole) {
    TreeSet<Double> turns = new TreeSet<>(List.of(0.0, 2 * Math.PI));
    double radius = hole.radius().inches().approximate();
    for (Length u : grid.lines(0)) {
      double cos = u.minus(hole.u()).inches().approximate() / radius;
      if (Math.abs(cos) < 1) {
        turns.add(StrictMath.acos(cos));
        turns.add(2 * Math.PI - StrictMath.acos(cos));
      }
    }
    for (Length v : grid.lines(1)) {
      double sin = v.minus(hole.v()).inches().approximate() / radius;
      if (Math.abs(sin) < 1) {
        turns.add((StrictMath.asin(sin) + 2 * Math.PI) % (2 * Math.PI));
        turns.add(Math.PI - StrictMath.asin(sin));
      }
    }
    return List.copyOf(turns);
  }

  private void seeSide(BoreInView bore) {
    boolean isAcross = bore.index() == 0;
    int side = 1 - bore.index();
    Sight[][] along = isAcross ? level : upright;
    Sight[][] ends = isAcross ? upright : level;
    int axisCell = grid.cellAt(2, bore.centre().get(2).inches().approximate());
    for (int i = 0; i < grid.cells(bore.index()); i++) {
      boolean isInside =
          !grid.lines(bore.index()).get(i).isLess(bore.low(bore.index()))
              && !grid.lines(bore.index()).get(i + 1).isMore(bore.high(bore.index()));
      if (isInside) {
        seeWall(along, side, bore.low(side), -1, new Spot(i, axisCell, isAcross));
        seeWall(along, side, bore.high(side), 0, new Spot(i, axisCell, isAcross));
      }
    }
    int middle = grid.cellAt(side, bore.centre().get(side).inches().approximate());
    seeBottom(ends, bore, bore.low(bore.index()), -1, new Spot(middle, axisCell, isAcross));
    seeBottom(ends, bore, bore.high(bore.index()), 0, new Spot(middle, axisCell, isAcross));
    addAxis(bore);
  }

  /** The outline of a hole's wall beside the cells along it. */
  private void seeWall(Sight[][] along, int side, Length at, int outward, Spot spot) {
    int line = grid.lines(side).indexOf(at);
    if (line < 0) {
      return;
    }
    int beside = line + outward;
    boolean isWood =
        spot.isAcross
            ? grid.isFilled(spot.cell, beside, spot.depth)
            : grid.isFilled(beside, spot.cell, spot.depth);
    if (isWood && along[line][spot.cell] == null) {
      along[line][spot.cell] = Sight.HIDDEN;
    }
  }

  /** The flat end of a hole that does not go through. */
  private void seeBottom(Sight[][] ends, BoreInView bore, Length at, int outward, Spot spot) {
    int line = grid.lines(bore.index()).indexOf(at);
    if (line < 0) {
      return;
    }
    int beside = line + outward;
    int side = 1 - bore.index();
    for (int i = 0; i < grid.cells(side); i++) {
      boolean isInside =
          !grid.lines(side).get(i).isLess(bore.low(side))
              && !grid.lines(side).get(i + 1).isMore(bore.high(side));
      boolean isWood =
          spot.isAcross
              ? grid.isFilled(beside, i, spot.depth)
              : grid.isFilled(i, beside, spot.depth);
      if (isInside && isWood && ends[line][i] == null) {
        ends[line][i] = Sight.HIDDEN;
      }
    }
  }

  private void addAxis(BoreInView bore) {
    boolean isAcross = bore.index() == 0;
    List<Length> walls = grid.lines(bore.index());
    Length from = bore.low(bore.index()).max(Length.ZERO);
    Length to = bore.high(bore.index()).min(walls.get(walls.size() - 1));
    Length at = bore.centre().get(1 - bore.index());
    if (from.isLess(to)) {
      edges.add(
          isAcross
              ? new Edge(Sight.CENTRE, from, at, to, at)
              : new Edge(Sight.CENTRE, at, from, at, to));
    }
  }

  /** Joins the intervals of each line that look the same. */
  private void join() {
    for (int v = 0; v < level.length; v++) {
      Length at = grid.lines(1).get(v);
      for (Joined run : Joined.of(level[v])) {
        edges.add(
            new Edge(
                run.sight(), grid.lines(0).get(run.from()), at, grid.lines(0).get(run.to()), at));
      }
    }
    for (int u = 0; u < upright.length; u++) {
      Length at = grid.lines(0).get(u);
      for (Joined run : Joined.of(upright[u])) {
        edges.add(
            new Edge(
                run.sight(), at, grid.lines(1).get(run.from()), at, grid.lines(1).get(run.to())));
      }
    }
  }

  private record Columns(int u1, int v1, int u2, int v2) {}

  private record Spot(int cell, int depth, boolean isAcross) {}
}
