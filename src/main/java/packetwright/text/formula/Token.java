package packetwright.text.formula;

import packetwright.text.measure.Rational;

/**
 * A number, word or sign of a formula.
 *
 * @param text as written
 * @param start offset of its first character
 * @param number its value; zero for words and signs
 */
record Token(Kind kind, String text, int start, Rational number) {
  enum Kind {
    NUMBER,
    WORD,
    SIGN,
    END
  }

  int end() {
    return start + text.length();
  }

  boolean is(String word) {
    return kind != Kind.NUMBER && text.equals(word);
  }

  /** Whether it is written {@code 3/4}, which after a division sign can be read two ways. */
  boolean isFraction() {
    return kind == Kind.NUMBER && text.matches("\\d+/\\d+");
  }
}
