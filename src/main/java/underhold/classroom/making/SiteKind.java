package underhold.classroom.making;

import java.util.Set;
import underhold.advice.SupportOption;

/**
 * A kind of site as the trade knows it: a structure, a dig beside or below it, and ranges of all
 * that goes with them. Ranges are judgement.
 */
interface SiteKind {
  /** Its name in messages and tables. */
  String name();

  /** The methods that can lead there, to look for them where they are. */
  Set<SupportOption> leaders();

  /** A site of that kind. */
  Sketch draw(Draw draw);
}
