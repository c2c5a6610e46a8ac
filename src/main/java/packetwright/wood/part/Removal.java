package packetwright.wood.part;

import packetwright.text.measure.Length;

/** Wood taken out of a block. */
public sealed interface Removal {
  /** Calls the case that fits. */
  <R> R match(Cases<R> cases);

  /** The same, seen from an origin that has moved up an axis by that much. */
  Removal moved(int axis, Length by);

  /** The box that it fits in. */
  Box around();

  /** One method for each kind of removal. */
  interface Cases<R> {
    /** A rabbet, dado, groove or notch. */
    R trough(Trough trough);

    /** A round hole. */
    R bore(Bore bore);
  }

  /**
   * A rabbet, dado, groove or notch.
   *
   * @param box what is taken out; it may reach beyond the block
   */
  record Trough(Box box) implements Removal {
    @Override
    public <R> R match(Cases<R> cases) {
      return cases.trough(this);
    }

    @Override
    public Trough moved(int axis, Length by) {
      return new Trough(
          new Box(
              box.low().with(axis, box.low().on(axis).minus(by)),
              box.high().with(axis, box.high().on(axis).minus(by))));
    }

    @Override
    public Box around() {
      return box;
    }
  }

  /**
   * A round hole.
   *
   * @param axis the axis it runs along: 0, 1 or 2
   * @param centre on its axis; the coordinate on {@code axis} is where it begins (the lesser end)
   * @param depth along the axis
   * @param diameter of the hole
   */
  record Bore(int axis, Point centre, Length depth, Length diameter) implements Removal {
    @Override
    public <R> R match(Cases<R> cases) {
      return cases.bore(this);
    }

    @Override
    public Bore moved(int along, Length by) {
      return new Bore(axis, centre.with(along, centre.on(along).minus(by)), depth, diameter);
    }

    @Override
    public Box around() {
      Point low = centre;
      Point high = centre.with(axis, centre.on(axis).plus(depth));
      for (int other = 0; other < 3; other++) {
        if (other != axis) {
          low = low.with(other, centre.on(other).minus(diameter.dividedBy(2)));
          high = high.with(other, centre.on(other).plus(diameter.dividedBy(2)));
        }
      }
      return new Box(low, high);
    }
  }
}
