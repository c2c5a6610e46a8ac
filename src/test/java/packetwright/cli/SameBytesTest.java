package packetwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Two runs in two virtual machines, in different places of the world, print the same packet. */
class SameBytesTest {
  @TempDir Path temporary;

  private Path made(String name, String... place) throws IOException, InterruptedException {
    Path out = temporary.resolve(name);
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.addAll(List.of(place));
    command.addAll(
        List.of(
            "-cp",
            System.getProperty("java.class.path"),
            "packetwright.cli.Main",
            "make",
            "sliding-lid-box",
            "--term",
            "2027 spring",
            "--out",
            out.toString()));
    Process process =
        new ProcessBuilder(command)
            .redirectErrorStream(true)
            .redirectOutput(temporary.resolve(name + ".log").toFile())
            .start();
    assertThat(process.waitFor()).as(Files.readString(temporary.resolve(name + ".log"))).isZero();
    return out;
  }

  @Test
  void samePacketEverywhere() throws IOException, InterruptedException {
    Path here = made("here", "-Duser.language=en", "-Duser.country=US", "-Duser.timezone=UTC");
    Path there =
        made(
            "there",
            "-Duser.language=ar",
            "-Duser.country=EG",
            "-Duser.timezone=Asia/Kathmandu",
            "-Dfile.encoding=ISO-8859-1");
    List<Path> files;
    try (Stream<Path> all = Files.walk(here)) {
      files = all.filter(Files::isRegularFile).map(here::relativize).sorted().toList();
    }
    assertThat(files).as("files made").hasSizeGreaterThan(5);
    for (Path file : files) {
      assertThat(there.resolve(file)).hasSameBinaryContentAs(here.resolve(file));
    }
  }
}
