package packetwright.paper.pdf;

import java.time.LocalDate;

/**
 * What a PDF says of itself. Title, subject, description and language stand in the HTML.
 *
 * @param dated creation and modification date; comes from the inputs, never from a clock
 * @param id fixed number from the inputs, from which the file identifier is reckoned
 */
public record PdfInfo(LocalDate dated, long id) {}
