package packetwright.drawing.view;

/**
 * A piece's own frame as seen from the assembly, reckoned once for the many places of a drawing.
 *
 * @param origin where the piece's own origin lies
 * @param right where its right end looks, an inch long
 * @param top where its top edge looks
 * @param inside where its inside face looks
 */
record Frame(Vector origin, Vector right, Vector top, Vector inside) {
  static Frame of(Placed piece) {
    Vector origin = piece.assembled(new Vector(0, 0, 0));
    return new Frame(
        origin,
        piece.assembled(Vector.along(0)).minus(origin),
        piece.assembled(Vector.along(1)).minus(origin),
        piece.assembled(Vector.along(2)).minus(origin));
  }

  /** Where a place of the piece lies in the assembly. */
  Vector assembled(Vector own) {
    return origin.plus(assembledWay(own));
  }

  /** A direction of the piece in the assembly. */
  Vector assembledWay(Vector own) {
    return right.times(own.on(0)).plus(top.times(own.on(1))).plus(inside.times(own.on(2)));
  }

  /** A place of the assembly in the piece's own frame. */
  Vector own(Vector assembled) {
    return ownWay(assembled.minus(origin));
  }

  /** A direction of the assembly in the piece's own frame. */
  Vector ownWay(Vector way) {
    return new Vector(right.dot(way), top.dot(way), inside.dot(way));
  }
}
