package packetwright.paper.packet;

import java.util.List;
import packetwright.text.words.Phrase;

/**
 * A paragraph, or a list, of running text with its sizes filled in.
 *
 * @param text of a paragraph; empty for a list
 * @param numbered whether the items of a list are numbered
 * @param items of a list; empty for a paragraph
 */
public record Prose(Phrase text, boolean numbered, List<List<Prose>> items) {
  /** Keeps its own copy. */
  public Prose {
    items = items.stream().map(List::copyOf).toList();
  }

  /** A paragraph. */
  public static Prose paragraph(Phrase text) {
    return new Prose(text, false, List.of());
  }

  /** A list. */
  public static Prose list(boolean numbered, List<List<Prose>> items) {
    return new Prose(new Phrase(List.of()), numbered, items);
  }
}
