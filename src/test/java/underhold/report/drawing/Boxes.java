package underhold.report.drawing;

import java.awt.geom.AffineTransform;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.w3c.dom.NodeList;

/**
 * The places that shapes and words of a drawing take. Words are measured roughly, apart from the
 * drawing's own tables: half of the size a sign, about the mean of running words in a common
 * sans-serif face.
 */
final class Boxes {
  private static final Pattern NUMBER = Pattern.compile("-?\\d+(\\.\\d+)?(E-?\\d+)?");
  private static final double SIGN = 0.5;

  private Boxes() {}

  static List<Rectangle2D> of(Document document) {
    NodeList all = document.getElementsByTagNameNS("*", "*");
    List<Rectangle2D> boxes = new ArrayList<>();
    for (int i = 0; i < all.getLength(); i++) {
      Element element = (Element) all.item(i);
      switch (element.getLocalName()) {
        case "text" -> boxes.add(words(element));
        case "line" -> boxes.add(points(values(element, "x1", "y1", "x2", "y2")));
        case "rect" -> {
          double[] at = values(element, "x", "y", "width", "height");
          boxes.add(new Rectangle2D.Double(at[0], at[1], at[2], at[3]));
        }
        case "ellipse" -> {
          double[] at = values(element, "cx", "cy", "rx", "ry");
          boxes.add(new Rectangle2D.Double(at[0] - at[2], at[1] - at[3], 2 * at[2], 2 * at[3]));
        }
        case "path" -> boxes.add(points(numbers(element.getAttribute("d"))));
        default -> {}
      }
    }
    return boxes;
  }

  private static double[] values(Element element, String... names) {
    return Arrays.stream(names).mapToDouble(name -> SvgCheck.number(element, name)).toArray();
  }

  private static double[] numbers(String text) {
    Matcher found = NUMBER.matcher(text);
    List<Double> numbers = new ArrayList<>();
    while (found.find()) {
      numbers.add(Double.parseDouble(found.group()));
    }
    return numbers.stream().mapToDouble(Double::doubleValue).toArray();
  }

  private static Rectangle2D points(double[] at) {
    Rectangle2D box = new Rectangle2D.Double(at[0], at[1], 0, 0);
    for (int i = 0; i + 1 < at.length; i += 2) {
      box.add(at[i], at[i + 1]);
    }
    return box;
  }

  static Rectangle2D words(Element text) {
    double size = SvgCheck.number(text, "font-size");
    String words = text.getTextContent();
    double wide = words.codePointCount(0, words.length()) * size * SIGN;
    double share =
        switch (text.getAttribute("text-anchor")) {
          case "middle" -> 0.5;
          case "end" -> 1;
          default -> 0;
        };
    Rectangle2D box =
        new Rectangle2D.Double(
            SvgCheck.number(text, "x") - wide * share,
            SvgCheck.number(text, "y") - 0.7 * size,
            wide,
            0.7 * size);
    return turned(text, box);
  }

  private static Rectangle2D turned(Element text, Rectangle2D box) {
    Node parent = text.getParentNode();
    String transform = parent instanceof Element group ? group.getAttribute("transform") : "";
    if (transform.isEmpty()) {
      return box;
    }
    return new AffineTransform(numbers(transform)).createTransformedShape(box).getBounds2D();
  }
}
