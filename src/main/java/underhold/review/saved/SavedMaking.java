package underhold.review.saved;

import java.time.Instant;
import java.time.temporal.ChronoUnit;

/**
 * How a file came about.
 *
 * @param program the name of the program that wrote it
 * @param version the version of the program
 * @param when when, to the second
 * @param caution what stands under every answer
 */
public record SavedMaking(String program, String version, Instant when, String caution) {
  public SavedMaking {
    when = when.truncatedTo(ChronoUnit.SECONDS);
  }
}
