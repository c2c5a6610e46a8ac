package packetwright.text.document;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import packetwright.text.source.Finding;
import packetwright.text.source.Span;

class YamlTest {
  private static Node.Mapping mapping(String text) {
    return (Node.Mapping) Yaml.read("f.yaml", text).value();
  }

  private static List<String> codes(String text) {
    return Yaml.read("f.yaml", text).findings().stream().map(Finding::code).toList();
  }

  @Test
  void keepsScalarsAsTheyAreWritten() {
    Node.Mapping read = mapping("a: 5.50\nb: 3-1/2\nc: '1' # no\nd: on\n");
    assertThat(read.text("a", "")).isEqualTo("5.50");
    assertThat(read.text("b", "")).isEqualTo("3-1/2");
    assertThat(read.text("c", "")).isEqualTo("1");
    assertThat(read.text("d", "")).isEqualTo("on");
    assertThat(read.keys()).containsExactly("a", "b", "c", "d");
  }

  @Test
  void knowsWhereEachKeyAndValueStands() {
    Node.Mapping read = mapping("x: 1\nsizes:\n  tongue: {is: a - b}\n");
    Node.Entry tongue = read.entries("sizes").get(0);
    assertThat(tongue.key().at()).isEqualTo(new Span("f.yaml", 3, 3, 6));
    assertThat(((Node.Mapping) tongue.value()).text("is"))
        .satisfies(t -> assertThat(t.at()).isEqualTo(new Span("f.yaml", 3, 16, 5)));
  }

  @Test
  void countsColumnsAsEditorsDoPastAnEmoji() {
    assertThat(mapping("{\"\uD83D\uDE00\": 1, b: 2}").text("b"))
        .satisfies(t -> assertThat(t.at().column()).isEqualTo(14));
  }

  @Test
  void placesABlockOfAnotherFileWhereItStandsThere() {
    Node read = Yaml.read("procedure.md", "- a\n- b\n", 11, 3).value();
    assertThat(read.asItems().get(1).at()).isEqualTo(new Span("procedure.md", 12, 5, 1));
  }

  @Test
  void readsALineOfWindowsAndAByteOrderMark() {
    assertThat(mapping("\uFEFFa: 1\r\nb: 2\r\n").text("b"))
        .satisfies(t -> assertThat(t.at()).isEqualTo(new Span("f.yaml", 2, 4, 1)));
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "\n\n", "# only a comment\n", "---\n", "~"})
  void reportsAnEmptyFile(String text) {
    assertThat(codes(text)).containsExactly("empty-file");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"a: b: c", "a: [1, 2", "\ta: 1", "a: \"open", "a: 1\n b: 2", "}", "a: \u0007"})
  void reportsASyntaxError(String text) {
    assertThat(codes(text)).containsExactly("yaml-syntax");
  }

  @Test
  void reportsADuplicateKeyWithItsFirstLine() {
    assertThat(Yaml.read("f.yaml", "a: 1\nb: 2\na: 3\n").findings())
        .singleElement()
        .satisfies(f -> assertThat(f.message()).contains("first in line 1"))
        .satisfies(f -> assertThat(f.at()).isEqualTo(new Span("f.yaml", 3, 1, 1)));
  }

  @Test
  void readsNoAliasesAnchorsTagsOrSecondDocuments() {
    assertThat(codes("a: &x 1\nb: *x\nc: !!str 3\n"))
        .containsExactly("yaml-feature", "yaml-feature", "yaml-feature");
    assertThat(codes("a: 1\n---\nb: 2\n")).containsExactly("yaml-feature");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "a: {is: max(a, b)}",
        "a: {is: max(a, b), tolerance: 1}",
        "a: [max(a, b), c, d]",
        "a: [c, max(a, min(b, c)), d]",
      })
  void reportsAFormulaThatACommaSplitsOnce(String text) {
    assertThat(Yaml.read("f.yaml", text).findings())
        .singleElement()
        .satisfies(f -> assertThat(f.code()).isEqualTo("split-formula"))
        .satisfies(f -> assertThat(f.hint()).contains("\"max(a, "));
  }

  @Test
  void leavesQuotedFormulasAlone() {
    assertThat(codes("a: [\"max(a, b)\", c]\nb: {is: 'max(a, b)'}\nc: max(a, b)\n")).isEmpty();
  }

  @Test
  @Timeout(value = 3, unit = TimeUnit.SECONDS)
  void staysWithinBounds() {
    assertThat(codes("[".repeat(100_000))).containsExactly("nested-too-deep");
    assertThat(codes("{a: ".repeat(100_000))).containsExactly("nested-too-deep");
    assertThat(codes("a".repeat(Yaml.MAX_LENGTH + 1))).containsExactly("file-too-large");
    StringBuilder keys = new StringBuilder();
    for (int i = 0; i < 80_000; i++) {
      keys.append('k').append(i).append(": 1\n");
    }
    assertThat(codes(keys.toString())).isEmpty();
  }
}
