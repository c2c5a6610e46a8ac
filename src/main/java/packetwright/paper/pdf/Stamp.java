package packetwright.paper.pdf;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Calendar;
import java.util.GregorianCalendar;
import java.util.regex.Pattern;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.apache.pdfbox.pdmodel.common.PDMetadata;

/** Replaces everything that the engine took from the clock by what the inputs say. */
final class Stamp {
  private static final Pattern CREATED = Pattern.compile("<xmp:CreateDate>[^<]*</xmp:CreateDate>");

  private Stamp() {}

  static void apply(PDDocument document, PdfInfo info) throws IOException {
    Calendar date = GregorianCalendar.from(info.dated().atStartOfDay(ZoneOffset.UTC));
    PDDocumentInformation properties = document.getDocumentInformation();
    properties.setCreationDate(date);
    properties.setModificationDate(date);
    document.setDocumentId(info.id());
    PDMetadata metadata = document.getDocumentCatalog().getMetadata();
    String xmp = new String(metadata.toByteArray(), StandardCharsets.UTF_8);
    metadata.importXMPMetadata(dated(xmp, info.dated()).getBytes(StandardCharsets.UTF_8));
  }

  private static String dated(String xmp, LocalDate date) {
    String moment = date + "T00:00:00Z";
    String dates =
        "<xmp:CreateDate>%s</xmp:CreateDate><xmp:ModifyDate>%s</xmp:ModifyDate>"
            .formatted(moment, moment);
    String dated = CREATED.matcher(xmp).replaceFirst(dates);
    if (dated.equals(xmp)) {
      throw new IllegalStateException("no creation date in the metadata: " + xmp);
    }
    return dated;
  }
}
