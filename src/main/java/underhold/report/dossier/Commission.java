package underhold.report.dossier;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * What kind of package is asked for.
 *
 * @param audience whom it is for
 * @param date the date on its cover
 * @param settings settings given for it beside those of the site file, as typed
 * @param only the one zone it is about; empty where it is about the whole site
 */
public record Commission(
    Audience audience, LocalDate date, List<String> settings, Optional<String> only) {
  public Commission {
    settings = List.copyOf(settings);
  }

  /** The whole site, with no setting but its own. */
  public static Commission of(Audience audience, LocalDate date) {
    return new Commission(audience, date, List.of(), Optional.empty());
  }
}
