package underhold.report.pdf;

import java.util.ArrayList;
import java.util.List;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;

/**
 * Puts every run of words that stands beside other elements into a span of its own. The PDF library
 * writes the words of an element before those of the elements inside it; in spans side by side they
 * come in the order in which they are read, so that searched and copied text is what one sees.
 */
final class ReadingOrder {
  private ReadingOrder() {}

  /** Prepares all words below the element. */
  static void keep(Element element) {
    if (element.getNodeName().equals("svg") || element.getNodeName().equals("head")) {
      return;
    }
    List<Node> words = new ArrayList<>();
    boolean mixed = false;
    boolean said = false;
    for (Node child = element.getFirstChild(); child != null; child = child.getNextSibling()) {
      if (child instanceof Element inner) {
        mixed = true;
        keep(inner);
      } else if (child.getNodeType() == Node.TEXT_NODE) {
        words.add(child);
        said |= !child.getTextContent().isBlank();
      }
    }
    if (mixed && (said || holdsWords(element))) {
      words.forEach(ReadingOrder::wrap);
    }
  }

  private static boolean holdsWords(Element element) {
    return switch (element.getNodeName()) {
      case "p", "td", "th", "span", "a", "strong", "h1", "h2", "h3", "h4", "h5", "h6" -> true;
      default -> false;
    };
  }

  private static void wrap(Node words) {
    Document document = words.getOwnerDocument();
    Element span = document.createElementNS("http://www.w3.org/1999/xhtml", "span");
    words.getParentNode().replaceChild(span, words);
    span.appendChild(words);
  }
}
