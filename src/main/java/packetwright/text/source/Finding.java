package packetwright.text.source;

/**
 * One thing wrong with the input, said so that its author can put it right.
 *
 * @param code stable name in kebab case; one golden case bears the same name
 * @param severity whether it stops the packet
 * @param at the wrong text
 * @param message one sentence: what was found, quoted as written, and what is allowed
 * @param hint one imperative phrase that would work if obeyed, without "try:"; may be empty
 * @param step the step it concerns, as {@code "9, Trim the front end"}; empty when none
 */
public record Finding(
    String code, Severity severity, Span at, String message, String hint, String step) {

  /** A finding that stops the packet. */
  public static Finding error(String code, Span at, String message, String hint) {
    return new Finding(code, Severity.ERROR, at, message, hint, "");
  }

  /** A finding that is printed and does not stop the packet. */
  public static Finding warning(String code, Span at, String message, String hint) {
    return new Finding(code, Severity.WARNING, at, message, hint, "");
  }

  /** A finding of something that may well be meant. */
  public static Finding note(String code, Span at, String message, String hint) {
    return new Finding(code, Severity.NOTE, at, message, hint, "");
  }

  /** The same finding, said of a step. */
  public Finding inStep(String numberAndTitle) {
    return new Finding(code, severity, at, message, hint, numberAndTitle);
  }

  /** The same finding in other words. */
  public Finding saying(String otherMessage) {
    return new Finding(code, severity, at, otherMessage, hint, step);
  }

  /** The same finding with another hint. */
  public Finding hinting(String otherHint) {
    return new Finding(code, severity, at, message, otherHint, step);
  }

  /** Whether it stops the packet. */
  public boolean isError() {
    return severity == Severity.ERROR;
  }
}
