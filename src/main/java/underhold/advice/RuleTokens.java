package underhold.advice;

import java.util.ArrayList;
import java.util.List;

/** The words of a rule file with their lines; comments left out. */
final class RuleTokens {
  /** What a token is. */
  enum Kind {
    NAME,
    TEXT,
    SIGN,
    END
  }

  /** One token; the text of a string without its quotes. */
  record Token(Kind kind, String text, int line) {}

  /** What no rule file may hold. */
  static final class NotReadable extends Exception {
    private static final long serialVersionUID = 1L;
    final int line;

    NotReadable(int line, String message) {
      super(message);
      this.line = line;
    }
  }

  private static final String SIGNS = "(){},;@=<>";

  private final String text;
  private int at;
  private int line = 1;

  private RuleTokens(String text) {
    this.text = text;
  }

  static List<Token> of(String text) throws NotReadable {
    return new RuleTokens(text).read();
  }

  private List<Token> read() throws NotReadable {
    List<Token> tokens = new ArrayList<>();
    while (at < text.length()) {
      char c = text.charAt(at);
      if (c == '\n') {
        line++;
        at++;
      } else if (c == ' ' || c == '\t' || c == '\r') {
        at++;
      } else if (text.startsWith("//", at)) {
        skipLine();
      } else if (c == '"') {
        tokens.add(string());
      } else if (isNamePart(c)) {
        tokens.add(name());
      } else if (SIGNS.indexOf(c) >= 0) {
        tokens.add(sign());
      } else {
        throw new NotReadable(
            line, "the character " + printable(c) + " has no place in a rule file");
      }
    }
    tokens.add(new Token(Kind.END, "", line));
    return tokens;
  }

  private void skipLine() {
    int end = text.indexOf('\n', at);
    at = end < 0 ? text.length() : end;
  }

  private Token string() throws NotReadable {
    int start = at + 1;
    int end = start;
    while (end < text.length() && text.charAt(end) != '"') {
      char c = text.charAt(end);
      if (c == '\\' || c < ' ') {
        throw new NotReadable(line, "a text holds no backslash, tab or line break");
      }
      end++;
    }
    if (end >= text.length()) {
      throw new NotReadable(line, "a text is not closed");
    }
    at = end + 1;
    return new Token(Kind.TEXT, text.substring(start, end), line);
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
    return c < ' ' ? String.format("U+%04X", (int) c) : "'" + c + "'";
  }
}
