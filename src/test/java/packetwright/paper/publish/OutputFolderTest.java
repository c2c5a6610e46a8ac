package packetwright.paper.publish;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
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
}
