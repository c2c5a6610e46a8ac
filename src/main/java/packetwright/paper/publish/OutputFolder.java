package packetwright.paper.publish;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Puts a set of files into a folder as a whole: they are written to a sibling folder, which then
 * takes the place of the former one. The former folder stands aside as {@code <name>.previous}
 * meanwhile; a run that finds it there without its successor puts it back.
 *
 * <p>Every folder made bears a mark that lists its files. A folder without the mark, or with a file
 * that the mark does not list, is never moved or deleted, so that a slip in a path costs nothing.
 */
public final class OutputFolder {
  /** The file that says that a folder is ours to replace, and lists what we put there. */
  private static final String MARK = ".packetwright-output";

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

  /** Something in the way that this class did not make. */
  public static final class TakenException extends IOException {
    private TakenException(Path path) {
      super(
          "`"
              + path
              + "` is there already and was not made by packetwright;"
              + " name another folder with --out");
    }
  }

  /**
   * Looks whether the folder can be replaced, so that no work is done in vain.
   *
   * @throws TakenException as {@link #replace} would
   */
  public void requireFree() throws IOException {
    for (Path path : List.of(folder, next, previous)) {
      requireOurs(path);
    }
  }

  /**
   * Replaces the folder's contents.
   *
   * @param files contents by path inside the folder, with slashes
   * @throws TakenException when the folder, or a sibling needed to replace it, is there and was not
   *     made by a run like this; nothing is changed then
   */
  public void replace(Map<String, byte[]> files) throws IOException {
    requireFree();
    recover();
    delete(next);
    write(files);
    if (Files.exists(folder)) {
      Files.move(folder, previous);
    }
    Files.move(next, folder);
    delete(previous);
  }

  private void write(Map<String, byte[]> files) throws IOException {
    Files.createDirectories(next);
    Files.write(next.resolve(MARK), files.keySet(), UTF_8);
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
  }

  private static void requireOurs(Path path) throws IOException {
    if (!Files.exists(path, LinkOption.NOFOLLOW_LINKS)) {
      return;
    }
    if (!Files.isDirectory(path, LinkOption.NOFOLLOW_LINKS)) {
      throw new TakenException(path);
    }
    Path mark = path.resolve(MARK);
    Set<Path> ours = new HashSet<>(Set.of(mark));
    if (Files.isRegularFile(mark, LinkOption.NOFOLLOW_LINKS)) {
      Files.readAllLines(mark, UTF_8).forEach(name -> ours.add(path.resolve(name)));
    }
    try (Stream<Path> all = Files.walk(path)) {
      for (Path file : all.filter(f -> !Files.isDirectory(f, LinkOption.NOFOLLOW_LINKS)).toList()) {
        if (!ours.contains(file)) {
          throw new TakenException(file);
        }
      }
    }
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
