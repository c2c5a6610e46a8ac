package packetwright.text.formula;

import packetwright.text.measure.Quantity;
import packetwright.text.source.Finding;
import packetwright.text.source.Findings;
import packetwright.text.source.Located;

/**
 * Says what is wrong with a formula, under the very characters that are wrong.
 *
 * @param formula as written
 * @param findings where it is collected
 */
record Report(Located<String> formula, Findings findings) {
  void at(Expression expression, String code, String message, String hint) {
    at(expression.start(), expression.end(), code, message, hint);
  }

  void at(Token sign, String code, String message, String hint) {
    at(sign.start(), sign.end(), code, message, hint);
  }

  private void at(int start, int end, String code, String message, String hint) {
    findings.add(Finding.error(code, formula.at().part(start, end - start), message, hint));
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
