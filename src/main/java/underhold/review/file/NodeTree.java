package underhold.review.file;

import java.util.LinkedHashMap;
import java.util.Map;
import underhold.site.FileNode;

/** The values of a file as a tree of maps and lists. */
final class NodeTree {
  private NodeTree() {}

  /** The tree; of two entries of one name the first, {@code null} as the word. */
  static Object of(FileNode node) {
    return switch (node.kind()) {
      case OBJECT -> {
        Map<String, Object> map = new LinkedHashMap<>();
        node.members().forEach(member -> map.putIfAbsent(member.name(), of(member.value())));
        yield map;
      }
      case LIST -> node.items().stream().map(NodeTree::of).toList();
      case NUMBER -> number(node.text());
      case BOOLEAN -> Boolean.valueOf(node.text());
      case TEXT, NULL -> node.text();
    };
  }

  /** Numbers beyond a double stay texts: nothing that this program writes holds any. */
  private static Object number(String text) {
    if (text.matches("-?[0-9]{1,15}")) {
      return Long.valueOf(text);
    }
    double value = Double.parseDouble(text);
    return Double.isFinite(value) ? (Object) value : text;
  }
}
