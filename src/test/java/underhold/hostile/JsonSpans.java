package underhold.hostile;

import java.util.ArrayList;
import java.util.List;

/**
 * Where the values and entries of a sound JSON text stand, so that one of them can be changed and
 * the rest left as it is.
 *
 * @param values values of any kind, the outermost last
 * @param members entries of objects with their names, without commas
 * @param names names of entries, with their quotation marks
 */
record JsonSpans(List<Span> values, List<Span> members, List<Span> names) {
  /** From a character to the one after the last. */
  record Span(int from, int to) {
    String of(String text) {
      return text.substring(from, to);
    }
  }

  /** The spans of a text; none where it is no JSON. */
  static JsonSpans of(String text) {
    Scanner scanner = new Scanner(text);
    scanner.value();
    return new JsonSpans(scanner.values, scanner.members, scanner.names);
  }

  /** Reads only what sound files hold: the seeds are our own. */
  private static final class Scanner {
    private final String text;
    private final List<Span> values = new ArrayList<>();
    private final List<Span> members = new ArrayList<>();
    private final List<Span> names = new ArrayList<>();
    private int at;

    Scanner(String text) {
      this.text = text;
    }

    void value() {
      blank();
      if (at >= text.length()) {
        return;
      }
      int from = at;
      switch (text.charAt(at)) {
        case '{' -> object();
        case '[' -> list();
        case '"' -> string();
        default -> word();
      }
      values.add(new Span(from, at));
    }

    private void object() {
      at++;
      blank();
      while (at < text.length() && text.charAt(at) != '}') {
        int from = at;
        string();
        names.add(new Span(from, at));
        blank();
        at++;
        value();
        members.add(new Span(from, at));
        comma();
      }
      at = Math.min(text.length(), at + 1);
    }

    private void list() {
      at++;
      blank();
      while (at < text.length() && text.charAt(at) != ']') {
        value();
        comma();
      }
      at = Math.min(text.length(), at + 1);
    }

    private void comma() {
      blank();
      if (at < text.length() && text.charAt(at) == ',') {
        at++;
        blank();
      }
    }

    private void string() {
      at++;
      while (at < text.length() && text.charAt(at) != '"') {
        at += text.charAt(at) == '\\' ? 2 : 1;
      }
      at = Math.min(text.length(), at + 1);
    }

    private void word() {
      int from = at;
      while (at < text.length() && "{}[],:\" \n\r\t".indexOf(text.charAt(at)) < 0) {
        at++;
      }
      at = Math.max(at, from + 1);
    }

    private void blank() {
      while (at < text.length() && Character.isWhitespace(text.charAt(at))) {
        at++;
      }
    }
  }
}
