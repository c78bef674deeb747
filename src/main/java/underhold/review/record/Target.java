package underhold.review.record;

import java.util.List;
import java.util.Locale;

/**
 * A part of a saved consultation that an entry can speak of.
 *
 * @param path how it is typed
 * @param kind what it is
 * @param label what it is, in words
 * @param original what the consultation says there
 * @param present the word that an override would replace; empty where nothing can be overridden
 * @param instead the words that an override may put in its place
 */
public record Target(
    String path, Kind kind, String label, String original, String present, List<String> instead) {
  public Target {
    instead = List.copyOf(instead);
  }

  /** Kinds of parts. */
  public enum Kind {
    WHOLE,
    SCHEME,
    STAGE,
    RANKING,
    OPTION,
    FINDING,
    FACT,
    INPUT,
    STEP,
    CHECK;

    /** The word in paths. */
    public String word() {
      return name().toLowerCase(Locale.ROOT);
    }
  }
}
