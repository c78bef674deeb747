package underhold.report.markdown;

import java.util.regex.Pattern;

/**
 * Words as Markdown that shows just those words. What a user typed may hold any sign of Markdown or
 * HTML; none of them does anything.
 */
final class Escape {
  private static final String SIGNS = "\\`*_[]<>|~&$#";

  /** What makes a link of words without any sign of its own. */
  private static final Pattern LINKING = Pattern.compile("://|@|(?i)(?<=www)\\.");

  /** What begins a list, a heading or a line under a heading where it stands first. */
  private static final Pattern FIRST = Pattern.compile("^(\\s*)([-+=:]|\\d{1,9}(?=[.)]))");

  private static final Pattern UNTYPEABLE = Pattern.compile("[`|\\\\]|^\\s|\\s$|^$");

  private Escape() {}

  /** The words, to stand anywhere in a line. */
  static String words(String text) {
    StringBuilder escaped = new StringBuilder(text.length() + 16);
    for (int i = 0; i < text.length(); i++) {
      char sign = text.charAt(i);
      if (SIGNS.indexOf(sign) >= 0) {
        escaped.append('\\');
      }
      escaped.append(sign);
    }
    return LINKING.matcher(escaped).replaceAll(found -> "\\\\" + found.group());
  }

  /** The escaped words of a line, which begin nothing but a paragraph. */
  static String first(String line) {
    var found = FIRST.matcher(line);
    if (!found.find()) {
      return line;
    }
    String sign = found.group(2);
    boolean number = Character.isDigit(sign.charAt(0));
    String safe = number ? sign + "\\" : "\\" + sign;
    return safe + line.substring(found.end());
  }

  /** Words set as they are typed: in code where code can hold them, else as words. */
  static String typed(String text) {
    return UNTYPEABLE.matcher(text).find() ? words(text) : "`" + text + "`";
  }

  /** A fence that none of the lines can close. */
  static String fence(Iterable<String> lines) {
    int longest = 2;
    for (String line : lines) {
      int run = 0;
      for (int i = 0; i < line.length(); i++) {
        run = line.charAt(i) == '`' ? run + 1 : 0;
        longest = Math.max(longest, run);
      }
    }
    return "`".repeat(longest + 1);
  }
}
