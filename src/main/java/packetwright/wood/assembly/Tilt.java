package packetwright.wood.assembly;

import packetwright.text.measure.Length;

/**
 * How a piece is turned out of its upright place: about the line through its corner along an axis,
 * by the angle that rises so much over so much, the way a right hand's fingers curl when its thumb
 * looks along {@code about}.
 *
 * @param about the axis, and which way the thumb looks
 * @param rise more than 0
 * @param run more than 0
 */
public record Tilt(Direction about, Length rise, Length run) {
  /** Refuses an angle of none or of a quarter turn. */
  public Tilt {
    if (rise.signum() <= 0 || run.signum() <= 0) {
      throw new IllegalArgumentException("tilt of " + rise + " over " + run);
    }
  }
}
