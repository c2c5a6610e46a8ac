package packetwright.definition.project;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.NotDirectoryException;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import packetwright.text.source.Checked;
import packetwright.text.source.Finding;
import packetwright.text.source.Span;

class ProjectFolderTest {
  @TempDir Path temporary;

  private Path write(String file, String text) throws IOException {
    Path path = temporary.resolve("box").resolve(file);
    Files.createDirectories(path.getParent());
    return Files.writeString(path, text);
  }

  private Checked<ProjectFolder> read() throws IOException {
    return ProjectFolder.read(temporary.resolve("box"));
  }

  @Test
  void readsFilesInFoldersAndSkipsHiddenOnes() throws IOException {
    write("project.yaml", "a: 1\r\nb: 2\r\n");
    write("pictures/lid.svg", "<svg/>");
    write(".git/config", "x");
    ProjectFolder folder = read().value();
    assertThat(folder.name()).isEqualTo("box");
    assertThat(folder.files()).containsExactly("pictures/lid.svg", "project.yaml");
    assertThat(folder.text("project.yaml").value()).isEqualTo("a: 1\nb: 2\n");
    assertThat(folder.line(new Span("project.yaml", 2, 1, 1))).isEqualTo("b: 2");
    assertThat(folder.line(new Span("no.yaml", 9, 1, 1))).isEmpty();
  }

  @Test
  void followsNoLinkOutOfTheFolder() throws IOException {
    write("project.yaml", "a: 1\n");
    Files.writeString(temporary.resolve("secret.txt"), "secret");
    Path box = temporary.resolve("box");
    Files.createSymbolicLink(box.resolve("out.txt"), temporary.resolve("secret.txt"));
    Files.createSymbolicLink(box.resolve("ring"), box);
    Files.createSymbolicLink(box.resolve("inside.yaml"), box.resolve("project.yaml"));
    assertThat(read().findings())
        .allSatisfy(f -> assertThat(f.code()).isEqualTo("link-outside"))
        .extracting(f -> f.at().file())
        .containsExactly("out.txt", "ring");
  }

  @Test
  void refusesAFileTooLargeAndTooManyFiles() throws IOException {
    Files.write(write("big.svg", ""), new byte[8_000_001]);
    for (int i = 0; i < 501; i++) {
      write("f" + i + ".txt", "");
    }
    assertThat(read().findings())
        .extracting(Finding::code)
        .containsExactly("file-too-large", "too-many-files");
  }

  @Test
  void refusesTextThatIsNotUtf8() throws IOException {
    Files.write(write("project.yaml", ""), "a: é".getBytes(StandardCharsets.ISO_8859_1));
    assertThat(read().value().text("project.yaml").findings())
        .extracting(Finding::code)
        .containsExactly("not-utf-8");
  }

  @Test
  void leavesAMissingFolderToTheCaller() {
    assertThatThrownBy(this::read).isInstanceOf(NoSuchFileException.class);
    assertThatThrownBy(() -> ProjectFolder.read(Files.createFile(temporary.resolve("file"))))
        .isInstanceOf(NotDirectoryException.class);
  }

  @Test
  void listsEverySampleFileInTheIndex() throws IOException {
    Path projects = Path.of("src/main/projects");
    List<String> index = Files.readAllLines(projects.resolve("index.txt"));
    try (Stream<Path> files = Files.walk(projects)) {
      assertThat(index)
          .containsExactlyElementsOf(
              files
                  .filter(Files::isRegularFile)
                  .map(f -> projects.relativize(f).toString().replace('\\', '/'))
                  .filter(f -> !f.equals("index.txt"))
                  .sorted()
                  .toList());
    }
  }

  @Test
  void findsTheSampleByName() {
    assertThat(ProjectFolder.samples()).contains("sliding-lid-box");
    assertThat(ProjectFolder.sample("sliding-lid-box").files())
        .containsExactly("procedure.md", "project.yaml", "quiz.yaml", "shop.yaml");
  }

  @Test
  void refusesControlCharactersWhereTheyStand() {
    ProjectFolder folder =
        ProjectFolder.sample("sliding-lid-box").with("procedure.md", "One\ntwo\u0007\n");
    assertThat(folder.text("procedure.md").findings())
        .singleElement()
        .satisfies(
            finding -> {
              assertThat(finding.code()).isEqualTo("control-character");
              assertThat(finding.at().line()).isEqualTo(2);
              assertThat(finding.at().column()).isEqualTo(4);
            });
  }
}
