package underhold.report.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import javax.xml.parsers.DocumentBuilderFactory;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;
import underhold.quantity.Measure;
import underhold.quantity.Quantity;

/** Reads a drawing back from its SVG, as a person with a scale rule would. */
final class SvgCheck {
  /** The printer gives four significant figures; half of the last is 0.05 %. */
  static final double PRINTED = 0.0005;

  /** What an A4 page of 297 mm has for a figure beside margins, title and words [mm]. */
  private static final double HIGHEST = 235;

  /** Coordinates are written to a thousandth of a millimetre, at both ends. */
  static final double RULE = 0.002;

  private final Figure figure;
  private final Document document;

  SvgCheck(Figure figure) {
    this.figure = figure;
    try {
      DocumentBuilderFactory factory = DocumentBuilderFactory.newDefaultInstance();
      factory.setNamespaceAware(true);
      this.document =
          factory.newDocumentBuilder().parse(new InputSource(new StringReader(figure.svg())));
    } catch (Exception fault) {
      throw new AssertionError(figure.id() + " is not well-formed: " + fault.getMessage(), fault);
    }
  }

  /**
   * A dimension line as drawn.
   *
   * @param name what its group is called
   * @param metres between its ticks, paper times scale
   * @param text what is written on it
   */
  record Dimension(String name, double metres, String text) {
    /** The first number with unit in its words [m]. */
    double written() {
      String[] words = text.split(" ");
      return si(words[0] + " " + words[1], Measure.LENGTH);
    }
  }

  static double si(String text, Measure measure) {
    return Quantity.parse(text, measure)
        .toOptional()
        .orElseThrow(() -> new AssertionError(text + " is no quantity"))
        .si();
  }

  /** Dimensions by the name of their group; the ticks are taken from the lines drawn. */
  Map<String, Dimension> dimensions() {
    Map<String, Dimension> found = new TreeMap<>();
    for (Element group : elements("g")) {
      String prefix = figure.id() + "-dim-";
      if (group.getAttribute("id").startsWith(prefix)) {
        String name = group.getAttribute("id").substring(prefix.length());
        found.put(name, new Dimension(name, ticks(group), words(group)));
      }
    }
    return found;
  }

  /** Between the middles of the last two lines of a dimension, which are its ticks [m]. */
  private static double ticks(Element group) {
    NodeList lines = group.getElementsByTagNameNS("*", "line");
    boolean level = group.getAttribute("data-axis").equals("x");
    double one = middle((Element) lines.item(lines.getLength() - 2), level);
    double other = middle((Element) lines.item(lines.getLength() - 1), level);
    assertThat(one)
        .isCloseTo(number(group, "data-from"), org.assertj.core.data.Offset.offset(RULE));
    assertThat(other)
        .isCloseTo(number(group, "data-to"), org.assertj.core.data.Offset.offset(RULE));
    return Math.abs(other - one) * number(group, "data-ratio") / 1000;
  }

  private static double middle(Element line, boolean level) {
    return (number(line, level ? "x1" : "y1") + number(line, level ? "x2" : "y2")) / 2;
  }

  private static String words(Element group) {
    String words = group.getElementsByTagNameNS("*", "text").item(0).getTextContent();
    assertThat(words).isEqualTo(group.getAttribute("data-text"));
    return words;
  }

  static double number(Element element, String attribute) {
    return Double.parseDouble(element.getAttribute(attribute));
  }

  List<Element> elements(String name) {
    NodeList all = document.getElementsByTagNameNS("*", name);
    List<Element> elements = new ArrayList<>();
    for (int i = 0; i < all.getLength(); i++) {
      elements.add((Element) all.item(i));
    }
    return elements;
  }

  Element group(String name) {
    return elements("g").stream()
        .filter(group -> group.getAttribute("id").equals(figure.id() + "-" + name))
        .findFirst()
        .orElseThrow(() -> new AssertionError(figure.id() + " has no group " + name));
  }

  /** The scale printed on the drawing: "Scale 1:50" gives 50. */
  double printedRatio() {
    return elements("text").stream()
        .map(Element::getTextContent)
        .filter(words -> words.startsWith("Scale 1:"))
        .map(words -> words.substring(8).split(" ")[0])
        .mapToDouble(Double::parseDouble)
        .findFirst()
        .orElseThrow();
  }

  List<Rectangle2D> boxes() {
    return Boxes.of(document);
  }

  List<String> texts() {
    return elements("text").stream().map(Element::getTextContent).toList();
  }

  /** Everything that must hold of every drawing. */
  void sound() {
    assertThat(figure.svg()).startsWith("<svg").doesNotContain("NaN").doesNotContain("Infinity");
    assertThat(figure.svg()).doesNotContain("href").doesNotContain("style=");
    Element root = document.getDocumentElement();
    assertThat(root.getAttribute("role")).isEqualTo("img");
    assertThat(root.getAttribute("aria-labelledby"))
        .isEqualTo(figure.id() + "-title " + figure.id() + "-desc");
    assertThat(elements("title")).hasSize(1);
    assertThat(elements("desc").get(0).getTextContent()).isNotBlank();
    List<String> ids =
        elements("*").stream().map(e -> e.getAttribute("id")).filter(id -> !id.isEmpty()).toList();
    assertThat(ids)
        .doesNotHaveDuplicates()
        .allSatisfy(id -> assertThat(id).startsWith(figure.id()));
    inside();
    apart();
    legible();
    leaders();
  }

  /**
   * No letters under 8 points (25.4 mm / 72 each), and no figure higher than what an A4 page has
   * beside its margins, its heading and the words: a higher one would be set smaller.
   */
  private void legible() {
    double least = 8 * 25.4 / 72;
    assertThat(elements("text"))
        .as(figure.id())
        .allSatisfy(text -> assertThat(number(text, "font-size")).isGreaterThanOrEqualTo(least));
    assertThat(figure.heightMillimetres()).as(figure.id()).isLessThanOrEqualTo(HIGHEST);
  }

  /** Leaders of notes cross no words, unless these stand on a ground of their own over them. */
  private void leaders() {
    List<Element> all = elements("*");
    List<String> crossed = new ArrayList<>();
    for (int i = 0; i < all.size(); i++) {
      if (!all.get(i).getLocalName().equals("line") || !isLeader(all.get(i))) {
        continue;
      }
      Line2D leader = line(all.get(i));
      for (int j = 0; j < all.size(); j++) {
        Element text = all.get(j);
        if (text.getLocalName().equals("text")
            && !(j > i && onGround(text))
            && !all.get(i).getParentNode().getTextContent().contains(text.getTextContent())
            && leader.intersects(inner(Boxes.words(text)))) {
          crossed.add(
              all.get(i).getParentNode().getTextContent() + " over " + text.getTextContent());
        }
      }
    }
    assertThat(crossed).as("%s: leaders over words", figure.id()).isEmpty();
  }

  /** Leaders that cross each other, by the words of their notes. */
  List<String> crossingLeaders() {
    List<Element> leaders = elements("line").stream().filter(this::isLeader).toList();
    List<String> crossed = new ArrayList<>();
    for (int i = 0; i < leaders.size(); i++) {
      for (int j = i + 1; j < leaders.size(); j++) {
        if (leaders.get(i).getParentNode() != leaders.get(j).getParentNode()
            && line(leaders.get(i)).intersectsLine(line(leaders.get(j)))) {
          crossed.add(
              leaders.get(i).getParentNode().getTextContent()
                  + " x "
                  + leaders.get(j).getParentNode().getTextContent());
        }
      }
    }
    return crossed;
  }

  private boolean isLeader(Element line) {
    return line.getParentNode() instanceof Element group
        && group.getAttribute("id").matches(".*-note-\\d+(-\\d+)?");
  }

  private static Line2D line(Element line) {
    return new Line2D.Double(
        number(line, "x1"), number(line, "y1"), number(line, "x2"), number(line, "y2"));
  }

  /** Without what the rough measure of words has too much. */
  private static Rectangle2D inner(Rectangle2D words) {
    return new Rectangle2D.Double(
        words.getX() + 0.1 * words.getWidth(),
        words.getY() + 0.3,
        0.8 * words.getWidth(),
        Math.max(words.getHeight() - 0.6, 0.1));
  }

  /** Whether the words were written on a white rectangle. */
  private static boolean onGround(Element text) {
    org.w3c.dom.Node before = text.getPreviousSibling();
    if (before == null && text.getParentNode() instanceof Element turned) {
      before = turned.getPreviousSibling();
    }
    return before instanceof Element ground && ground.getLocalName().equals("rect");
  }

  /** Every corner of every shape and of every word lies on the paper. */
  private void inside() {
    Rectangle2D paper =
        new Rectangle2D.Double(
            -0.01, -0.01, figure.widthMillimetres() + 0.02, figure.heightMillimetres() + 0.02);
    assertThat(
            boxes().stream()
                .filter(
                    box ->
                        !paper.contains(box.getMinX(), box.getMinY())
                            || !paper.contains(box.getMaxX(), box.getMaxY())))
        .as("%s off its paper", figure.id())
        .isEmpty();
  }

  /** No words run over other words. */
  private void apart() {
    List<Element> texts = elements("text");
    List<Rectangle2D> places = texts.stream().map(Boxes::words).toList();
    List<String> over = new ArrayList<>();
    for (int i = 0; i < texts.size(); i++) {
      for (int j = i + 1; j < texts.size(); j++) {
        Rectangle2D both = places.get(i).createIntersection(places.get(j));
        if (both.getWidth() > 0.2 && both.getHeight() > 0.2) {
          over.add(texts.get(i).getTextContent() + " over " + texts.get(j).getTextContent());
        }
      }
    }
    assertThat(over).as(figure.id()).isEmpty();
  }
}
