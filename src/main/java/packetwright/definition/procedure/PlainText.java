package packetwright.definition.procedure;

import org.commonmark.node.AbstractVisitor;
import org.commonmark.node.Code;
import org.commonmark.node.CustomNode;
import org.commonmark.node.Node;
import org.commonmark.node.SoftLineBreak;
import org.commonmark.node.Text;

/** A heading's words without emphasis. */
final class PlainText extends AbstractVisitor {
  private final StringBuilder words = new StringBuilder();

  private PlainText() {}

  static String of(Node heading) {
    PlainText text = new PlainText();
    heading.accept(text);
    return text.words.toString().strip();
  }

  @Override
  public void visit(Text text) {
    words.append(text.getLiteral());
  }

  @Override
  public void visit(Code code) {
    words.append(code.getLiteral());
  }

  @Override
  public void visit(SoftLineBreak softLineBreak) {
    words.append(' ');
  }

  /**
   * A place in a heading stays as it is written: a title that changed would change the step's id.
   */
  @Override
  public void visit(CustomNode node) {
    if (node instanceof Place place) {
      words.append('{').append(place.content()).append('}');
    }
  }
}
