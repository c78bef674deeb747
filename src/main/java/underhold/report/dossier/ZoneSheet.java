package underhold.report.dossier;

import underhold.advice.SupportOption;
import underhold.sizing.Sheet;

/**
 * The calculation sheet of an option in a zone.
 *
 * @param zone the place of the zone in the site, from 1
 * @param option the option
 * @param sheet its sheet
 */
public record ZoneSheet(int zone, SupportOption option, Sheet sheet) {

  /** Its anchor. */
  String anchor() {
    return Anchor.sheet(zone, option);
  }

  /** The anchor of something on it. */
  String anchor(String kind, String name) {
    return Anchor.of(kind, zone, option.id(), name);
  }
}
