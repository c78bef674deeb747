package underhold.report.document;

import java.util.List;

/**
 * A whole document.
 *
 * @param title its title
 * @param status what it may be used for, on every page
 * @param cover what the cover says, line by line: a label and words
 * @param sections the sections in order
 */
public record Document(String title, String status, List<Entry> cover, List<Section> sections) {

  public Document {
    title = Clean.words(title);
    status = Clean.words(status);
    cover = List.copyOf(cover);
    sections = List.copyOf(sections);
  }

  /** A label with its words. */
  public record Entry(String label, Prose words) {
    public Entry {
      label = Clean.words(label);
    }
  }
}
