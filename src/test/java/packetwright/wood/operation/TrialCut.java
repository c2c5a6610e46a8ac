package packetwright.wood.operation;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Set;
import java.util.TreeMap;
import packetwright.definition.project.ProjectFolder;
import packetwright.plan.lesson.Lesson;
import packetwright.plan.lesson.Lessons;
import packetwright.plan.lesson.Lessons.Request;
import packetwright.text.measure.Length;
import packetwright.text.source.Checked;
import packetwright.wood.part.Point;

/**
 * One feature on one part, the operation that makes it, and what that means, said without any of
 * our solids.
 *
 * @param name of the kind
 * @param size of the part, in 16ths of an inch: length, width, thickness
 * @param feature as a project writes it
 * @param operation as a procedure writes it
 * @param takesAway whether wood at a place of the part as drawn is gone, in inches from its corner
 */
record TrialCut(
    String name, List<Integer> size, String feature, String operation, Meaning takesAway) {
  /** What a verb does to a point. */
  interface Meaning {
    boolean at(double x, double y, double z);
  }

  double length() {
    return size.get(0) / 16.0;
  }

  double width() {
    return size.get(1) / 16.0;
  }

  double thickness() {
    return size.get(2) / 16.0;
  }

  /** Two mirrored pieces with that feature, worked out in a shop that has every machine. */
  Checked<Lesson> workOut() {
    TreeMap<String, byte[]> files = new TreeMap<>();
    files.put("project.yaml", project().getBytes(StandardCharsets.UTF_8));
    files.put("procedure.md", procedure().getBytes(StandardCharsets.UTF_8));
    return Lessons.workOut(
        ProjectFolder.of("trial", files), new Request("", List.of(), Set.of(), ""));
  }

  private String project() {
    return """
        packetwright: 1
        id: trial
        title: Trial
        units: inch
        rule: 1/64
        parts:
          leg:
            letter: A
            count: 2
            hand: pair
            blank: rail
            size: [%s, %s, %s]
            features:
              cut: %s
        blanks:
          rail: {material: pine, bought: surfaced_2, cut: [leg, leg]}
        materials:
          pine: {thickness: 1, widths: [8], lengths: [12 ft], sold: board_foot, price: 1}
        """
        .formatted(sixteenths(0), sixteenths(1), sixteenths(2), feature);
  }

  private String sixteenths(int axis) {
    return size.get(axis) + "/16";
  }

  private String procedure() {
    return """
        Text.

        ## Make the legs
        ```operations
        - rough_cut: rail
        - plane_to_thickness: rail
          to: leg.thickness
        - joint_edge: rail
          with: [push_block]
        - rip: rail
          to: leg.width
          with: [push_block]
        - square_end: rail
        - lay_out: rail
        - crosscut: leg
          count: 2
          stop: true
          with: [clamps]
        - lay_out: leg
        %s
        - ease: leg
        ```
        Text.
        """
        .formatted(operation);
  }

  /** Whether a point of a piece is gone; the second piece is the mirror image of the first. */
  boolean isGone(Point place, boolean isMirrored) {
    double x = inches(place.x());
    double y = inches(place.y());
    double z = inches(place.z());
    return takesAway.at(isMirrored ? length() - x : x, y, z);
  }

  private static double inches(Length length) {
    return length.inches().approximate();
  }

  @Override
  public String toString() {
    return name + " " + size + " " + feature;
  }
}
