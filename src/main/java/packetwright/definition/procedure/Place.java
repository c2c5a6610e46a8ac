package packetwright.definition.procedure;

import java.util.Set;
import org.commonmark.node.CustomNode;
import org.commonmark.parser.beta.InlineContentParser;
import org.commonmark.parser.beta.InlineContentParserFactory;
import org.commonmark.parser.beta.InlineParserState;
import org.commonmark.parser.beta.ParsedInline;
import org.commonmark.parser.beta.Position;
import org.commonmark.parser.beta.Scanner;

/**
 * A place in the prose, {@code {name}}, as the Markdown parser meets it: before emphasis is looked
 * for, so that underscores in names are left alone, and after backslashes, so that an escaped brace
 * is a brace.
 */
final class Place extends CustomNode {
  private final String content;
  private final boolean closed;

  private Place(String content, boolean closed) {
    this.content = content;
    this.closed = closed;
  }

  /** What stands between the braces. */
  String content() {
    return content;
  }

  /** Whether the closing brace stands on the same line. */
  boolean isClosed() {
    return closed;
  }

  /** Makes places out of opening braces. */
  static final class Factory implements InlineContentParserFactory {
    @Override
    public Set<Character> getTriggerCharacters() {
      return Set.of('{');
    }

    @Override
    public InlineContentParser create() {
      return Factory::parse;
    }

    private static ParsedInline parse(InlineParserState state) {
      Scanner scanner = state.scanner();
      scanner.next();
      Position start = scanner.position();
      while (scanner.hasNext() && "{}\n".indexOf(scanner.peek()) < 0) {
        scanner.next();
      }
      Position end = scanner.position();
      String content = scanner.getSource(start, end).getContent();
      return scanner.next('}')
          ? ParsedInline.of(new Place(content, true), scanner.position())
          : ParsedInline.of(new Place(content, false), start);
    }
  }
}
