package packetwright.drawing.svg;

import java.io.StringReader;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Deque;
import java.util.List;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import org.apache.batik.parser.ParseException;
import packetwright.drawing.sheet.Outline;
import packetwright.drawing.svg.Symbol.Shape;
import packetwright.text.source.Checked;
import packetwright.text.source.Finding;
import packetwright.text.source.Span;

/**
 * Reads a symbol from a small part of SVG: {@code path rect circle line polyline polygon g} with
 * {@code fill stroke stroke-width transform}, a {@code viewBox} and a {@code title}. Nothing
 * outside the text is read; a document type is refused.
 */
public final class SymbolReader {
  private static final int MOST_CHARACTERS = 200_000;
  private static final int MOST_SHAPES = 2_000;
  private static final int MOST_LEVELS = 32;
  private static final String HINT =
      "use only path, rect, circle, line, polyline, polygon and g, with numbers without units";

  private final String file;
  private final List<Shape> shapes = new ArrayList<>();
  private final List<Finding> findings = new ArrayList<>();
  private final Deque<Style> styles = new ArrayDeque<>(List.of(Style.START));
  private double[] frame = {};
  private String title = "";

  private SymbolReader(String file) {
    this.file = file;
  }

  /**
   * Reads a symbol.
   *
   * @param file its name, for findings; its last part without ending names the symbol
   * @param svg the text of the file
   */
  public static Checked<Symbol> read(String file, String svg) {
    SymbolReader reader = new SymbolReader(file);
    if (svg.length() > MOST_CHARACTERS) {
      reader.add(1, svg.length() + " characters, which is more than " + MOST_CHARACTERS);
    } else {
      reader.readAll(svg);
    }
    return reader.result();
  }

  private Checked<Symbol> result() {
    if (findings.isEmpty() && frame.length == 0) {
      add(1, "no viewBox with four numbers");
    }
    if (!findings.isEmpty()) {
      return new Checked<>(null, findings);
    }
    String name = file.replaceAll(".*/|\\.svg$", "");
    Matrix toOrigin = new Matrix(1, 0, 0, 1, -frame[0], -frame[1]);
    List<Shape> moved =
        shapes.stream()
            .map(s -> new Shape(toOrigin.map(s.path()), s.fill(), s.stroke(), s.strokeWidth()))
            .toList();
    return Checked.of(new Symbol(name, frame[2], frame[3], title, moved));
  }

  private void readAll(String svg) {
    XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
    factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
    factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
    int line = 1;
    try {
      XMLStreamReader xml = factory.createXMLStreamReader(new StringReader(svg));
      while (xml.hasNext() && findings.isEmpty()) {
        int event = xml.next();
        line = Math.max(1, xml.getLocation().getLineNumber());
        if (event == XMLStreamConstants.START_ELEMENT) {
          start(xml, line);
        } else if (event == XMLStreamConstants.END_ELEMENT) {
          styles.pop();
        } else if (event == XMLStreamConstants.DTD) {
          add(line, "a document type");
        }
      }
    } catch (XMLStreamException e) {
      add(Math.max(1, e.getLocation().getLineNumber()), "text that is not well-formed XML");
    } catch (ParseException | NumberFormatException e) {
      add(line, "a value that we do not read (" + e.getMessage() + ")");
    }
  }

  private void start(XMLStreamReader xml, int line) throws XMLStreamException {
    Style style = styles.element().under(xml);
    styles.push(style);
    if (styles.size() > MOST_LEVELS || shapes.size() > MOST_SHAPES) {
      add(line, "more than " + MOST_LEVELS + " levels or " + MOST_SHAPES + " shapes");
      return;
    }
    switch (xml.getLocalName()) {
      case "svg" -> frame = numbers(text(xml, "viewBox"));
      case "title" -> {
        title = xml.getElementText().strip();
        styles.pop();
      }
      case "g" -> {}
      case "path" -> shape(style, PathReader.read(text(xml, "d")));
      case "rect" -> {
        double x = number(xml, "x");
        double y = number(xml, "y");
        shape(style, Outline.rectangle(x, y, x + number(xml, "width"), y + number(xml, "height")));
      }
      case "circle" ->
          shape(style, Outline.circle(number(xml, "cx"), number(xml, "cy"), number(xml, "r")));
      case "line" ->
          shape(
              style,
              Outline.line(
                  number(xml, "x1"), number(xml, "y1"), number(xml, "x2"), number(xml, "y2")));
      case "polyline" -> shape(style, Outline.polyline(numbers(text(xml, "points"))));
      case "polygon" -> shape(style, Outline.polygon(numbers(text(xml, "points"))));
      default -> add(line, "the element " + xml.getLocalName());
    }
  }

  private void shape(Style style, Outline path) {
    shapes.add(
        new Shape(
            style.matrix.map(path),
            style.fill,
            style.stroke,
            style.strokeWidth * style.matrix.scale()));
  }

  private void add(int line, String found) {
    findings.add(
        Finding.error(
            "symbol-unreadable",
            new Span(file, line, 1, 1),
            "this drawing has " + found + "; symbols are simple shapes in a viewBox",
            HINT));
  }

  private static String text(XMLStreamReader xml, String name) {
    String value = xml.getAttributeValue(null, name);
    return value == null ? "" : value;
  }

  private static double number(XMLStreamReader xml, String name) {
    String value = text(xml, name);
    return value.isEmpty() ? 0 : Double.parseDouble(value);
  }

  private static double[] numbers(String list) {
    return Arrays.stream(list.strip().split("[\\s,]+"))
        .filter(s -> !s.isEmpty())
        .mapToDouble(Double::parseDouble)
        .toArray();
  }

  /** What an element inherits. Greys run from 0 to 1; negative is none. */
  private record Style(Matrix matrix, double fill, double stroke, double strokeWidth) {
    static final Style START = new Style(Matrix.IDENTITY, 0, -1, 1);

    Style under(XMLStreamReader xml) {
      String transform = text(xml, "transform");
      String width = text(xml, "stroke-width");
      return new Style(
          transform.isEmpty() ? matrix : matrix.after(Matrix.parse(transform)),
          grey(text(xml, "fill"), fill),
          grey(text(xml, "stroke"), stroke),
          width.isEmpty() ? strokeWidth : Double.parseDouble(width));
    }

    private static double grey(String colour, double inherited) {
      return switch (colour) {
        case "" -> inherited;
        case "none" -> -1;
        case "black" -> 0;
        case "white" -> 1;
        default -> ofHex(colour);
      };
    }

    /** The light of a colour, as ITU-R BT.601 weighs its parts. */
    private static double ofHex(String colour) {
      if (!colour.matches("#[0-9a-fA-F]{6}")) {
        throw new NumberFormatException("colour " + colour);
      }
      int red = Integer.parseInt(colour.substring(1, 3), 16);
      int green = Integer.parseInt(colour.substring(3, 5), 16);
      int blue = Integer.parseInt(colour.substring(5, 7), 16);
      return (0.299 * red + 0.587 * green + 0.114 * blue) / 255;
    }
  }
}
