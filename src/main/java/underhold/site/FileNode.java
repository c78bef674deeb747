package underhold.site;

import java.util.List;

/**
 * A value in a JSON file and where it stands.
 *
 * @param kind what sort of value
 * @param text a text's characters, a number as written, {@code true}, {@code false}, {@code null};
 *     empty for objects and lists
 * @param members the entries of an object in their order, doubles included
 * @param items the items of a list
 * @param line line in the file, from 1
 * @param column column in the file, from 1
 */
public record FileNode(
    Kind kind, String text, List<Member> members, List<FileNode> items, int line, int column) {

  /** What sort of value. */
  public enum Kind {
    OBJECT("an object in { }"),
    LIST("a list in [ ]"),
    TEXT("a text in \"quotation marks\""),
    NUMBER("a number"),
    BOOLEAN("true or false"),
    NULL("null");

    private final String phrase;

    Kind(String phrase) {
      this.phrase = phrase;
    }

    String phrase() {
      return phrase;
    }
  }

  /** An entry of an object. */
  public record Member(String name, FileNode value, int line, int column) {}

  /** What was typed, for messages. */
  String typed() {
    return switch (kind) {
      case OBJECT -> "{…}";
      case LIST -> "[…]";
      default -> PlainText.shown(text);
    };
  }
}
