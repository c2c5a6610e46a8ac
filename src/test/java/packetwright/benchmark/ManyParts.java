package packetwright.benchmark;

import java.nio.charset.StandardCharsets;
import java.util.SortedMap;
import java.util.TreeMap;
import packetwright.definition.project.ProjectFolder;

/**
 * A project of any size: boards from which slats are cut, each with a groove, a dado and a hole.
 *
 * @param parts how many parts, one piece of each; a multiple of {@value #PER_BLANK}
 * @param steps how many steps; what is left over after making the parts looks at and sands them
 */
record ManyParts(int parts, int steps) {
  private static final int PER_BLANK = 4;

  ProjectFolder folder() {
    SortedMap<String, byte[]> files = new TreeMap<>();
    files.put("project.yaml", project().getBytes(StandardCharsets.UTF_8));
    files.put("procedure.md", procedure().getBytes(StandardCharsets.UTF_8));
    files.put("shop.yaml", ProjectFolder.sample("sliding-lid-box").bytes("shop.yaml"));
    return ProjectFolder.of("many-parts", files);
  }

  private String project() {
    StringBuilder text =
        new StringBuilder(
            """
            packetwright: 1
            id: many-parts
            title: Many parts
            units: inch
            rule: 1/32
            givens:
              thickness: {value: 3/4, about: Thickness of the boards}
              width: {value: 4, about: Width of the slats}
            materials:
              poplar: {thickness: 3/4, widths: [4, 6, 8], lengths: [12 ft], sold: board_foot}
            parts:
            """);
    for (int i = 0; i < parts; i++) {
      text.append(
          """
            slat_%1$d:
              letter: %2$s
              count: 1
              blank: board_%3$d
              size: [%4$d, width, thickness]
              features:
                groove: {groove: along, face: inside, from: bottom, at: 1, width: 1/4, depth: 1/4}
                dado: {dado: across, face: inside, from: left, at: 3, width: 3/4, depth: 1/4}
                hole: {hole: through, face: inside, from: right, at: 2, diameter: 1/2}
          """
              .formatted(i, letter(i), i / PER_BLANK, 12 + i % PER_BLANK));
    }
    text.append("blanks:\n");
    for (int blank = 0; blank < blanks(); blank++) {
      int first = blank * PER_BLANK;
      text.append("  board_%d: {material: poplar, bought: surfaced_2, cut: [".formatted(blank));
      for (int i = first; i < first + PER_BLANK; i++) {
        text.append(i == first ? "" : ", ").append("slat_").append(i);
      }
      text.append("]}\n");
    }
    return text.toString();
  }

  private int blanks() {
    return parts / PER_BLANK;
  }

  private static String letter(int number) {
    String last = String.valueOf((char) ('A' + number % 26));
    return number < 26 ? last : (char) ('A' + number / 26 - 1) + last;
  }

  private String procedure() {
    StringBuilder text = new StringBuilder("Make the slats.\n");
    int made = 0;
    for (int blank = 0; blank < blanks(); blank++) {
      made += blank(text, blank);
    }
    for (int i = 0; made < steps - 1; i++, made++) {
      step(text, "Sand again " + i, "- sand: slat_%d\n".formatted(i % parts));
    }
    StringBuilder all = new StringBuilder();
    for (int i = 0; i < parts; i++) {
      all.append("- ease: slat_%d\n".formatted(i));
    }
    step(text, "Ease every edge", all.toString());
    return text.toString();
  }

  /** Mills, grooves and cuts up one board; answers how many steps that took. */
  private int blank(StringBuilder text, int blank) {
    String board = "board_" + blank;
    step(text, "Cut " + blank, "- rough_cut: %s\n  at: miter_saw\n".formatted(board));
    step(text, "Joint " + blank, "- joint_edge: %s\n  with: [push_block]\n".formatted(board));
    step(text, "Rip " + blank, "- rip: %s\n  to: width\n  with: [push_block]\n".formatted(board));
    step(text, "Square " + blank, "- square_end: %s\n".formatted(board));
    step(text, "Lay out " + blank, "- lay_out: %s\n".formatted(board));
    int first = blank * PER_BLANK;
    StringBuilder grooves = new StringBuilder("- cut: [");
    for (int i = first; i < first + PER_BLANK; i++) {
      grooves.append(i == first ? "" : ", ").append("slat_%d.groove".formatted(i));
    }
    step(
        text,
        "Groove " + blank,
        grooves
            + "]\n  piece: %s\n  from: [bottom, inside]\n  at: dado_set\n".formatted(board)
            + "  with: [featherboard, push_block]\n");
    int count = 6;
    for (int i = first; i < first + PER_BLANK; i++, count += 3) {
      step(text, "Free " + i, "- crosscut: slat_%d\n  of: %s\n  stop: true\n".formatted(i, board));
      step(
          text,
          "Dado " + i,
          "- cut: slat_%d.dado\n  at: dado_set\n  with: [miter_gauge, clamps]\n".formatted(i));
      step(text, "Drill " + i, "- drill: slat_%d.hole\n  with: [clamps, backer]\n".formatted(i));
    }
    return count;
  }

  private static void step(StringBuilder text, String title, String operations) {
    text.append("\n## ").append(title).append("\n```operations\n").append(operations);
    text.append("```\nAsk before you switch on.\n");
  }
}
