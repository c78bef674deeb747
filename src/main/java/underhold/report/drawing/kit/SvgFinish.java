package underhold.report.drawing.kit;

import java.awt.Color;
import java.io.StringReader;
import java.io.StringWriter;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Pattern;
import javax.xml.XMLConstants;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.transform.OutputKeys;
import javax.xml.transform.Transformer;
import javax.xml.transform.TransformerFactory;
import javax.xml.transform.dom.DOMSource;
import javax.xml.transform.stream.StreamResult;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

/**
 * Gives a drawing what the library leaves out: its size, role, title and description, the sizes and
 * anchors of words, and the values of groups.
 *
 * @param id of the drawing
 * @param width on paper [mm]
 * @param height on paper [mm]
 * @param title what it shows
 * @param description in a sentence or two
 */
record SvgFinish(String id, double width, double height, String title, String description) {
  private static final String SVG = "http://www.w3.org/2000/svg";

  /** What a viewer does not take for granted anyway. */
  private static final Set<String> STYLES =
      Set.of(
          "fill",
          "stroke",
          "stroke-width",
          "stroke-dasharray",
          "stroke-linecap",
          "stroke-linejoin");

  private static final Pattern DECIMALS = Pattern.compile("\\d+\\.\\d+");

  /** The finished element. */
  String of(String drawn, List<Letters> lettered, Map<String, Map<String, String>> data) {
    try {
      Document document = parse(drawn);
      Element root = document.getDocumentElement();
      head(document, root);
      style(document.getElementsByTagNameNS(SVG, "*"));
      letter(document.getElementsByTagNameNS(SVG, "text"), lettered);
      value(document.getElementsByTagNameNS(SVG, "g"), data);
      return print(document);
    } catch (Exception fault) {
      throw new IllegalStateException("the drawing " + id + " is not well-formed", fault);
    }
  }

  private static Document parse(String drawn) throws Exception {
    DocumentBuilderFactory factory = DocumentBuilderFactory.newDefaultInstance();
    factory.setNamespaceAware(true);
    factory.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
    factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
    return factory.newDocumentBuilder().parse(new InputSource(new StringReader(drawn)));
  }

  private void head(Document document, Element root) {
    root.removeAttribute("xmlns:xlink");
    root.removeAttribute("xmlns:jfreesvg");
    root.removeAttribute("text-rendering");
    root.removeAttribute("shape-rendering");
    root.setAttribute("id", id);
    root.setAttribute("width", (long) width + "mm");
    root.setAttribute("height", (long) height + "mm");
    root.setAttribute("viewBox", "0 0 " + (long) width + " " + (long) height);
    root.setAttribute("role", "img");
    root.setAttribute("aria-labelledby", id + "-title " + id + "-desc");
    Element named = document.createElementNS(SVG, "title");
    named.setAttribute("id", id + "-title");
    named.setTextContent(title);
    Element described = document.createElementNS(SVG, "desc");
    described.setAttribute("id", id + "-desc");
    described.setTextContent(description);
    root.insertBefore(described, root.getFirstChild());
    root.insertBefore(named, described);
  }

  /** Styles become attributes, which need no style sheet, and numbers lose the noise of floats. */
  private static void style(NodeList all) {
    for (int i = 0; i < all.getLength(); i++) {
      Element element = (Element) all.item(i);
      for (String entry : element.getAttribute("style").split(";", -1)) {
        int colon = entry.indexOf(':');
        String name = colon < 0 ? "" : entry.substring(0, colon).strip();
        if (STYLES.contains(name)) {
          element.setAttribute(name, calm(entry.substring(colon + 1).strip()));
        }
      }
      element.removeAttribute("style");
    }
  }

  private static String calm(String value) {
    return DECIMALS
        .matcher(value)
        .replaceAll(
            number ->
                new BigDecimal(number.group())
                    .setScale(3, RoundingMode.HALF_UP)
                    .stripTrailingZeros()
                    .toPlainString());
  }

  /** Words stand in the order in which they were written. */
  private static void letter(NodeList texts, List<Letters> lettered) {
    if (texts.getLength() != lettered.size()) {
      throw new IllegalStateException(
          texts.getLength() + " words drawn, " + lettered.size() + " recorded");
    }
    for (int i = 0; i < texts.getLength(); i++) {
      Element text = (Element) texts.item(i);
      Letters letters = lettered.get(i);
      text.setAttribute("font-family", "sans-serif");
      text.setAttribute("font-size", String.valueOf(letters.size()));
      text.setAttribute("fill", hex(letters.colour()));
      if (letters.bold()) {
        text.setAttribute("font-weight", "bold");
      }
      if (letters.anchor() != Letters.Anchor.START) {
        text.setAttribute("text-anchor", letters.anchor().word());
      }
    }
  }

  private static String hex(Color colour) {
    return String.format(Locale.ROOT, "#%06x", colour.getRGB() & 0xFFFFFF);
  }

  private static void value(NodeList groups, Map<String, Map<String, String>> data) {
    for (int i = 0; i < groups.getLength(); i++) {
      Element group = (Element) groups.item(i);
      new TreeMap<>(data.getOrDefault(group.getAttribute("id"), Map.of()))
          .forEach((name, value) -> group.setAttribute("data-" + name, Lettering.clean(value)));
    }
  }

  private static String print(Document document) throws Exception {
    Transformer transformer = TransformerFactory.newDefaultInstance().newTransformer();
    transformer.setOutputProperty(OutputKeys.OMIT_XML_DECLARATION, "yes");
    transformer.setOutputProperty(OutputKeys.INDENT, "no");
    StringWriter text = new StringWriter();
    transformer.transform(new DOMSource(document), new StreamResult(text));
    return text.toString();
  }
}
