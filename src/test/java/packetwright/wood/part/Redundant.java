package packetwright.wood.part;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import packetwright.text.measure.Length;
import packetwright.wood.part.Removal.Bore;
import packetwright.wood.part.Removal.Cases;
import packetwright.wood.part.Removal.Outline;
import packetwright.wood.part.Removal.Slope;
import packetwright.wood.part.Removal.Trough;

/** Removals that take nothing that another does not take already. */
final class Redundant {
  private Redundant() {}

  /** Some that lie within one, one that lies outside the block, and the same once more. */
  static List<Taken> within(Taken taken, Random random) {
    List<Taken> more = new ArrayList<>(List.of(taken));
    more.add(Taken.trough(new int[] {-9, -9, -9}, new int[] {0, 99, 99}));
    for (Removal removal : taken.removal().match(new Inner(random))) {
      // What it takes is taken already, so it need not say what that is.
      more.add(new Taken(removal, place -> false));
    }
    return more;
  }

  private record Inner(Random random) implements Cases<List<Removal>> {
    @Override
    public List<Removal> trough(Trough trough) {
      int axis = random.nextInt(3);
      Box box = trough.box();
      Length middle = box.low().on(axis).plus(box.high().on(axis)).dividedBy(2);
      Trough half = new Trough(new Box(box.low(), box.high().with(axis, middle)));
      Length wide = box.extent(0).min(box.extent(1)).min(box.extent(2));
      Point centre = box.low();
      for (int across : List.of(Removal.acrossU(axis), Removal.acrossV(axis))) {
        Length mid = box.low().on(across).plus(box.high().on(across)).dividedBy(2);
        centre = centre.with(across, mid);
      }
      return List.of(half, new Bore(axis, centre, box.extent(axis), wide));
    }

    @Override
    public List<Removal> bore(Bore bore) {
      Length half = bore.diameter().dividedBy(2);
      Length off = half.dividedBy(2);
      int u = Removal.acrossU(bore.axis());
      Point aside = bore.centre().with(u, bore.centre().on(u).plus(off));
      return List.of(
          new Bore(bore.axis(), bore.centre(), bore.depth().dividedBy(2), bore.diameter()),
          new Bore(bore.axis(), aside, bore.depth(), half));
    }

    @Override
    public List<Removal> slope(Slope slope) {
      Length farther = slope.c().plus(Taken.length(random.nextInt(9)));
      return List.of(new Slope(slope.axis(), slope.a(), slope.b(), farther));
    }

    @Override
    public List<Removal> outline(Outline outline) {
      return List.of();
    }
  }
}
