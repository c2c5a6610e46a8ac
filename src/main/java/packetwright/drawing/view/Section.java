package packetwright.drawing.view;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.PrecisionModel;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;
import packetwright.drawing.view.View.Place;
import packetwright.text.measure.Length;
import packetwright.wood.part.Removal;
import packetwright.wood.part.Solid;

/**
 * Where a plane across an axis cuts a solid, within 1/100000 in. In the frame of the solid: u runs
 * along the lesser of the two other axes, v along the greater.
 *
 * @param axis that the plane stands across: 0, 1 or 2
 * @param areas of wood, none touching another along a line
 */
public record Section(int axis, List<Cut> areas) {
  private static final GeometryFactory PLANE = new GeometryFactory(new PrecisionModel(100_000));

  /** Keeps its own copy. */
  public Section {
    areas = List.copyOf(areas);
  }

  /**
   * An area of cut wood.
   *
   * @param outline its corners, none twice
   * @param holes the corners of each hole in it
   */
  public record Cut(List<Place> outline, List<List<Place>> holes) {
    /** Keeps its own copies. */
    public Cut {
      outline = List.copyOf(outline);
      holes = List.copyOf(holes);
    }

    /** The outline, then the holes. */
    public List<List<Place>> rings() {
      List<List<Place>> rings = new ArrayList<>(List.of(outline));
      rings.addAll(holes);
      return rings;
    }
  }

  /**
   * Cuts a solid.
   *
   * @param axis 0, 1 or 2
   * @param at where the plane stands on it, within the solid
   */
  public static Section of(Solid solid, int axis, Length at) {
    double plane = at.inches().approximate();
    Geometry wood = area(Prism.of(solid.block()).across(axis, plane));
    for (Removal removal : solid.removals()) {
      Geometry gone = area(Prism.of(removal, solid.block()).across(axis, plane));
      wood = OverlayNGRobust.overlay(wood, gone, OverlayNG.DIFFERENCE);
    }
    List<Cut> areas = new ArrayList<>();
    for (int i = 0; i < wood.getNumGeometries(); i++) {
      if (wood.getGeometryN(i) instanceof Polygon polygon && !polygon.isEmpty()) {
        areas.add(cut((Polygon) polygon.norm()));
      }
    }
    return new Section(axis, areas);
  }

  private static Geometry area(List<List<Place>> rings) {
    Geometry area = PLANE.createPolygon();
    for (List<Place> ring : rings) {
      List<Coordinate> corners =
          new ArrayList<>(ring.stream().map(p -> new Coordinate(p.u(), p.v())).toList());
      corners.add(corners.get(0).copy());
      Geometry part = PLANE.createPolygon(corners.toArray(new Coordinate[0]));
      area = OverlayNG.overlay(area, part, OverlayNG.UNION, PLANE.getPrecisionModel());
    }
    return area;
  }

  private static Cut cut(Polygon polygon) {
    List<List<Place>> holes = new ArrayList<>();
    for (int i = 0; i < polygon.getNumInteriorRing(); i++) {
      holes.add(places(polygon.getInteriorRingN(i)));
    }
    return new Cut(places(polygon.getExteriorRing()), holes);
  }

  private static List<Place> places(Geometry ring) {
    Coordinate[] all = ring.getCoordinates();
    return Arrays.stream(all, 0, all.length - 1).map(c -> new Place(c.x, c.y)).toList();
  }
}
