package underhold.shell;

import java.util.Optional;
import underhold.advice.SupportOption;
import underhold.consult.ZoneAdvice;
import underhold.report.Look;
import underhold.site.Site;

/** Where calculation sheets come from. */
@FunctionalInterface
interface Sheets {
  /** No option has a sheet. */
  Sheets NONE = (option, site, zone) -> Optional.empty();

  /** The sheet of an option for a zone; empty where the program has none for that option. */
  Optional<SheetView> of(SupportOption option, Site site, ZoneAdvice zone);

  /** A sheet that can be shown. */
  interface SheetView {
    String text(Look look);

    Object tree();
  }
}
