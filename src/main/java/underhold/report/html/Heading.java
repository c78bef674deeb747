package underhold.report.html;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import underhold.report.drawing.Figure;

/**
 * The title that a drawing bears at its top. In a page the caption above the drawing says the same:
 * there the title is left out and the drawing is lower by its line.
 */
final class Heading {
  /** Height of the line of the title [mm]; what stands below it begins lower. */
  private static final double LINE = 6.5;

  /** Letters of a title; fewer may be a label that happens to begin alike. */
  private static final int SHORTEST = 8;

  private static final Pattern FIRST = Pattern.compile("<text[^>]*>([^<]*)</text>");

  private Heading() {}

  /** The height of a drawing in a page, as large as it is drawn [mm]. */
  static double height(Figure figure) {
    return figure.heightMillimetres() - cut(figure);
  }

  /** By how much a drawing is lower in a page; 0 where its first words are not its title [mm]. */
  static double cut(Figure figure) {
    Matcher first = FIRST.matcher(figure.svg());
    boolean said = first.find() && figure.title().startsWith(plain(first.group(1)));
    return said && first.group(1).length() >= SHORTEST ? LINE : 0;
  }

  private static String plain(String markup) {
    return markup
        .replace("&lt;", "<")
        .replace("&gt;", ">")
        .replace("&quot;", "\"")
        .replace("&#39;", "'")
        .replace("&amp;", "&");
  }
}
