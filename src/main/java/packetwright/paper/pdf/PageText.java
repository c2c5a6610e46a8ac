package packetwright.paper.pdf;

import java.io.IOException;
import java.io.StringReader;
import java.util.List;
import javax.xml.XMLConstants;
import javax.xml.parsers.DocumentBuilder;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.jspecify.annotations.Nullable;
import org.w3c.dom.Document;
import org.w3c.dom.Node;
import org.xml.sax.ErrorHandler;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;
import org.xml.sax.SAXParseException;
import packetwright.drawing.lettering.Face;

/** Reads the XHTML that the templates made, and looks at its text. */
final class PageText {
  private static final List<Face> TEXT_FACES =
      List.of(Face.REGULAR, Face.ITALIC, Face.BOLD, Face.BOLD_ITALIC);

  private PageText() {}

  /** The document; markup that is not well-formed, or has a document type, is a bug. */
  static Document parse(String html) {
    try {
      DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
      factory.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
      factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
      DocumentBuilder builder = factory.newDocumentBuilder();
      builder.setErrorHandler(new Strict());
      return builder.parse(new InputSource(new StringReader(html)));
    } catch (SAXParseException e) {
      throw new PageRefused("page markup, line " + e.getLineNumber() + ": " + e.getMessage());
    } catch (ParserConfigurationException | SAXException | IOException e) {
      throw new IllegalStateException("page markup cannot be read", e);
    }
  }

  /**
   * Refuses text that would lose a character, whichever face it is set in. Style sheets count as
   * text, so that what {@code content} adds is looked at too.
   */
  static void checkGlyphs(Node node, Typefaces typefaces) {
    if (node.getNodeType() == Node.TEXT_NODE) {
      node.getTextContent()
          .codePoints()
          .filter(c -> !Character.isISOControl(c))
          .distinct()
          .forEach(c -> TEXT_FACES.forEach(face -> typefaces.covering(face, c)));
    }
    for (@Nullable Node child = node.getFirstChild();
        child != null;
        child = child.getNextSibling()) {
      checkGlyphs(child, typefaces);
    }
  }

  /** Keeps the parser from writing to the standard error stream. */
  private static final class Strict implements ErrorHandler {
    @Override
    public void warning(SAXParseException e) throws SAXParseException {
      throw e;
    }

    @Override
    public void error(SAXParseException e) throws SAXParseException {
      throw e;
    }

    @Override
    public void fatalError(SAXParseException e) throws SAXParseException {
      throw e;
    }
  }
}
