package packetwright.drawing.svg;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import packetwright.drawing.lettering.Face;
import packetwright.drawing.lettering.Lettering;
import packetwright.drawing.sheet.Outline;
import packetwright.drawing.sheet.Painter;
import packetwright.drawing.sheet.Sheet;

/** A sheet as a stand-alone SVG 1.1 document: true size, one element a line, sorted attributes. */
public final class SvgWriter implements Painter {
  private final StringBuilder out = new StringBuilder();

  private SvgWriter() {}

  /** The whole document; ends with a line feed. The same sheet gives the same text. */
  public static String write(Sheet sheet) {
    SvgWriter writer = new SvgWriter();
    String width = Decimals.of(sheet.width());
    String height = Decimals.of(sheet.height());
    writer.open(
        "svg",
        Map.of(
            "xmlns",
            "http://www.w3.org/2000/svg",
            "width",
            Decimals.fine(sheet.width() / 72) + "in",
            "height",
            Decimals.fine(sheet.height() / 72) + "in",
            "viewBox",
            "0 0 " + width + " " + height,
            // Not a presentation attribute of SVG 1.1, but its style attribute takes any CSS.
            "style",
            "font-kerning:none",
            "role",
            "img"));
    writer.out.append("<title>").append(escaped(sheet.name())).append("</title>\n");
    writer.out.append("<desc>").append(escaped(sheet.alternative())).append("</desc>\n");
    sheet.paint(writer);
    writer.out.append("</svg>\n");
    return writer.out.toString();
  }

  @Override
  public void stroke(Outline path, Pen pen) {
    Map<String, String> attributes = new TreeMap<>();
    attributes.put("d", data(path));
    attributes.put("fill", "none");
    attributes.put("stroke", grey(pen.grey()));
    attributes.put("stroke-width", Decimals.of(pen.width()));
    attributes.put("stroke-linejoin", "round");
    if (!pen.dash().isEmpty()) {
      attributes.put(
          "stroke-dasharray",
          pen.dash().stream().map(Decimals::of).collect(Collectors.joining(" ")));
    }
    element("path", attributes);
  }

  @Override
  public void fill(Outline path, double grey) {
    element("path", Map.of("d", data(path), "fill", grey(grey), "fill-rule", "evenodd"));
  }

  @Override
  public void text(double x, double y, double angle, double size, Face face, String text) {
    Map<String, String> attributes = new TreeMap<>();
    attributes.put("x", Decimals.of(x));
    attributes.put("y", Decimals.of(y));
    attributes.put("font-family", "'" + face.family() + "', sans-serif");
    attributes.put("font-size", Decimals.of(size));
    if (face.weight() != 400) {
      attributes.put("font-weight", Integer.toString(face.weight()));
    }
    if (face.isItalic()) {
      attributes.put("font-style", "italic");
    }
    if (angle != 0) {
      // SVG turns clockwise, since its y runs downward.
      attributes.put(
          "transform",
          "rotate(" + Decimals.of(-angle) + " " + Decimals.of(x) + " " + Decimals.of(y) + ")");
    }
    attributes.put("xml:space", "preserve");
    // Typefaces are named, not embedded: one face as a data URI weighs 20 times what a drawing
    // does,
    // and many editors pass over it; letters as paths could not be searched. Where another face
    // stands
    // in, each text still fills the width that the drawing leaves for it, so it meets no line.
    attributes.put("textLength", Decimals.of(Lettering.width(face, size, text)));
    attributes.put("lengthAdjust", "spacingAndGlyphs");
    tag("text", attributes);
    out.append('>').append(escaped(text)).append("</text>\n");
  }

  private void element(String name, Map<String, String> attributes) {
    tag(name, attributes);
    out.append("/>\n");
  }

  private void open(String name, Map<String, String> attributes) {
    tag(name, attributes);
    out.append(">\n");
  }

  private void tag(String name, Map<String, String> attributes) {
    out.append('<').append(name);
    new TreeMap<>(attributes)
        .forEach((k, v) -> out.append(' ').append(k).append("=\"").append(escaped(v)).append('"'));
  }

  private static String data(Outline path) {
    return path.segments().stream().map(SvgWriter::data).collect(Collectors.joining(" "));
  }

  private static String data(Outline.Segment segment) {
    List<Double> xy = segment.xy();
    return segment.kind() + xy.stream().map(Decimals::of).collect(Collectors.joining(" "));
  }

  private static String grey(double grey) {
    long level = Math.round(grey * 255);
    String hex = (level < 16 ? "0" : "") + Long.toHexString(level);
    return "#" + hex.repeat(3);
  }

  private static String escaped(String text) {
    return text.replace("&", "&amp;")
        .replace("<", "&lt;")
        .replace(">", "&gt;")
        .replace("\"", "&quot;");
  }
}
