package underhold.report.document;

import java.util.List;

/**
 * A part of a document under a heading.
 *
 * @param id its anchor: lower-case words joined by hyphens, no two alike in one document
 * @param title its heading, without a number
 * @param blocks what stands in it, in order
 * @param parts the parts below it, in order, after its own blocks
 */
public record Section(String id, String title, List<Block> blocks, List<Section> parts) {

  public Section {
    title = Clean.words(title);
    blocks = List.copyOf(blocks);
    parts = List.copyOf(parts);
  }

  /** A section without parts. */
  public static Section of(String id, String title, List<Block> blocks) {
    return new Section(id, title, blocks, List.of());
  }
}
