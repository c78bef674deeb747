package underhold.report.dossier;

import underhold.consult.ZoneAdvice;

/**
 * A zone in a package.
 *
 * @param number its place in the site, from 1
 * @param advice what was advised of it
 */
record ZonePart(int number, ZoneAdvice advice) {
  /** The name that the user gave it. */
  String name() {
    return advice.name();
  }
}
