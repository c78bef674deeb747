package underhold.advice;

import underhold.site.PlainText;

/** Small things done to texts. */
final class Texts {
  private static final int SHORT = 40;

  private Texts() {}

  /** The text, cut where it is long and safe to print, for a message. */
  static String shorten(String text) {
    return PlainText.shown(text.length() <= SHORT ? text : text.substring(0, SHORT - 1) + "…");
  }

  /** A word of the dictionary as prose: {@code stiff-clay} as {@code stiff clay}. */
  static String prose(String word) {
    return word.replace('-', ' ');
  }

  /** The text with a capital letter first. */
  static String sentence(String text) {
    return text.isEmpty() ? text : Character.toUpperCase(text.charAt(0)) + text.substring(1);
  }
}
