package underhold.consult.screening;

import java.util.OptionalInt;
import underhold.consult.Consultant;
import underhold.consult.ZoneAdvice;
import underhold.site.Site;
import underhold.site.Zone;

/**
 * Screens zones: ranking, findings and conditions of the whole advice, and the sheet of the leader.
 * Of the other sheets only the checks that fail are found, for no other counts in the ranking. Left
 * out are the trials of open questions and the scheme over several zones, and fewer draws tell how
 * firm the answer is. Several threads may ask at once.
 */
public final class ZoneScreen {
  /** Draws that tell a firm answer from a doubtful one, and no more: quarters. */
  public static final int USUAL_DRAWS = 4;

  private final Consultant consultant;
  private final int draws;
  private final long seed;

  /**
   * A screen.
   *
   * @param draws how many draws; 0 for none
   * @param seed the same seed gives the same draws
   */
  public ZoneScreen(Consultant consultant, int draws, long seed) {
    this.consultant = consultant;
    this.draws = draws;
    this.seed = seed;
  }

  /** The answer to one zone of a site. */
  public ScreenedZone screen(Place place, String id, Site site, Zone zone) {
    ZoneAdvice advice = consultant.screened(site, zone);
    OptionalInt stayed =
        draws == 0
            ? OptionalInt.empty()
            : OptionalInt.of(consultant.stayed(site, zone, draws, seed));
    return new ScreenedZone(place, id, advice, stayed, consultant.open(advice));
  }
}
