package packetwright.paper.publish;

import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import packetwright.plan.lesson.Lesson;
import packetwright.plan.lesson.Lessons.Request;

/** What a packet was made from, and what came out, so that a later run can be compared with it. */
final class Manifest {
  private Manifest() {}

  /** The text of {@code manifest.json}; files by name. */
  static String of(
      Lesson lesson, Map<String, byte[]> inputs, Request request, Map<String, byte[]> outputs) {
    Map<String, Object> root = new LinkedHashMap<>();
    root.put("packetwright", 1);
    root.put("project", lesson.project().id());
    root.put("term", request.term());
    root.put("set", request.set());
    root.put("options", List.copyOf(lesson.choices().options()));
    root.put("inputs", digests(inputs));
    root.put("outputs", digests(outputs));
    return Json.text(root);
  }

  private static SortedMap<String, Object> digests(Map<String, byte[]> files) {
    SortedMap<String, Object> digests = new TreeMap<>();
    files.forEach((name, bytes) -> digests.put(name, sha256(bytes)));
    return digests;
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
