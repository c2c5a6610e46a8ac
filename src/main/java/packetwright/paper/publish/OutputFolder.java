package packetwright.paper.publish;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * Puts a set of files into a folder as a whole: they are written to a sibling folder, which then
 * takes the place of the former one. The former folder stands aside as {@code <name>.previous}
 * meanwhile; a run that finds it there without its successor puts it back.
 */
public final class OutputFolder {
  private final Path folder;
  private final Path next;
  private final Path previous;

  /** For a folder that may or may not exist yet. */
  public OutputFolder(Path folder) {
    this.folder = folder.toAbsolutePath().normalize();
    Path name = this.folder.getFileName();
    if (name == null) {
      throw new IllegalArgumentException("a file system's root cannot be an output folder");
    }
    this.next = this.folder.resolveSibling(name + ".next");
    this.previous = this.folder.resolveSibling(name + ".previous");
  }

  /**
   * Replaces the folder's contents.
   *
   * @param files contents by path inside the folder, with slashes
   */
  public void replace(Map<String, byte[]> files) throws IOException {
    recover();
    delete(next);
    for (Map.Entry<String, byte[]> file : files.entrySet()) {
      Path target = next.resolve(file.getKey()).normalize();
      if (!target.startsWith(next)) {
        throw new IllegalArgumentException("not inside the output folder: " + file.getKey());
      }
      Path parent = target.getParent();
      if (parent != null) {
        Files.createDirectories(parent);
      }
      Files.write(target, file.getValue());
    }
    if (Files.exists(folder)) {
      Files.move(folder, previous);
    }
    Files.move(next, folder);
    delete(previous);
  }

  /** Puts a former output back that a run cut off had set aside. */
  private void recover() throws IOException {
    if (Files.exists(previous)) {
      if (Files.exists(folder)) {
        delete(previous);
      } else {
        Files.move(previous, folder);
      }
    }
  }

  private static void delete(Path folder) throws IOException {
    if (!Files.exists(folder)) {
      return;
    }
    List<Path> deepestFirst;
    try (Stream<Path> all = Files.walk(folder)) {
      deepestFirst = all.sorted(Comparator.reverseOrder()).toList();
    }
    for (Path path : deepestFirst) {
      Files.delete(path);
    }
  }
}
