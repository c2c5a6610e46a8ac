package packetwright.definition.project;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Collections;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import packetwright.text.source.Checked;
import packetwright.text.source.Finding;
import packetwright.text.source.Span;

/** All files of a project, read once into memory; nothing later opens one. */
public final class ProjectFolder {
  private static final String SAMPLES = "/projects/";

  private final String name;
  private final SortedMap<String, byte[]> files;

  private ProjectFolder(String name, SortedMap<String, byte[]> files) {
    this.name = name;
    this.files = Collections.unmodifiableSortedMap(new TreeMap<>(files));
  }

  /** A folder of those files, by name inside the folder with {@code /} between its parts. */
  public static ProjectFolder of(String name, SortedMap<String, byte[]> files) {
    return new ProjectFolder(name, files);
  }

  /**
   * The files of a folder, without those whose name or folder begins with a dot. Files too large or
   * too many, and links that lead out of the folder, are findings; the rest is read all the same.
   *
   * @throws IOException when the folder, or a file in it, cannot be read
   */
  public static Checked<ProjectFolder> read(Path folder) throws IOException {
    Path root = folder.toRealPath();
    Path last = root.getFileName();
    String name = last == null ? "project" : last.toString();
    return new FolderScan(root).files().map(files -> new ProjectFolder(name, files));
  }

  /** Names of the bundled samples, sorted. */
  public static List<String> samples() {
    return sampleFiles().stream().map(f -> f.substring(0, f.indexOf('/'))).distinct().toList();
  }

  /** A bundled sample; asking for a name not among {@link #samples()} is a bug. */
  public static ProjectFolder sample(String name) {
    SortedMap<String, byte[]> files = new TreeMap<>();
    for (String file : sampleFiles()) {
      if (file.startsWith(name + "/")) {
        files.put(file.substring(name.length() + 1), resource(SAMPLES + file));
      }
    }
    if (files.isEmpty()) {
      throw new IllegalArgumentException("no sample " + name);
    }
    return new ProjectFolder(name, files);
  }

  private static List<String> sampleFiles() {
    return new String(resource(SAMPLES + "index.txt"), StandardCharsets.UTF_8)
        .lines()
        .filter(line -> !line.isBlank())
        .sorted()
        .toList();
  }

  private static byte[] resource(String path) {
    try (InputStream in = ProjectFolder.class.getResourceAsStream(path)) {
      if (in == null) {
        throw new IllegalStateException("not packed: " + path);
      }
      return in.readAllBytes();
    } catch (IOException e) {
      throw new UncheckedIOException(path, e);
    }
  }

  /** The folder's or the sample's own name. */
  public String name() {
    return name;
  }

  /** Names of all files, sorted. */
  public List<String> files() {
    return List.copyOf(files.keySet());
  }

  /** Whether the folder has that file. */
  public boolean has(String file) {
    return files.containsKey(file);
  }

  /** The bytes of a file, a copy; asking for one that is not there is a bug. */
  public byte[] bytes(String file) {
    byte[] bytes = files.get(file);
    if (bytes == null) {
      throw new IllegalArgumentException("no file " + file + " in " + name);
    }
    return bytes.clone();
  }

  /** The text of a file, with line feeds only and without a byte order mark. */
  public Checked<String> text(String file) {
    byte[] bytes = files.get(file);
    if (bytes == null) {
      return Checked.failed(
          Finding.error(
              "missing-file",
              Span.startOf(file),
              "the project has no file `" + file + "`",
              "write it, or copy it from a sample"));
    }
    try {
      String text = StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
      return withoutControls(file, normal(text));
    } catch (CharacterCodingException e) {
      return Checked.failed(
          Finding.error(
              "not-utf-8",
              Span.startOf(file),
              "`" + file + "` is not UTF-8 text",
              "save it as UTF-8 text"));
    }
  }

  /** The text, unless it holds signs that stand for nothing on paper. */
  private static Checked<String> withoutControls(String file, String text) {
    int line = 1;
    int column = 1;
    for (int i = 0; i < text.length(); i++, column++) {
      char sign = text.charAt(i);
      if (sign == '\n') {
        line++;
        column = 0;
      } else if (Character.isISOControl(sign) && sign != '\t') {
        return Checked.failed(
            Finding.error(
                "control-character",
                new Span(file, line, column, 1),
                "a control character, number " + (int) sign + ", stands here, which nothing prints",
                "delete it"));
      }
    }
    return Checked.of(text);
  }

  private static String normal(String text) {
    String plain = text.replace("\r\n", "\n").replace('\r', '\n');
    return plain.startsWith("\uFEFF") ? plain.substring(1) : plain;
  }

  /** The lines of a file, for showing a finding; empty where there is none. */
  public List<String> lines(String file) {
    byte[] bytes = files.get(file);
    return bytes == null
        ? List.of()
        : List.of(normal(new String(bytes, StandardCharsets.UTF_8)).split("\n", -1));
  }

  /** The line that a place is in; empty where the folder has no such line. */
  public String line(Span at) {
    List<String> lines = lines(at.file());
    return at.line() <= lines.size() ? lines.get(at.line() - 1) : "";
  }

  /** The same folder with one file more, or replaced. */
  public ProjectFolder with(String file, String text) {
    SortedMap<String, byte[]> changed = new TreeMap<>(files);
    changed.put(file, text.getBytes(StandardCharsets.UTF_8));
    return new ProjectFolder(name, changed);
  }

  /** The same folder with one file less. */
  public ProjectFolder without(String file) {
    SortedMap<String, byte[]> changed = new TreeMap<>(files);
    changed.remove(file);
    return new ProjectFolder(name, changed);
  }
}
