package underhold.report.html;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.w3c.dom.Attr;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.xml.sax.SAXException;
import underhold.report.drawing.Figure;
import underhold.report.drawing.SvgXml;

/**
 * A drawing inside a page: read as XML, refused when it would fetch or run anything, its ids made
 * its own, named and described for whoever cannot see it.
 */
final class DrawingMarkup {
  private static final String SVG = "http://www.w3.org/2000/svg";
  private static final String XLINK = "http://www.w3.org/1999/xlink";
  private static final Set<String> FORBIDDEN =
      Set.of("script", "foreignobject", "iframe", "image", "audio", "video", "a", "set", "animate");
  private static final Pattern LOCAL = Pattern.compile("url\\(\\s*['\"]?#([^)'\"]+)['\"]?\\s*\\)");

  private final Figure figure;
  private final String id;
  private final Medium medium;
  private final double scale;

  private DrawingMarkup(Figure figure, String id, Medium medium, double scale) {
    this.figure = figure;
    this.id = id;
    this.medium = medium;
    this.scale = scale;
  }

  /**
   * The drawing as markup.
   *
   * @param id its id in the page, with which the ids inside begin
   * @param scale by what factor it is made smaller than it is drawn
   * @throws IllegalArgumentException when it is no drawing, or fetches or runs something
   */
  static String of(Figure figure, String id, Medium medium, double scale) {
    return new DrawingMarkup(figure, id, medium, scale).markup();
  }

  private String markup() {
    try {
      Element root = SvgXml.read(SafeText.of(figure.svg())).getDocumentElement();
      finish(root);
      name(root);
      return SvgXml.write(root);
    } catch (SAXException bad) {
      throw refused("it cannot be read (" + bad.getMessage() + ")", bad);
    }
  }

  private void finish(Element element) {
    String tag = element.getLocalName();
    if (FORBIDDEN.contains(tag.toLowerCase(Locale.ROOT))
        || !SVG.equals(element.getNamespaceURI())) {
      throw refused("it holds the element " + tag, null);
    }
    for (Attr attribute : attributes(element)) {
      finish(element, attribute);
    }
    List<Node> children = new ArrayList<>();
    for (Node child = element.getFirstChild(); child != null; child = child.getNextSibling()) {
      children.add(child);
    }
    for (Node child : children) {
      if (child instanceof Element part) {
        finish(part);
      } else if (child.getNodeType() != Node.TEXT_NODE
          && child.getNodeType() != Node.CDATA_SECTION_NODE) {
        element.removeChild(child);
      }
    }
    if (tag.equals("style") && element.getTextContent().matches("(?s).*(@import|url\\().*")) {
      throw refused("its style fetches something", null);
    }
  }

  private void finish(Element element, Attr attribute) {
    String name = attribute.getName().toLowerCase(Locale.ROOT);
    String value = attribute.getValue();
    if (name.startsWith("on")) {
      throw refused("it runs a script in " + name, null);
    }
    if (name.equals("id")) {
      attribute.setValue(id + "-" + value);
    } else if (name.equals("href") || XLINK.equals(attribute.getNamespaceURI())) {
      if (!value.startsWith("#")) {
        throw refused("it leads to " + value, null);
      }
      attribute.setValue("#" + id + "-" + value.substring(1));
    } else if (value.contains("url(")) {
      if (LOCAL.matcher(value).replaceAll("").contains("url(")) {
        throw refused("it fetches " + value, null);
      }
      attribute.setValue(LOCAL.matcher(value).replaceAll("url(#" + id + "-$1)"));
    } else if (name.startsWith("xmlns:") && !XLINK.equals(value) || name.startsWith("data-")) {
      element.removeAttributeNode(attribute);
    } else if (medium.paged() && name.equals("font-family")) {
      attribute.setValue("Drawing");
    }
  }

  private void name(Element root) {
    String width = millimetres(figure.widthMillimetres() * scale);
    String height = millimetres(Heading.height(figure) * scale);
    behead(root);
    root.removeAttribute("width");
    root.removeAttribute("height");
    if (medium.paged()) {
      root.setAttribute("alt", spoken());
      root.setAttribute("style", "width: " + width + "; height: " + height);
      root.setAttribute("font-family", "Drawing");
      return;
    }
    root.setAttribute("style", "width: " + width);
    root.setAttribute("role", "img");
    root.setAttribute("aria-labelledby", id + "-name " + id + "-words");
    drop(root, "title");
    drop(root, "desc");
    add(root, "desc", id + "-words", spoken());
    add(root, "title", id + "-name", figure.title());
  }

  /** Leaves the title out, which stands above the drawing as its caption. */
  private void behead(Element root) {
    double cut = Heading.cut(figure);
    String[] box = root.getAttribute("viewBox").split(" ");
    Node title = root.getElementsByTagNameNS(SVG, "text").item(0);
    if (cut > 0 && box.length == 4 && title != null) {
      title.getParentNode().removeChild(title);
      double top = Double.parseDouble(box[1]) + cut;
      double high = Double.parseDouble(box[3]) - cut;
      root.setAttribute(
          "viewBox", String.format(Locale.ROOT, "%s %.1f %s %.1f", box[0], top, box[2], high));
    }
  }

  /** The words of the drawing; its sketch in signs would be read out sign by sign. */
  private String spoken() {
    List<String> words = DrawingWords.of(figure.equivalent()).words();
    return words.isEmpty() ? figure.title() : String.join("; ", words);
  }

  private static void drop(Element root, String tag) {
    Node child = root.getFirstChild();
    while (child != null) {
      Node next = child.getNextSibling();
      if (tag.equals(child.getLocalName())) {
        root.removeChild(child);
      }
      child = next;
    }
  }

  private static void add(Element root, String tag, String id, String words) {
    Element element = root.getOwnerDocument().createElementNS(SVG, tag);
    element.setAttribute("id", id);
    element.setTextContent(SafeText.of(words));
    root.insertBefore(element, root.getFirstChild());
  }

  private static List<Attr> attributes(Element element) {
    List<Attr> attributes = new ArrayList<>();
    for (int i = 0; i < element.getAttributes().getLength(); i++) {
      attributes.add((Attr) element.getAttributes().item(i));
    }
    return attributes;
  }

  private static String millimetres(double length) {
    return String.format(Locale.ROOT, "%.1fmm", length);
  }

  private IllegalArgumentException refused(String reason, @Nullable Exception cause) {
    return new IllegalArgumentException(
        "the drawing \"" + figure.id() + "\" cannot be set: " + reason, cause);
  }
}
