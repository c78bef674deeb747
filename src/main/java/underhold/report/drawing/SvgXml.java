package underhold.report.drawing;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import javax.xml.XMLConstants;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import javax.xml.transform.OutputKeys;
import javax.xml.transform.Transformer;
import javax.xml.transform.TransformerException;
import javax.xml.transform.TransformerFactory;
import javax.xml.transform.dom.DOMSource;
import javax.xml.transform.stream.StreamResult;
import org.w3c.dom.Document;
import org.w3c.dom.Node;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;

/** Reads and writes the markup of drawings, which declares no type and fetches nothing. */
public final class SvgXml {
  private SvgXml() {}

  /**
   * The markup as a tree.
   *
   * @throws SAXException if it is not well-formed or declares a type
   */
  public static Document read(String markup) throws SAXException {
    try {
      DocumentBuilderFactory factory = DocumentBuilderFactory.newDefaultInstance();
      factory.setNamespaceAware(true);
      factory.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
      factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
      return factory.newDocumentBuilder().parse(new InputSource(new StringReader(markup)));
    } catch (ParserConfigurationException | IOException e) {
      throw new IllegalStateException("Java's own reader of XML cannot be used", e);
    }
  }

  /** The tree as markup without an XML declaration, on one line. */
  public static String write(Node tree) {
    // Written as bytes, since the library writes signs to a writer one by one under a lock.
    ByteArrayOutputStream bytes = new ByteArrayOutputStream(1 << 15);
    try {
      Transformer transformer = TransformerFactory.newDefaultInstance().newTransformer();
      transformer.setOutputProperty(OutputKeys.METHOD, "xml");
      transformer.setOutputProperty(OutputKeys.ENCODING, "UTF-8");
      transformer.setOutputProperty(OutputKeys.OMIT_XML_DECLARATION, "yes");
      transformer.setOutputProperty(OutputKeys.INDENT, "no");
      transformer.transform(new DOMSource(tree), new StreamResult(bytes));
    } catch (TransformerException e) {
      throw new IllegalStateException("Java's own writer of XML cannot be used", e);
    }
    return bytes.toString(StandardCharsets.UTF_8);
  }
}
