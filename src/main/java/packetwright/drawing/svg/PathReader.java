package packetwright.drawing.svg;

import java.util.ArrayList;
import java.util.List;
import org.apache.batik.parser.DefaultPathHandler;
import org.apache.batik.parser.ParseException;
import org.apache.batik.parser.PathParser;
import packetwright.drawing.sheet.Outline;
import packetwright.drawing.sheet.Outline.Segment;

/** SVG path data as moves, lines and cubic curves; elliptical arcs are refused. */
final class PathReader extends DefaultPathHandler {
  private final List<Segment> segments = new ArrayList<>();
  private double x;
  private double y;
  private double startX;
  private double startY;

  /** The last control point of a curve, which a smooth one mirrors. */
  private double controlX;

  private double controlY;

  private PathReader() {}

  /** Reads path data; what is wrong with it is a {@link ParseException}. */
  static Outline read(String data) {
    PathReader reader = new PathReader();
    PathParser parser = new PathParser();
    parser.setPathHandler(reader);
    parser.parse(data);
    return new Outline(reader.segments);
  }

  @Override
  public void movetoAbs(float nextX, float nextY) {
    go('M', nextX, nextY);
    startX = x;
    startY = y;
  }

  @Override
  public void movetoRel(float dx, float dy) {
    go('M', x + dx, y + dy);
    startX = x;
    startY = y;
  }

  @Override
  public void closePath() {
    segments.add(new Segment('Z', List.of()));
    x = startX;
    y = startY;
    forgetControl();
  }

  @Override
  public void linetoAbs(float nextX, float nextY) {
    go('L', nextX, nextY);
  }

  @Override
  public void linetoRel(float dx, float dy) {
    go('L', x + dx, y + dy);
  }

  @Override
  public void linetoHorizontalAbs(float nextX) {
    go('L', nextX, y);
  }

  @Override
  public void linetoHorizontalRel(float dx) {
    go('L', x + dx, y);
  }

  @Override
  public void linetoVerticalAbs(float nextY) {
    go('L', x, nextY);
  }

  @Override
  public void linetoVerticalRel(float dy) {
    go('L', x, y + dy);
  }

  @Override
  public void curvetoCubicAbs(float x1, float y1, float x2, float y2, float x3, float y3) {
    curve(x1, y1, x2, y2, x3, y3);
  }

  @Override
  public void curvetoCubicRel(float x1, float y1, float x2, float y2, float x3, float y3) {
    curve(x + x1, y + y1, x + x2, y + y2, x + x3, y + y3);
  }

  @Override
  public void curvetoCubicSmoothAbs(float x2, float y2, float x3, float y3) {
    curve(2 * x - controlX, 2 * y - controlY, x2, y2, x3, y3);
  }

  @Override
  public void curvetoCubicSmoothRel(float x2, float y2, float x3, float y3) {
    curve(2 * x - controlX, 2 * y - controlY, x + x2, y + y2, x + x3, y + y3);
  }

  @Override
  public void curvetoQuadraticAbs(float x1, float y1, float x2, float y2) {
    quadratic(x1, y1, x2, y2);
  }

  @Override
  public void curvetoQuadraticRel(float x1, float y1, float x2, float y2) {
    quadratic(x + x1, y + y1, x + x2, y + y2);
  }

  @Override
  public void curvetoQuadraticSmoothAbs(float x2, float y2) {
    throw refused("T");
  }

  @Override
  public void curvetoQuadraticSmoothRel(float x2, float y2) {
    throw refused("t");
  }

  @Override
  public void arcAbs(
      float rx, float ry, float turn, boolean isLarge, boolean isSweep, float x2, float y2) {
    throw refused("A");
  }

  @Override
  public void arcRel(
      float rx, float ry, float turn, boolean isLarge, boolean isSweep, float x2, float y2) {
    throw refused("a");
  }

  private static ParseException refused(String command) {
    return new ParseException("path command " + command, -1, -1);
  }

  private void go(char kind, double nextX, double nextY) {
    segments.add(new Segment(kind, List.of(nextX, nextY)));
    x = nextX;
    y = nextY;
    forgetControl();
  }

  private void forgetControl() {
    controlX = x;
    controlY = y;
  }

  private void curve(double x1, double y1, double x2, double y2, double x3, double y3) {
    segments.add(new Segment('C', List.of(x1, y1, x2, y2, x3, y3)));
    x = x3;
    y = y3;
    controlX = x2;
    controlY = y2;
  }

  private void quadratic(double x1, double y1, double x2, double y2) {
    curve(
        x + (x1 - x) * 2 / 3,
        y + (y1 - y) * 2 / 3,
        x2 + (x1 - x2) * 2 / 3,
        y2 + (y1 - y2) * 2 / 3,
        x2,
        y2);
    forgetControl();
  }
}
