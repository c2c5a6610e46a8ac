package packetwright.wood.caution;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * A part of the developers' page that is printed from the code, between two marks.
 *
 * @param name that the marks bear
 */
record Printed(String name) {
  private static final Path PAGE = Path.of("DEVELOPERS.md");

  static Printed in(String name) {
    return new Printed(name);
  }

  private String mark(String end) {
    return "<!-- " + name + ": " + end + " -->\n";
  }

  /** Compares, or prints again and fails where {@code golden.update} is set. */
  void holds(String wanted) throws IOException {
    String text = Files.readString(PAGE);
    assertThat(text).contains(mark("begin"), mark("end"));
    int from = text.indexOf(mark("begin")) + mark("begin").length();
    int to = text.indexOf(mark("end"));
    boolean isUpdate = Boolean.getBoolean("golden.update");
    if (isUpdate) {
      Files.writeString(PAGE, text.substring(0, from) + wanted + text.substring(to));
    }
    assertThat(text.substring(from, to))
        .as("run with -Dgolden.update=true to print it again")
        .isEqualTo(wanted);
    assertThat(isUpdate).as("it was printed again").isFalse();
  }
}
