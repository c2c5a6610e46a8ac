package packetwright.drawing.svg;

import java.util.List;
import packetwright.drawing.sheet.Mark;
import packetwright.drawing.sheet.Outline;
import packetwright.drawing.sheet.Painter;

/**
 * A small picture that is placed at any size.
 *
 * @param name of its file, without folder and ending
 * @param width of its own frame, in its own units
 * @param height of its own frame
 * @param title what it shows, for a reader who cannot see it
 * @param shapes painted in order, in its own frame, y downward
 */
public record Symbol(String name, double width, double height, String title, List<Shape> shapes) {
  /** Keeps its own copy. */
  public Symbol {
    shapes = List.copyOf(shapes);
  }

  /**
   * One shape of it.
   *
   * @param path in the symbol's frame
   * @param fill grey from 0 to 1; negative for none
   * @param stroke grey from 0 to 1; negative for none
   * @param strokeWidth in the symbol's units
   */
  public record Shape(Outline path, double fill, double stroke, double strokeWidth) {}

  /** The symbol with its top left corner at a point, so high. */
  public Mark at(double x, double y, double drawnHeight) {
    return new PlacedSymbol(this, x, y, drawnHeight / height);
  }

  private record PlacedSymbol(Symbol symbol, double x, double y, double scale) implements Mark {
    @Override
    public void paint(Painter painter) {
      for (Shape shape : symbol.shapes()) {
        Outline path = shape.path().placed(x, y, scale);
        if (shape.fill() >= 0) {
          painter.fill(path, shape.fill());
        }
        if (shape.stroke() >= 0) {
          painter.stroke(
              path, new Painter.Pen(shape.strokeWidth() * scale, List.of(), shape.stroke()));
        }
      }
    }
  }
}
