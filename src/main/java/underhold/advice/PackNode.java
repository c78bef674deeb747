package underhold.advice;

import java.util.List;
import java.util.Map;

/**
 * A piece of a table of a rule pack, with the line it stands on.
 *
 * @param kind what it is
 * @param text a text, or a number or a truth as written; else empty
 * @param members what an object holds, by name; else empty
 * @param items what a list holds; else empty
 * @param line its line, from 1
 */
record PackNode(
    Kind kind, String text, Map<String, PackNode> members, List<PackNode> items, int line) {

  /** What JSON knows. */
  enum Kind {
    OBJECT("an object in braces"),
    LIST("a list in brackets"),
    TEXT("a text in quotation marks"),
    NUMBER("a number"),
    TRUTH("true or false"),
    NULL("null");

    private final String phrase;

    Kind(String phrase) {
      this.phrase = phrase;
    }

    String phrase() {
      return phrase;
    }
  }

  /** An object without members, where a small pack leaves a table out. */
  static PackNode none() {
    return new PackNode(Kind.OBJECT, "", Map.of(), List.of(), 0);
  }
}
