package underhold.report.drawing.kit;

import java.awt.Color;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Pattern;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.xml.sax.SAXException;
import underhold.report.drawing.SvgXml;

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
    Document document = tree(drawn);
    Element root = document.getDocumentElement();
    head(document, root);
    List<Element> all = new ArrayList<>();
    collect(root, all);
    all.forEach(SvgFinish::style);
    letter(all.stream().filter(one -> one.getLocalName().equals("text")).toList(), lettered);
    all.stream().filter(one -> one.getLocalName().equals("g")).forEach(group -> value(group, data));
    return SvgXml.write(document);
  }

  private Document tree(String drawn) {
    try {
      return SvgXml.read(drawn);
    } catch (SAXException fault) {
      throw new IllegalStateException("the drawing " + id + " is not well-formed", fault);
    }
  }

  /** An element and all inside it, as they stand. */
  private static void collect(Element element, List<Element> all) {
    all.add(element);
    for (Node child = element.getFirstChild(); child != null; child = child.getNextSibling()) {
      if (child instanceof Element inside) {
        collect(inside, all);
      }
    }
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
  private static void style(Element element) {
    for (String entry : element.getAttribute("style").split(";", -1)) {
      int colon = entry.indexOf(':');
      String name = colon < 0 ? "" : entry.substring(0, colon).strip();
      if (STYLES.contains(name)) {
        element.setAttribute(name, calm(entry.substring(colon + 1).strip()));
      }
    }
    element.removeAttribute("style");
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
  private static void letter(List<Element> texts, List<Letters> lettered) {
    if (texts.size() != lettered.size()) {
      throw new IllegalStateException(
          texts.size() + " words drawn, " + lettered.size() + " recorded");
    }
    for (int i = 0; i < texts.size(); i++) {
      Element text = texts.get(i);
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

  private static void value(Element group, Map<String, Map<String, String>> data) {
    new TreeMap<>(data.getOrDefault(group.getAttribute("id"), Map.of()))
        .forEach((name, value) -> group.setAttribute("data-" + name, Lettering.clean(value)));
  }
}
