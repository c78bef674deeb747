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
 * @param sheets which calculation sheets are set whole
 * @param review the review that goes with it, if any
 */
public record Commission(
    Audience audience,
    LocalDate date,
    List<String> settings,
    Optional<String> only,
    WhichSheets sheets,
    Optional<Reviewing> review) {
  public Commission {
    settings = List.copyOf(settings);
  }

  /** The whole site, with no setting but its own, every sheet whole, no review. */
  public static Commission of(Audience audience, LocalDate date) {
    return new Commission(
        audience, date, List.of(), Optional.empty(), WhichSheets.ALL, Optional.empty());
  }

  /** The same with these sheets set whole. */
  public Commission with(WhichSheets which) {
    return new Commission(audience, date, settings, only, which, review);
  }

  /** The same with a review. */
  public Commission with(Reviewing reviewing) {
    return new Commission(audience, date, settings, only, sheets, Optional.of(reviewing));
  }
}
