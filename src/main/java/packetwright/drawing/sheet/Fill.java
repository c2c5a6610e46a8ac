package packetwright.drawing.sheet;

/**
 * A filled area.
 *
 * @param path its outline
 * @param grey 0 black to 1 white
 */
public record Fill(Outline path, double grey) implements Mark {
  @Override
  public void paint(Painter painter) {
    painter.fill(path, grey);
  }
}
