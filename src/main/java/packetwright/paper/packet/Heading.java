package packetwright.paper.packet;

import java.util.List;
import packetwright.text.words.Phrase;

/**
 * What stands at the head of the documents.
 *
 * @param title of the project
 * @param course as printed; may be empty
 * @param term label of this run; may be empty
 * @param shop as printed
 * @param powered whether anything is done at a machine with a switch
 * @param options that are on
 */
public record Heading(
    String title, String course, String term, String shop, boolean powered, List<Chosen> options) {
  /** Keeps its own copy. */
  public Heading {
    options = List.copyOf(options);
  }

  /**
   * An option that is on.
   *
   * @param name as printed
   * @param about what it does
   */
  public record Chosen(Phrase name, Phrase about) {}
}
