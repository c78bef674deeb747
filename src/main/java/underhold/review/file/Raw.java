package underhold.review.file;

import underhold.site.JsonFile;
import underhold.site.JsonText;
import underhold.site.PlainText;
import underhold.site.Problems;

/**
 * A part of a file that is kept as it stands.
 *
 * @param tree maps, lists, texts, numbers and truth values
 */
public record Raw(Object tree) {
  /**
   * The tree of a JSON text.
   *
   * @throws IllegalArgumentException if it is none
   */
  public static Raw of(String json) {
    return JsonFile.read(json, new Problems("text"))
        .map(node -> new Raw(NodeTree.of(node)))
        .orElseThrow(() -> new IllegalArgumentException("not JSON: " + PlainText.shown(json)));
  }

  /** The tree as a text. */
  public String json() {
    return JsonText.of(tree);
  }
}
