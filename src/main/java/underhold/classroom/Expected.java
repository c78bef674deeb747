package underhold.classroom;

import java.util.Optional;
import java.util.stream.Stream;
import underhold.advice.SupportOption;

/**
 * What a case says that it teaches of a zone. It is held to the rules, and no answer is marked by
 * it.
 *
 * @param zone the zone
 * @param leader the id of the method that leads, alone or tied, once all is known; {@value
 *     #NO_METHOD} where none does
 * @param dayOne the same while only the first stage is known
 */
public record Expected(String zone, String leader, String dayOne) {
  /** The word for no choice, in files and answers. */
  public static final String NO_METHOD = "none";

  public Expected {
    Stream.of(leader, dayOne).forEach(Expected::mustBeMethod);
  }

  /** Refuses what is neither a method nor the word for none. */
  static void mustBeMethod(String typed) {
    Optional<SupportOption> option = SupportOption.find(typed);
    if (option.isEmpty() && !typed.equals(NO_METHOD)) {
      throw new IllegalArgumentException(
          "there is no method "
              + underhold.site.PlainText.quoted(typed)
              + "; there are "
              + String.join(", ", SupportOption.ids())
              + " and "
              + NO_METHOD);
    }
  }
}
