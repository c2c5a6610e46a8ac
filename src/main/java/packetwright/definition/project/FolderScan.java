package packetwright.definition.project;

import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import packetwright.text.source.Checked;
import packetwright.text.source.Finding;
import packetwright.text.source.Findings;
import packetwright.text.source.Span;

/** Reads the files of a folder, within bounds, and never outside of it. */
final class FolderScan {
  private static final int MAX_FILES = 500;
  private static final int MAX_DEPTH = 8;
  private static final long MAX_FILE = 8_000_000;
  private static final long MAX_ALL = 64_000_000;

  private final Path root;
  private final Findings findings = new Findings();
  private final SortedMap<String, byte[]> files = new TreeMap<>();
  private long total;
  private boolean isFull;

  FolderScan(Path root) {
    this.root = root;
  }

  Checked<SortedMap<String, byte[]>> files() throws IOException {
    scan(root, 0);
    return new Checked<>(files, findings.list());
  }

  private void scan(Path folder, int depth) throws IOException {
    for (Path path : entries(folder)) {
      if (isFull) {
        return;
      }
      if (Files.isSymbolicLink(path) && !staysInside(path)) {
        findings.add(
            Finding.error(
                "link-outside",
                place(path),
                "`" + name(path) + "` is a link that leads out of the project folder",
                "copy the file here"));
      } else if (Files.isRegularFile(path)) {
        file(path);
      } else if (Files.isDirectory(path) && depth < MAX_DEPTH) {
        scan(path, depth + 1);
      }
    }
  }

  /** Sorted, so that findings come in the same order everywhere. */
  private static List<Path> entries(Path folder) throws IOException {
    List<Path> entries = new ArrayList<>();
    try (DirectoryStream<Path> stream = Files.newDirectoryStream(folder)) {
      stream.forEach(entries::add);
    }
    return entries.stream()
        .filter(p -> !p.getFileName().toString().startsWith("."))
        .sorted()
        .toList();
  }

  /**
   * Whether a link leads to a file of this folder; a link to a folder could lead round in rings.
   */
  private boolean staysInside(Path link) throws IOException {
    return Files.isRegularFile(link) && link.toRealPath().startsWith(root);
  }

  private void file(Path path) throws IOException {
    long size = Files.size(path);
    if (size > MAX_FILE || total + size > MAX_ALL) {
      findings.add(
          Finding.error(
              "file-too-large",
              place(path),
              "`"
                  + name(path)
                  + "` has "
                  + size
                  + " bytes; at most "
                  + MAX_FILE
                  + " can be read, and "
                  + MAX_ALL
                  + " in all files together",
              "make it smaller, or move it out of the project folder"));
    } else if (files.size() == MAX_FILES) {
      isFull = true;
      findings.add(
          Finding.error(
              "too-many-files",
              place(path),
              "`" + name(path) + "` is one file too many; at most " + MAX_FILES + " are read",
              "move files that do not belong to the project out of its folder"));
    } else {
      total += size;
      files.put(name(path), Files.readAllBytes(path));
    }
  }

  private Span place(Path path) {
    return Span.startOf(name(path));
  }

  private String name(Path path) {
    List<String> parts = new ArrayList<>();
    root.relativize(path).forEach(part -> parts.add(part.toString()));
    return String.join("/", parts);
  }
}
