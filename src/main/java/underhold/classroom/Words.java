package underhold.classroom;

/** Small words. */
final class Words {
  private Words() {}

  /** The text with a capital at its beginning. */
  static String first(String text) {
    return text.isEmpty() ? text : Character.toUpperCase(text.charAt(0)) + text.substring(1);
  }
}
