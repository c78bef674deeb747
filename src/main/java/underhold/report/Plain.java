package underhold.report;

import java.nio.charset.Charset;
import java.nio.charset.CharsetEncoder;
import java.text.Normalizer;
import java.util.Map;

/** Text as an output can show it: signs it lacks are written with those it has. */
public final class Plain {
  private static final Map<Integer, String> SPELT =
      Map.ofEntries(
          Map.entry((int) '…', "..."),
          Map.entry((int) '–', "-"),
          Map.entry((int) '—', "-"),
          Map.entry((int) '−', "-"),
          Map.entry((int) '‘', "'"),
          Map.entry((int) '’', "'"),
          Map.entry((int) '“', "\""),
          Map.entry((int) '”', "\""),
          Map.entry((int) '·', "*"),
          Map.entry((int) '×', "x"),
          Map.entry((int) '≤', "<="),
          Map.entry((int) '≥', ">="),
          Map.entry((int) '≈', "about "),
          Map.entry((int) '°', " deg"),
          Map.entry((int) '²', "2"),
          Map.entry((int) '³', "3"),
          Map.entry((int) '§', "sec. "),
          Map.entry((int) 'φ', "phi"),
          Map.entry((int) 'γ', "gamma"),
          Map.entry(0x00A0, " "));

  private Plain() {}

  /** The text with every sign that the character set lacks spelt out. */
  public static String in(Charset charset, String text) {
    if (!charset.canEncode() || charset.newEncoder().canEncode(text)) {
      return text;
    }
    CharsetEncoder encoder = charset.newEncoder();
    StringBuilder plain = new StringBuilder(text.length());
    text.codePoints()
        .forEach(
            point -> {
              String sign = Character.toString(point);
              plain.append(encoder.canEncode(sign) ? sign : spelt(point, sign, encoder));
            });
    return plain.toString();
  }

  private static String spelt(int point, String sign, CharsetEncoder encoder) {
    String spelt = SPELT.get(point);
    if (spelt != null) {
      return spelt;
    }
    String bare = Normalizer.normalize(sign, Normalizer.Form.NFD).replaceAll("\\p{M}", "");
    return !bare.isEmpty() && encoder.canEncode(bare) ? bare : "?";
  }
}
