package packetwright.text.formula;

import packetwright.text.measure.Quantity;
import packetwright.text.source.Finding;
import packetwright.text.source.Findings;
import packetwright.text.source.Located;
import packetwright.text.source.Span;

/**
 * Says what is wrong with a formula, under the very characters that are wrong.
 *
 * @param formula as written
 * @param findings where it is collected
 */
record Report(Located<String> formula, Findings findings) {
  void add(Finding finding) {
    findings.add(finding);
  }

  Span span(Expression expression) {
    return formula.at().part(expression.start(), expression.end() - expression.start());
  }

  Span span(Token sign) {
    return formula.at().part(sign.start(), sign.text().length());
  }

  /** An expression as its author wrote it, in quotes. */
  String quoted(Expression expression) {
    return "`" + source(expression) + "`";
  }

  /** An expression as its author wrote it. */
  String source(Expression expression) {
    return formula.value().substring(expression.start(), expression.end());
  }

  /** {@code `board_width` is a length}. */
  String said(Expression expression, Quantity amount) {
    return quoted(expression) + " is " + amount.dimension().phrase();
  }
}
