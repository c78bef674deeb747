package underhold.sizing.pits;

import underhold.site.Fact;
import underhold.site.FactValue;
import underhold.site.FactView;
import underhold.site.GroundProfile;
import underhold.sizing.Given;

/** What a zone of a site says of pits. What the site does not say stays unsaid. */
public final class PitsFromSite {
  private PitsFromSite() {}

  /** The input, from the facts and the ground of the zone. */
  public static PitsInput input(FactView view, GroundProfile ground) {
    PitsInputBuilder input = PitsInput.builder();
    number(input, PitsFact.WALL_LINE_LOAD, view.fact("lineLoad"));
    number(input, PitsFact.WALL_LENGTH, view.fact("wallLength"));
    number(input, PitsFact.FOOTING_WIDTH, view.fact("footingWidth"));
    return input.build();
  }

  private static void number(PitsInputBuilder input, PitsFact target, Fact fact) {
    if (fact.origin().isKnown() && fact.value() instanceof FactValue.Amount amount) {
      input.amount(target, Given.stated(amount.quantity().si()));
    }
  }
}
