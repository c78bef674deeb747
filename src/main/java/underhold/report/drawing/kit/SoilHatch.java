package underhold.report.drawing.kit;

import java.util.Locale;

/** The hatch of a soil class, by the words of the fact {@code soilAtFooting}. */
public final class SoilHatch {
  private SoilHatch() {}

  /** The hatch; that of unknown ground for a word it does not know. */
  public static Hatch of(String soil) {
    String word = soil.toLowerCase(Locale.ROOT);
    if (word.contains("fill")) {
      return Hatch.FILL;
    }
    if (word.contains("rock")) {
      return Hatch.ROCK;
    }
    if (word.contains("organic") || word.contains("peat")) {
      return Hatch.ORGANIC;
    }
    if (word.contains("clay") || word.contains("till")) {
      return Hatch.CLAY;
    }
    if (word.contains("silt")) {
      return Hatch.SILT;
    }
    if (word.contains("gravel") || word.contains("boulder")) {
      return Hatch.GRAVEL;
    }
    return word.contains("sand") ? Hatch.SAND : Hatch.UNKNOWN;
  }
}
