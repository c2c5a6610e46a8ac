package packetwright.paper.packet;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;
import packetwright.drawing.sheet.Sheet;
import packetwright.drawing.svg.Symbol;
import packetwright.drawing.svg.SymbolReader;

/** The signs in {@code diagrams/}, as small drawings. */
final class Signs {
  private Signs() {}

  /**
   * A sign so high.
   *
   * @param name of its file, without ending
   * @param height in points
   * @param alternative what a reader who cannot see it is told
   */
  static Sheet sheet(String name, double height, String alternative) {
    Symbol symbol = SymbolReader.read(name + ".svg", text(name)).value();
    double width = height * symbol.width() / symbol.height();
    return new Sheet("sign-" + name, width, height, alternative, List.of(symbol.at(0, 0, height)));
  }

  private static String text(String name) {
    String file = "/diagrams/" + name + ".svg";
    try (InputStream in = Signs.class.getResourceAsStream(file)) {
      if (in == null) {
        throw new IllegalStateException("not packed: " + file);
      }
      return new String(in.readAllBytes(), UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(file, e);
    }
  }
}
