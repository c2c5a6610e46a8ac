package packetwright.paper.packet;

/**
 * What stands at the head of every page.
 *
 * @param title of the project
 * @param course as printed; may be empty
 * @param term label of this run; may be empty
 * @param shop as printed
 */
public record Heading(String title, String course, String term, String shop) {}
