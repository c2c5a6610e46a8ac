package packetwright.drawing.sheet;

/** Something on a sheet: a line, a dimension, a label, a hatched area, a symbol. */
public interface Mark {
  /** Paints it with the primitives that every output has. */
  void paint(Painter painter);
}
