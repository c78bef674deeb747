package underhold.report.drawing.kit;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jfree.svg.SVGGraphics2D;
import org.jfree.svg.SVGHints;
import org.jfree.svg.SVGUnits;
import underhold.report.drawing.Figure;

/**
 * A sheet of paper in millimetres, as wide as it was asked for and as high as what is drawn on it.
 * Words are recorded with their boxes, so that whoever places more can keep clear of them.
 */
public final class Canvas {
  /** No paper is higher than this [mm]. */
  private static final double HIGHEST = 2000;

  private static final double MARGIN = 2;
  private static final double QUARTER_TURN = -Math.PI / 2;

  private final String id;
  private final double width;
  private final SVGGraphics2D graphics;
  private final List<Letters> lettered = new ArrayList<>();
  private final List<Rectangle2D> words = new ArrayList<>();
  private final Map<String, Map<String, String>> data = new LinkedHashMap<>();
  private final Set<String> clipped = new LinkedHashSet<>();
  private final Set<String> measured = new LinkedHashSet<>();
  private double bottom;

  /**
   * An empty sheet.
   *
   * @param id of the drawing; every id in it begins with this
   * @param width on paper [mm]
   */
  public Canvas(String id, double width) {
    this.id = id;
    this.width = Math.ceil(width);
    graphics = new SVGGraphics2D(this.width, HIGHEST, SVGUnits.MM);
    graphics.setDefsKeyPrefix(id + "-def-");
    graphics.setGeomDoubleConverter(Canvas::number);
    graphics.setTransformDoubleConverter(Canvas::number);
  }

  /** To a thousandth of a millimetre, a point for decimals whatever the machine's habits. */
  private static String number(double value) {
    double calm = Math.rint(value * 1000) / 1000;
    if (!Double.isFinite(calm)) {
      throw new IllegalArgumentException("a drawing has no place for " + value);
    }
    return calm == Math.rint(calm) ? String.valueOf((long) calm) : String.valueOf(calm);
  }

  /** Width of the paper [mm]. */
  public double width() {
    return width;
  }

  /** The lowest place that anything drawn reaches [mm]. */
  public double bottom() {
    return bottom;
  }

  /** A line. */
  public void line(Pen pen, double fromX, double fromY, double toX, double toY) {
    outline(pen, new Line2D.Double(fromX, fromY, toX, toY));
  }

  /** The edge of a shape, or an open line. */
  public void outline(Pen pen, Shape shape) {
    outline(pen, pen.colour(), shape);
  }

  /** The same in a colour of its own. */
  public void outline(Pen pen, Color colour, Shape shape) {
    reach(shape.getBounds2D(), pen.width() / 2);
    graphics.setPaint(colour);
    graphics.setStroke(pen.stroke());
    graphics.draw(shape);
  }

  /** A plain area. */
  public void fill(Color colour, Shape shape) {
    reach(shape.getBounds2D(), 0);
    graphics.setPaint(colour);
    graphics.fill(shape);
  }

  /** An area with tint and marks of what it is made of. */
  public void hatch(Hatch hatch, Shape shape) {
    if (shape.getBounds2D().isEmpty()) {
      return;
    }
    fill(hatch.tint(), shape);
    Path2D marks = HatchMarks.of(hatch, shape);
    if (marks.getCurrentPoint() != null) {
      graphics.setPaint(Pen.HATCH.colour());
      graphics.setStroke(
          new BasicStroke((float) hatch.weight(), BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
      graphics.draw(marks);
    }
  }

  /** An arrow. */
  public void arrow(Pen pen, double fromX, double fromY, double toX, double toY) {
    line(pen, fromX, fromY, toX, toY);
    double angle = Math.atan2(toY - fromY, toX - fromX);
    double size = 1.8;
    Path2D head = new Path2D.Double();
    head.moveTo(toX, toY);
    head.lineTo(toX - size * Math.cos(angle - 0.35), toY - size * Math.sin(angle - 0.35));
    head.lineTo(toX - size * Math.cos(angle + 0.35), toY - size * Math.sin(angle + 0.35));
    head.closePath();
    fill(pen.colour(), head);
  }

  /** Words on one line, their feet at y. */
  public void text(String text, double x, double y, Letters letters) {
    String clean = Lettering.clean(text);
    if (clean.isEmpty()) {
      return;
    }
    Rectangle2D box = box(clean, x, y, letters);
    words.add(box);
    reach(box, 0);
    write(clean, x, y, letters);
  }

  /** Words on one line on a white ground. */
  public void label(String text, double x, double y, Letters letters) {
    ground(box(Lettering.clean(text), x, y, letters));
    text(text, x, y, letters);
  }

  /**
   * A name on a white ground in the middle of a box on paper, on as many lines as it needs; nothing
   * where the box is too low for it.
   */
  public void name(String text, Rectangle2D box, Letters letters) {
    List<String> lines = Lettering.wrap(text, box.getWidth() - 2, letters);
    double high = lines.size() * letters.line();
    if (high + 1 > box.getHeight()) {
      return;
    }
    double feet = box.getCenterY() - high / 2 + 0.85 * letters.size();
    for (String line : lines) {
      label(line, box.getCenterX(), feet, letters.middle());
      feet += letters.line();
    }
  }

  private void ground(Rectangle2D box) {
    double air = 0.3;
    fill(
        Colours.PAPER,
        new Rectangle2D.Double(
            box.getX() - air, box.getY(), box.getWidth() + 2 * air, box.getHeight()));
  }

  /** Words that read upwards on a white ground, their feet at x, their anchor at y. */
  public void upright(String text, double x, double y, Letters letters) {
    String clean = Lettering.clean(text);
    if (clean.isEmpty()) {
      return;
    }
    Rectangle2D box = uprightBox(clean, x, y, letters);
    ground(box);
    words.add(box);
    reach(box, 0);
    AffineTransform before = graphics.getTransform();
    graphics.rotate(QUARTER_TURN, x, y);
    write(clean, x, y, letters);
    graphics.setTransform(before);
  }

  /** Lines of words from y downwards; gives the feet of the next line. */
  public double paragraph(String text, double x, double y, double wide, Letters letters) {
    double feet = y;
    for (String line : Lettering.wrap(text, wide, letters)) {
      text(line, x, feet, letters);
      feet += letters.line();
    }
    return feet;
  }

  /** The words cut to the width [mm]; what was cut is told in full in the text of the figure. */
  public String fit(String text, double wide, Letters letters) {
    String clean = Lettering.clean(text);
    String fitting = Lettering.clip(clean, wide, letters);
    if (!fitting.equals(clean)) {
      clipped.add(clean);
    }
    return fitting;
  }

  /** A dimension that is drawn; the words of the figure say it where they do not yet. */
  void measured(String name, String text) {
    boolean named = Character.isLetter(text.codePointAt(0));
    measured.add(named ? text : name.replace('-', ' ') + " " + text);
  }

  private void write(String clean, double x, double y, Letters letters) {
    lettered.add(letters);
    graphics.setPaint(letters.colour());
    graphics.setFont(new Face(letters.bold()));
    graphics.drawString(clean, (float) x, (float) y);
  }

  /** A face by its name alone: to ask the machine for its fonts takes a tenth of a second. */
  private static final class Face extends Font {
    private static final long serialVersionUID = 1;

    Face(boolean bold) {
      super(SANS_SERIF, bold ? BOLD : PLAIN, 3);
    }

    @Override
    public String getFamily() {
      return getName();
    }
  }

  /** The place that words take [mm]. */
  public static Rectangle2D box(String text, double x, double y, Letters letters) {
    double wide = letters.width(text);
    double size = letters.size();
    return new Rectangle2D.Double(x - wide * letters.anchor().share(), y - 0.78 * size, wide, size);
  }

  /** The place that words reading upwards take [mm]. */
  public static Rectangle2D uprightBox(String text, double x, double y, Letters letters) {
    double wide = letters.width(text);
    double size = letters.size();
    return new Rectangle2D.Double(
        x - 0.78 * size, y - wide * (1 - letters.anchor().share()), size, wide);
  }

  /** Whether no words stand there yet and the paper reaches that far. */
  public boolean isFree(Rectangle2D place) {
    return place.getMinX() >= 0
        && place.getMaxX() <= width
        && place.getMinY() >= 0
        && words.stream().noneMatch(place::intersects);
  }

  /** What is drawn inside stands together under {@code id-name}, with {@code data-} values. */
  public void group(String name, Map<String, String> values, Runnable inside) {
    String key = id + "-" + name;
    for (int again = 2; data.containsKey(key); again++) {
      key = id + "-" + name + "-" + again;
    }
    data.put(key, Map.copyOf(values));
    graphics.setRenderingHint(SVGHints.KEY_BEGIN_GROUP, key);
    inside.run();
    graphics.setRenderingHint(SVGHints.KEY_END_GROUP, key);
  }

  /** A group without values. */
  public void group(String name, Runnable inside) {
    group(name, Map.of(), inside);
  }

  /** A dot. */
  public void dot(Color colour, Point2D at, double size) {
    fill(
        colour,
        new java.awt.geom.Ellipse2D.Double(at.getX() - size / 2, at.getY() - size / 2, size, size));
  }

  private static boolean said(String text, List<String> words) {
    return words.stream().anyMatch(line -> line.contains(text));
  }

  private void reach(Rectangle2D bounds, double more) {
    bottom = Math.max(bottom, bounds.getMaxY() + more);
  }

  /**
   * The finished drawing, cut below what was drawn last.
   *
   * @param title what it shows
   * @param description one or two sentences for whoever cannot see it
   * @param equivalent the same in words, line by line
   */
  public Figure finish(String title, String description, List<String> equivalent) {
    double height = Math.ceil(bottom + MARGIN);
    String svg =
        new SvgFinish(id, width, height, Lettering.clean(title), Lettering.clean(description))
            .of(graphics.getSVGElement(), lettered, data);
    List<String> words = new ArrayList<>(equivalent);
    List<String> unsaid = measured.stream().filter(text -> !said(text, equivalent)).toList();
    if (!unsaid.isEmpty()) {
      words.add("Dimensions: " + String.join("; ", unsaid) + ".");
    }
    clipped.forEach(text -> words.add("In full: " + text));
    return new Figure(id, Lettering.clean(title), svg, width, height, words);
  }
}
