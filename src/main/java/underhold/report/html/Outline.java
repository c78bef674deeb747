package underhold.report.html;

import java.util.ArrayList;
import java.util.List;
import underhold.report.document.Section;

/**
 * A section with its number and the numbered parts below it.
 *
 * @param number its number, {@code 2.1}
 * @param section what stands in it
 * @param level 1 for a section of the document, 2 for a part of one, and so on
 * @param parts the parts below it
 */
public record Outline(String number, Section section, int level, List<Outline> parts) {

  public Outline {
    parts = List.copyOf(parts);
  }

  /** The sections of a document, numbered from 1. */
  static List<Outline> of(List<Section> sections) {
    return number(sections, "", 1);
  }

  private static List<Outline> number(List<Section> sections, String above, int level) {
    List<Outline> numbered = new ArrayList<>();
    for (Section section : sections) {
      String number = above + (numbered.size() + 1);
      numbered.add(
          new Outline(number, section, level, number(section.parts(), number + ".", level + 1)));
    }
    return numbered;
  }

  /** The level of its heading; the title of the document has the first. */
  public int headingLevel() {
    return Math.min(level + 1, 6);
  }
}
