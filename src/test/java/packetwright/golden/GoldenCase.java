package packetwright.golden;

import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;
import packetwright.definition.project.ProjectFolder;
import packetwright.text.document.Node;
import packetwright.text.document.Yaml;
import packetwright.text.measure.Quantity;
import packetwright.text.measure.QuantityReader;
import packetwright.text.measure.Unit;
import packetwright.text.source.Checked;
import packetwright.text.source.Located;
import packetwright.text.source.Span;

/**
 * One folder of golden cases: edits of a sample, and the findings that they must give.
 *
 * <p>{@code case.yaml} has a list {@code edit}; each entry names a {@code file} and one of {@code
 * replace} with {@code with}; {@code write}, with {@code times}, {@code charset} and {@code files},
 * the number of such files, whose name then holds a format; {@code delete}; {@code link}. {@code
 * sample} names the sample, {@code options} those that are on, {@code set} what is substituted.
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

  List<String> options() {
    return description.texts("options").stream().map(t -> t.value()).toList();
  }

  /** Values for givens, each written {@code name=value}. */
  Map<String, Located<Quantity>> substitution() {
    Map<String, Located<Quantity>> values = new LinkedHashMap<>();
    for (Located<String> set : description.texts("set")) {
      String[] parts = set.value().split("=", 2);
      Located<String> value = new Located<>(parts[1], new Span("--set", 1, 1, parts[1].length()));
      values.put(
          parts[0],
          QuantityReader.read(value, Unit.INCH).map(q -> new Located<>(q, value.at())).value());
    }
    return values;
  }

  /** The edited sample, as a folder on disk is read. */
  Checked<ProjectFolder> project(Path work) throws IOException {
    ProjectFolder sample = ProjectFolder.sample(description.text("sample", SAMPLE));
    SortedMap<String, byte[]> files = new TreeMap<>();
    for (String file : sample.files()) {
      files.put(file, sample.bytes(file));
    }
    Path root = Files.createDirectories(work.resolve(sample.name()));
    for (Node edit : description.items("edit")) {
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
