package packetwright.text.document;

import java.util.ArrayList;
import java.util.List;
import packetwright.text.source.Finding;
import packetwright.text.source.Findings;
import packetwright.text.source.Span;

/**
 * Formulas that a comma has split: {@code [max(a, b), c]} is three items to YAML. They are put
 * together again, so that the one mistake gives one finding.
 */
final class SplitText {
  private SplitText() {}

  static List<Node> join(List<Node> items, Findings findings) {
    List<Node> joined = new ArrayList<>();
    for (int i = 0; i < items.size(); i++) {
      Node item = items.get(i);
      StringBuilder text = new StringBuilder(plain(item));
      int last = i;
      while (open(text) > 0 && last + 1 < items.size() && !plain(items.get(last + 1)).isEmpty()) {
        last++;
        text.append(", ").append(plain(items.get(last)));
      }
      if (last > i && open(text) == 0) {
        joined.add(report(text.toString(), item.at(), items.get(last).at(), findings));
        i = last;
      } else {
        joined.add(item);
      }
    }
    return joined;
  }

  static List<Node.Entry> joinEntries(List<Node.Entry> entries, Findings findings) {
    List<Node.Entry> joined = new ArrayList<>();
    for (int i = 0; i < entries.size(); i++) {
      Node.Entry entry = entries.get(i);
      StringBuilder text = new StringBuilder(plain(entry.value()));
      int last = i;
      while (open(text) > 0 && last + 1 < entries.size() && isLoneKey(entries.get(last + 1))) {
        last++;
        text.append(", ").append(entries.get(last).key().value());
      }
      if (last > i && open(text) == 0) {
        Node whole =
            report(text.toString(), entry.value().at(), entries.get(last).key().at(), findings);
        joined.add(new Node.Entry(entry.key(), whole));
        i = last;
      } else {
        joined.add(entry);
      }
    }
    return joined;
  }

  /** A key without a value in braces: what a comma in a text leaves behind. */
  private static boolean isLoneKey(Node.Entry entry) {
    return entry.value() instanceof Node.Scalar scalar && scalar.isEmpty();
  }

  private static String plain(Node node) {
    return node instanceof Node.Scalar scalar && !scalar.quoted() ? scalar.text() : "";
  }

  private static int open(CharSequence text) {
    return text.chars().map(c -> c == '(' ? 1 : c == ')' ? -1 : 0).sum();
  }

  private static Node report(String text, Span first, Span last, Findings findings) {
    boolean sameLine = first.line() == last.line();
    Span at = sameLine ? first.part(0, last.column() + last.length() - first.column()) : first;
    findings.add(
        Finding.error(
            "split-formula",
            at,
            "the comma splits `" + text + "` in two, because it stands in brackets or braces",
            "put it in quotes: \"" + text + "\""));
    return new Node.Scalar(text, at, true);
  }
}
