package underhold.advice;

import java.util.ArrayList;
import java.util.List;
import underhold.site.PlainText;

/** The words of a rule file with their lines; comments left out. */
final class RuleTokens {
  /** What a token is. */
  enum Kind {
    NAME,
    TEXT,
    SIGN,
    /** What no rule file may hold; the text says why. */
    WRONG,
    END
  }

  /** One token; the text of a string without its quotes. */
  record Token(Kind kind, String text, int line) {}

  /** What no rule file may hold. */
  static final class NotReadable extends Exception {
    private static final long serialVersionUID = 1L;
    final int line;

    NotReadable(int line, String message) {
      super(message, null, false, false);
      this.line = line;
    }
  }

  private static final String SIGNS = "(){},;@=<>";
  private static final int LONGEST_TEXT = 2000;

  private final String text;
  private int at;
  private int line = 1;

  private RuleTokens(String text) {
    this.text = text;
  }

  /** The tokens; what has no place in a rule file is a token too, so that reading can go on. */
  static List<Token> of(String text) {
    return new RuleTokens(text).read();
  }

  private List<Token> read() {
    List<Token> tokens = new ArrayList<>();
    while (at < text.length()) {
      char c = text.charAt(at);
      if (c == '\n') {
        line++;
        at++;
      } else if (c == ' ' || c == '\t' || endsLine(c)) {
        at++;
      } else if (text.startsWith("//", at)) {
        comment(tokens);
      } else if (c == '"') {
        tokens.add(string());
      } else if (isNamePart(c)) {
        tokens.add(name());
      } else if (SIGNS.indexOf(c) >= 0) {
        tokens.add(sign());
      } else {
        at = lineEnd();
        tokens.add(wrong("the character " + printable(c) + " has no place in a rule file"));
      }
    }
    tokens.add(new Token(Kind.END, "", line));
    return tokens;
  }

  /** A carriage return is the first half of a line end, and nothing else. */
  private boolean endsLine(char c) {
    return c == '\r' && text.startsWith("\n", at + 1);
  }

  private Token wrong(String why) {
    return new Token(Kind.WRONG, why, line);
  }

  private int lineEnd() {
    int end = text.indexOf('\n', at);
    return end < 0 ? text.length() : end;
  }

  /**
   * A comment ends with its line. What other readers take for the end of a line, or what turns the
   * direction of writing, could show a reader another text than the one that counts.
   */
  private void comment(List<Token> tokens) {
    int end = lineEnd();
    String comment = text.substring(at, end);
    if (comment.endsWith("\r")) {
      comment = comment.substring(0, comment.length() - 1);
    }
    if (comment.codePoints().anyMatch(point -> point != '\t' && PlainText.isUnsafe(point))) {
      tokens.add(wrong("a comment holds a control character, or one that turns the writing"));
    }
    at = end;
  }

  private Token string() {
    int start = at + 1;
    int end = start;
    while (end < text.length() && text.charAt(end) != '"' && text.charAt(end) != '\n') {
      end++;
    }
    if (end == text.length() || text.charAt(end) == '\n') {
      at = end;
      return wrong("a text is not closed; it holds no line break");
    }
    String string = text.substring(start, end);
    at = end + 1;
    if (string.indexOf('\\') >= 0 || string.codePoints().anyMatch(PlainText::isUnsafe)) {
      return wrong(
          "a text holds no backslash, no tab or other control character, and none that turns the"
              + " writing");
    }
    return string.length() > LONGEST_TEXT
        ? wrong("a text has at most " + LONGEST_TEXT + " characters, not " + string.length())
        : new Token(Kind.TEXT, string, line);
  }

  private Token name() {
    int start = at;
    while (at < text.length() && isNamePart(text.charAt(at))) {
      at++;
    }
    return new Token(Kind.NAME, text.substring(start, at), line);
  }

  private Token sign() {
    boolean two =
        at + 1 < text.length() && text.charAt(at + 1) == '=' && "=<>".indexOf(text.charAt(at)) >= 0;
    String sign = text.substring(at, at + (two ? 2 : 1));
    at += sign.length();
    return new Token(Kind.SIGN, sign, line);
  }

  private static boolean isNamePart(char c) {
    return (c >= 'a' && c <= 'z')
        || (c >= 'A' && c <= 'Z')
        || (c >= '0' && c <= '9')
        || c == '_'
        || c == '.'
        || c == '-';
  }

  private static String printable(char c) {
    return c < ' ' || c > '~' ? String.format("U+%04X", (int) c) : "'" + c + "'";
  }
}
