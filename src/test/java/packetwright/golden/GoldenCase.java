package packetwright.golden;

import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;
import packetwright.definition.project.ProjectFolder;
import packetwright.plan.lesson.Lessons.Request;
import packetwright.text.document.Node;
import packetwright.text.document.Yaml;
import packetwright.text.source.Checked;
import packetwright.text.source.Located;

/**
 * One folder of golden cases: edits of a sample, and the findings that they must give. The folder
 * bears the code that it is about, with a dot and a word where a code has several cases.
 *
 * <p>{@code case.yaml} has a list {@code edit}; each entry names a {@code file} and one of {@code
 * replace} with {@code with}; {@code write}, with {@code times}, {@code charset} and {@code files},
 * the number of such files, whose name then holds a format; {@code delete}; {@code link}. {@code
 * sample} names the sample, {@code options} those that are on, {@code set} what is substituted,
 * {@code shop} the shop profile. {@code mended} lists more edits, after which nothing is found.
 */
record GoldenCase(Path folder, Node.Mapping description) {
  private static final String SAMPLE = "sliding-lid-box";

  static GoldenCase read(Path folder) throws IOException {
    Path file = folder.resolve("case.yaml");
    Checked<Node> read = Yaml.read(file.toString(), Files.readString(file));
    return new GoldenCase(folder, (Node.Mapping) read.value());
  }

  String name() {
    return folder.getFileName().toString();
  }

  Path expected() {
    return folder.resolve("expected").resolve("findings.txt");
  }

  /** Files that belong to no case. */
  List<Path> orphans() throws IOException {
    try (Stream<Path> files = Files.walk(folder)) {
      return files
          .filter(Files::isRegularFile)
          .filter(f -> !f.equals(expected()) && !f.equals(folder.resolve("case.yaml")))
          .toList();
    }
  }

  /** The code that it is about: its name, up to a dot. */
  String code() {
    return name().split("\\.", 2)[0];
  }

  /** Whether it says how the mistake is mended. */
  boolean isMended() {
    return !description.items("mended").isEmpty();
  }

  /** What is asked for beside the project. */
  Request request() {
    return new Request(
        description.text("shop", ""),
        texts("set"),
        Set.copyOf(texts("options")),
        description.text("term", ""));
  }

  private List<String> texts(String key) {
    return description.texts(key).stream().map(Located::value).toList();
  }

  /** The edited sample, as a folder on disk is read, and mended if so wished. */
  Checked<ProjectFolder> project(Path work, boolean mended) throws IOException {
    ProjectFolder sample = ProjectFolder.sample(description.text("sample", SAMPLE));
    SortedMap<String, byte[]> files = new TreeMap<>();
    for (String file : sample.files()) {
      files.put(file, sample.bytes(file));
    }
    Path root = Files.createDirectories(work.resolve(sample.name()));
    for (Node edit : description.items("edit")) {
      edit((Node.Mapping) edit, files, root);
    }
    for (Node edit : mended ? description.items("mended") : List.<Node>of()) {
      edit((Node.Mapping) edit, files, root);
    }
    for (var file : files.entrySet()) {
      Path path = root.resolve(file.getKey());
      Files.createDirectories(Objects.requireNonNull(path.getParent()));
      Files.write(path, file.getValue());
    }
    return ProjectFolder.read(root);
  }

  private void edit(Node.Mapping edit, SortedMap<String, byte[]> files, Path root)
      throws IOException {
    String file = edit.text("file", "project.yaml");
    if (edit.flag("delete")) {
      files.remove(file);
    } else if (edit.get("link") != null) {
      Files.createSymbolicLink(root.resolve(file), Path.of(edit.text("link", "")));
    } else if (edit.get("write") != null) {
      Charset charset = Charset.forName(edit.text("charset", "UTF-8"));
      String text = edit.text("write", "").repeat(Integer.parseInt(edit.text("times", "1")));
      for (int i = 0; i < edit.whole("files", 1); i++) {
        files.put(String.format(Locale.ROOT, file, i), text.getBytes(charset));
      }
    } else {
      String old = edit.text("replace", "");
      String text = new String(files.get(file), StandardCharsets.UTF_8);
      if (old.isEmpty() || !text.contains(old)) {
        throw new IllegalArgumentException(name() + ": " + file + " does not hold `" + old + "`");
      }
      files.put(file, text.replace(old, edit.text("with", "")).getBytes(StandardCharsets.UTF_8));
    }
  }
}
