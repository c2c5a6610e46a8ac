package packetwright.text.document;

import java.util.Iterator;
import java.util.Optional;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.api.lowlevel.Parse;
import org.snakeyaml.engine.v2.events.Event;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;
import org.snakeyaml.engine.v2.exceptions.ReaderException;
import packetwright.text.source.Checked;
import packetwright.text.source.Finding;
import packetwright.text.source.Findings;
import packetwright.text.source.Span;

/** Reads YAML 1.2, and JSON as part of it, within bounds. */
public final class Yaml {
  /** Longest document read, in UTF-16 code units. */
  public static final int MAX_LENGTH = 1_000_000;

  private Yaml() {}

  /** A whole file. */
  public static Checked<Node> read(String file, String text) {
    return read(file, text, 1, 1);
  }

  /**
   * A part of a file, for instance a fenced block.
   *
   * @param firstLine line of the file that the text begins on, from 1
   * @param firstColumn column of the file that its lines begin at, from 1
   */
  public static Checked<Node> read(String file, String text, int firstLine, int firstColumn) {
    String plain = text.replace("\r\n", "\n").replace('\r', '\n');
    if (plain.startsWith("\uFEFF")) {
      plain = plain.substring(1);
    }
    Places places = new Places(file, plain, firstLine, firstColumn);
    if (plain.length() > MAX_LENGTH) {
      return Checked.failed(
          Finding.error(
              "file-too-large",
              places.start(),
              "`" + file + "` has " + plain.length() + " characters; at most " + MAX_LENGTH,
              "move some of it to another project"));
    }
    try {
      Iterator<Event> events =
          new Parse(LoadSettings.builder().setCodePointLimit(MAX_LENGTH + 1).build())
              .parseString(plain)
              .iterator();
      Findings findings = new Findings();
      return findings.checked(new Composer(events, places, findings).document());
    } catch (MarkedYamlEngineException e) {
      return Checked.failed(syntax(e, places));
    } catch (ReaderException e) {
      return Checked.failed(
          Finding.error(
              "yaml-syntax",
              places.start(),
              "`" + file + "` holds a character that no text has (code " + e.getCodePoint() + ")",
              "delete the character, or save the file as UTF-8 text"));
    }
  }

  private static Finding syntax(MarkedYamlEngineException e, Places places) {
    Span at = mark(e).map(places::at).orElseGet(places::start);
    String line = e.getProblemMark().map(Mark::getLine).map(places::line).orElse("");
    String context = e.getContext() == null ? "" : " " + e.getContext();
    return Finding.error(
        "yaml-syntax", at, "this cannot be read" + context + ": " + e.getProblem(), hint(e, line));
  }

  /** An unclosed bracket or quote is mended where it opens, not where the parser gives up. */
  private static Optional<Mark> mark(MarkedYamlEngineException e) {
    String context = String.valueOf(e.getContext());
    boolean opens = context.contains("flow") || context.contains("quoted");
    return opens ? e.getContextMark() : e.getProblemMark().or(e::getContextMark);
  }

  private static String hint(MarkedYamlEngineException e, String line) {
    if (line.contains("\t")) {
      return "indent with spaces, not with tabs";
    }
    String problem = String.valueOf(e.getProblem());
    if (problem.contains("mapping values are not allowed")) {
      return "put a text that holds a colon in quotes, and check the indentation";
    }
    return "check the indentation, the closing brackets and the closing quotes here and above";
  }
}
