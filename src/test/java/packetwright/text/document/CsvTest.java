package packetwright.text.document;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import packetwright.text.source.Checked;
import packetwright.text.source.Finding;
import packetwright.text.source.Located;

class CsvTest {
  private static Checked<Csv.Table> read(String text) {
    return Csv.read("t.csv", text);
  }

  private static List<String> texts(List<Located<String>> cells) {
    return cells.stream().map(Located::value).toList();
  }

  @Test
  void keepsCommasAndDoubledQuotesInsideQuotes() {
    Csv.Table table = read("bird,note\nwren,\"small, \"\"brown\"\"\"\n").value();
    assertThat(texts(table.header())).containsExactly("bird", "note");
    assertThat(texts(table.rows().get(0))).containsExactly("wren", "small, \"brown\"");
  }

  @Test
  void stripsSpacesOutsideQuotesAndKeepsThoseInside() {
    assertThat(texts(read("a,b\n  x y ,\" z\"\n").value().rows().get(0)))
        .containsExactly("x y", " z");
  }

  @Test
  void placesEachCellWhereItsTextStands() {
    Csv.Table table = read("bird,floor,hole\n\nwren,  4,1-1/4\n").value();
    assertThat(table.rows().get(0))
        .extracting(cell -> cell.at().line() + ":" + cell.at().column() + "+" + cell.at().length())
        .containsExactly("3:1+4", "3:8+1", "3:10+5");
  }

  @Test
  void countsAnEmptyLastCell() {
    assertThat(texts(read("a,b\nx,\n").value().rows().get(0))).containsExactly("x", "");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '\'',
      value = {
        "'x,1 1/2\"' | 2 | 8",
        "'\"x,1'     | 2 | 1",
        "'\"x\" y,1' | 2 | 4",
        "'x'         | 2 | 1",
        "'x,1,2'     | 2 | 1",
      })
  void refusesWhereARowGoesWrong(String row, int line, int column) {
    Checked<Csv.Table> read = read("a,b\n" + row + "\ny,2\n");
    assertThat(read.findings())
        .singleElement()
        .satisfies(
            finding -> {
              assertThat(finding.code()).isEqualTo("csv-syntax");
              assertThat(finding.at().line()).isEqualTo(line);
              assertThat(finding.at().column()).isEqualTo(column);
            });
    assertThat(read.value().rows()).as("the row after it").hasSize(1);
  }

  @Test
  void refusesAFileWithNothingInIt() {
    assertThat(read("\n \n").findings()).extracting(Finding::code).containsExactly("empty-file");
  }

  @Test
  void isBoundedInRowsAndColumns() {
    assertThat(read("a\n" + "x\n".repeat(1000)).isGood()).isTrue();
    assertThat(read("a\n" + "x\n".repeat(1001)).findings())
        .extracting(Finding::code)
        .containsExactly("file-too-large");
    assertThat(read("a,".repeat(39) + "a\n").isGood()).isTrue();
    assertThat(read("a,".repeat(40) + "a\n").findings())
        .extracting(Finding::code)
        .containsExactly("file-too-large");
  }
}
