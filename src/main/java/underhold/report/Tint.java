package underhold.report;

/** A hint of colour. The words always say the same without it. */
public enum Tint {
  NONE(""),
  STRONG("1"),
  GOOD("32"),
  OPEN("33"),
  BAD("31"),
  QUIET("2");

  private static final String ESCAPE = "\u001B[";

  private final String code;

  Tint(String code) {
    this.code = code;
  }

  /** The text in this tint where colour is wanted, else the bare text. */
  String on(String text, Look look) {
    return !look.colour() || this == NONE || text.isBlank()
        ? text
        : ESCAPE + code + 'm' + text + ESCAPE + "0m";
  }
}
