package packetwright.paper.pdf;

import java.io.ByteArrayInputStream;
import java.util.List;
import org.verapdf.gf.foundry.VeraGreenfieldFoundryProvider;
import org.verapdf.pdfa.Foundries;
import org.verapdf.pdfa.PDFAParser;
import org.verapdf.pdfa.PDFAValidator;
import org.verapdf.pdfa.flavours.PDFAFlavour;

/** Asks veraPDF which clauses of a standard a file breaks. */
public final class VeraPdf {
  private VeraPdf() {}

  /** Failed checks, a line each; flavour {@code ua1} or {@code 2a}. */
  public static List<String> failures(byte[] pdf, String flavour) throws Exception {
    VeraGreenfieldFoundryProvider.initialise();
    PDFAFlavour standard = PDFAFlavour.fromString(flavour);
    try (PDFAParser parser =
            Foundries.defaultInstance().createParser(new ByteArrayInputStream(pdf), standard);
        PDFAValidator validator =
            Foundries.defaultInstance().createValidator(standard, 100, false, false, false)) {
      return validator.validate(parser).getTestAssertions().stream()
          .map(a -> a.getRuleId().getClause() + "-" + a.getRuleId().getTestNumber() + " " + a)
          .toList();
    }
  }
}
