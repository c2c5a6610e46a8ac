package packetwright.definition.procedure;

import org.commonmark.node.Node;
import org.commonmark.node.SourceSpan;
import packetwright.text.source.Span;

/**
 * Where the Markdown parser's nodes stand in their file.
 *
 * @param file name for the places of findings
 */
record Source(String file) {
  /** The first line's share of a node. */
  Span at(Node node) {
    return node.getSourceSpans().isEmpty() ? Span.startOf(file) : at(node.getSourceSpans().get(0));
  }

  private Span at(SourceSpan span) {
    return new Span(
        file, span.getLineIndex() + 1, span.getColumnIndex() + 1, Math.max(1, span.getLength()));
  }
}
