package packetwright.paper.publish;

import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import packetwright.definition.project.ProjectFolder;
import packetwright.plan.lesson.Lesson;
import packetwright.plan.lesson.Lessons.Request;

/** What a packet was made from, and what came out, so that a later run can be compared with it. */
final class Manifest {
  private Manifest() {}

  /** The text of {@code manifest.json}. */
  static String of(
      Lesson lesson, ProjectFolder folder, Request request, Map<String, byte[]> outputs) {
    Map<String, Object> root = new LinkedHashMap<>();
    root.put("packetwright", 1);
    root.put("project", lesson.project().id());
    root.put("term", request.term());
    root.put("set", request.set());
    root.put("options", List.copyOf(lesson.choices().options()));
    SortedMap<String, Object> inputs = new TreeMap<>();
    for (String file : folder.files()) {
      inputs.put(file, sha256(folder.bytes(file)));
    }
    root.put("inputs", inputs);
    SortedMap<String, Object> made = new TreeMap<>();
    outputs.forEach((name, bytes) -> made.put(name, sha256(bytes)));
    root.put("outputs", made);
    return Json.text(root);
  }

  /** In lower-case hexadecimal. */
  private static String sha256(byte[] bytes) {
    return HexFormat.of().formatHex(digest(bytes));
  }

  /** SHA-256 (FIPS 180-4), 32 bytes. */
  static byte[] digest(byte[] bytes) {
    try {
      return MessageDigest.getInstance("SHA-256").digest(bytes);
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java platform has SHA-256", e);
    }
  }
}
