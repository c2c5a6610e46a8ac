package packetwright.paper.publish;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class OutputFolderTest {
  @TempDir Path temporary;

  private static Map<String, byte[]> file(String name, String text) {
    return Map.of(name, text.getBytes(UTF_8));
  }

  @Test
  void replacesTheFormerOutputWhole() throws IOException {
    OutputFolder output = new OutputFolder(temporary.resolve("packet"));
    output.replace(file("old/a.txt", "old"));
    output.replace(file("b.txt", "new"));
    assertThat(temporary.resolve("packet/b.txt")).hasContent("new");
    assertThat(temporary.resolve("packet/old")).doesNotExist();
    assertThat(temporary).isDirectoryContaining(p -> p.endsWith("packet"));
    try (var files = Files.list(temporary)) {
      assertThat(files).hasSize(1);
    }
  }

  @Test
  void putsBackWhatACutOffRunHadSetAside() throws IOException {
    Path folder = temporary.resolve("packet");
    new OutputFolder(folder).replace(file("a.txt", "former"));
    Files.move(folder, temporary.resolve("packet.previous"));
    OutputFolder output = new OutputFolder(folder);
    assertThatThrownBy(() -> output.replace(file("../out.txt", "x")))
        .isInstanceOf(IllegalArgumentException.class);
    assertThat(folder.resolve("a.txt")).hasContent("former");
  }

  @Test
  void touchesNothingThatItDidNotMake() throws IOException {
    Path folder = Files.createDirectory(temporary.resolve("desktop"));
    Files.writeString(folder.resolve("letter.txt"), "mine");
    Path plain = Files.writeString(temporary.resolve("file"), "mine");
    Path aside = Files.createDirectory(temporary.resolve("packet.previous"));
    Files.writeString(aside.resolve("letter.txt"), "mine");
    for (Path target : List.of(folder, plain, temporary.resolve("packet"))) {
      assertThatThrownBy(() -> new OutputFolder(target).replace(file("a.txt", "new")))
          .isInstanceOf(OutputFolder.TakenException.class)
          .hasMessageContaining("was not made by packetwright");
    }
    assertThat(folder.resolve("letter.txt")).hasContent("mine");
    assertThat(plain).hasContent("mine");
    assertThat(aside.resolve("letter.txt")).hasContent("mine");
    assertThat(temporary.resolve("packet")).doesNotExist();
    assertThat(temporary.resolve("desktop.next")).doesNotExist();
  }

  @Test
  void sparesAFolderOfOursThatSomebodyPutAFileIn() throws IOException {
    Path folder = temporary.resolve("packet");
    OutputFolder output = new OutputFolder(folder);
    output.replace(file("a.txt", "old"));
    Files.writeString(folder.resolve("notes.txt"), "mine");
    assertThatThrownBy(() -> output.replace(file("a.txt", "new")))
        .isInstanceOf(OutputFolder.TakenException.class)
        .hasMessageContaining("notes.txt");
    assertThat(folder.resolve("a.txt")).hasContent("old");
  }

  @Test
  void fillsAnEmptyFolder() throws IOException {
    Path folder = Files.createDirectory(temporary.resolve("empty"));
    new OutputFolder(folder).replace(file("a.txt", "new"));
    assertThat(folder.resolve("a.txt")).hasContent("new");
  }
}
