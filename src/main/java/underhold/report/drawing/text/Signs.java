package underhold.report.drawing.text;

import java.text.Normalizer;
import java.util.Map;

/** The signs of a sketch, and what stands for them where a terminal has only plain ASCII. */
public final class Signs {
  private static final Map<Character, Character> PLAIN =
      Map.ofEntries(
          Map.entry('─', '-'),
          Map.entry('━', '='),
          Map.entry('┄', '-'),
          Map.entry('│', '|'),
          Map.entry('┃', '|'),
          Map.entry('┆', ':'),
          Map.entry('┌', '+'),
          Map.entry('┐', '+'),
          Map.entry('└', '+'),
          Map.entry('┘', '+'),
          Map.entry('├', '+'),
          Map.entry('┤', '+'),
          Map.entry('┬', '+'),
          Map.entry('┴', '+'),
          Map.entry('┼', '+'),
          Map.entry('█', '#'),
          Map.entry('▒', '%'),
          Map.entry('░', ':'),
          Map.entry('▲', '^'),
          Map.entry('▼', 'v'),
          Map.entry('▽', 'v'),
          Map.entry('╲', '\\'),
          Map.entry('╱', '/'),
          Map.entry('≈', '~'),
          Map.entry('…', '~'),
          Map.entry('–', '-'),
          Map.entry('·', '*'),
          Map.entry('×', 'x'));

  private Signs() {}

  /** The line in plain ASCII, as long as it was: marks are dropped, what is left becomes "?". */
  public static String plain(String line) {
    StringBuilder plain = new StringBuilder(line.length());
    line.codePoints().forEach(point -> plain.append(plain(point)));
    return plain.toString();
  }

  private static char plain(int point) {
    if (point < 0x7F) {
      return (char) point;
    }
    Character known = point <= Character.MAX_VALUE ? PLAIN.get((char) point) : null;
    if (known != null) {
      return known;
    }
    int bare = Normalizer.normalize(Character.toString(point), Normalizer.Form.NFD).codePointAt(0);
    return bare < 0x7F ? (char) bare : '?';
  }
}
