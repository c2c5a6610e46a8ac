package packetwright.wood.part;

import packetwright.text.measure.Length;

/** Wood taken out of a block. */
public sealed interface Removal {
  /** Calls the case that fits. */
  <R> R match(Cases<R> cases);

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
  }
}
