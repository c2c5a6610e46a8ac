package packetwright.drawing.svg;

import java.util.ArrayList;
import java.util.List;
import org.apache.batik.parser.DefaultTransformListHandler;
import org.apache.batik.parser.TransformListParser;
import packetwright.drawing.sheet.Outline;

/** An affine map as SVG writes it: x' = a x + c y + e, y' = b x + d y + f. */
record Matrix(double a, double b, double c, double d, double e, double f) {
  static final Matrix IDENTITY = new Matrix(1, 0, 0, 1, 0, 0);

  /** Reads a transform list; the last of it is applied first. */
  static Matrix parse(String list) {
    Collector collector = new Collector();
    TransformListParser parser = new TransformListParser();
    parser.setTransformListHandler(collector);
    parser.parse(list);
    return collector.matrix;
  }

  /** The map that applies another first, then this one. */
  Matrix after(Matrix first) {
    return new Matrix(
        a * first.a + c * first.b,
        b * first.a + d * first.b,
        a * first.c + c * first.d,
        b * first.c + d * first.d,
        a * first.e + c * first.f + e,
        b * first.e + d * first.f + f);
  }

  /** How much wider a line becomes. */
  double scale() {
    return StrictMath.sqrt(Math.abs(a * d - b * c));
  }

  /** A path, mapped point by point. */
  Outline map(Outline path) {
    List<Outline.Segment> mapped = new ArrayList<>();
    for (Outline.Segment segment : path.segments()) {
      List<Double> xy = new ArrayList<>();
      for (int i = 0; i < segment.xy().size(); i += 2) {
        double x = segment.xy().get(i);
        double y = segment.xy().get(i + 1);
        xy.add(a * x + c * y + e);
        xy.add(b * x + d * y + f);
      }
      mapped.add(new Outline.Segment(segment.kind(), xy));
    }
    return new Outline(mapped);
  }

  private static final class Collector extends DefaultTransformListHandler {
    private Matrix matrix = IDENTITY;

    private void add(double a, double b, double c, double d, double e, double f) {
      matrix = matrix.after(new Matrix(a, b, c, d, e, f));
    }

    @Override
    public void matrix(float a, float b, float c, float d, float e, float f) {
      add(a, b, c, d, e, f);
    }

    @Override
    public void rotate(float degrees) {
      double turn = StrictMath.toRadians(degrees);
      double cos = StrictMath.cos(turn);
      double sin = StrictMath.sin(turn);
      add(cos, sin, -sin, cos, 0, 0);
    }

    @Override
    public void rotate(float degrees, float x, float y) {
      translate(x, y);
      rotate(degrees);
      translate(-x, -y);
    }

    @Override
    public void translate(float x) {
      add(1, 0, 0, 1, x, 0);
    }

    @Override
    public void translate(float x, float y) {
      add(1, 0, 0, 1, x, y);
    }

    @Override
    public void scale(float both) {
      add(both, 0, 0, both, 0, 0);
    }

    @Override
    public void scale(float x, float y) {
      add(x, 0, 0, y, 0, 0);
    }

    @Override
    public void skewX(float degrees) {
      add(1, 0, StrictMath.tan(StrictMath.toRadians(degrees)), 1, 0, 0);
    }

    @Override
    public void skewY(float degrees) {
      add(1, StrictMath.tan(StrictMath.toRadians(degrees)), 0, 1, 0, 0);
    }
  }
}
