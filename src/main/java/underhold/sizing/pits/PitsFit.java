package underhold.sizing.pits;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import underhold.sizing.MissingInput;
import underhold.sizing.zone.SiteFacts;

/** Whether the sheet for pits under a wall fits a zone at all. */
final class PitsFit {
  private static final Set<String> FOUNDATIONS = Set.of("strip", "mass-rubble");

  private final SiteFacts facts;
  private final List<MissingInput> problems = new ArrayList<>();
  private boolean holds = true;

  private PitsFit(SiteFacts facts) {
    this.facts = facts;
  }

  /** Looks at a zone. */
  static PitsFit of(SiteFacts facts, SiteDepths depths) {
    PitsFit fit = new PitsFit(facts);
    fit.need(
        "loadPattern",
        Set.of("continuous"),
        "This sheet sizes pits under a wall, whose load comes down along a line. It does not hold for isolated footings, rafts, boxes or overhanging edges: nothing was sized.");
    fit.need(
        "foundationKind",
        FOUNDATIONS,
        "This sheet sizes pits under a footing that stands on soil along the wall. It does not hold for pads, rafts, boxes, piles or caissons: nothing was sized.");
    fit.depth(depths);
    return fit;
  }

  /** What must be cleared before pits can be sized; empty where the sheet fits. */
  List<MissingInput> problems() {
    return List.copyOf(problems);
  }

  /** Whether nothing known shows that the sheet does not fit: then more facts may complete it. */
  boolean holds() {
    return holds;
  }

  private void need(String fact, Set<String> fitting, String otherwise) {
    facts
        .word(fact)
        .ifPresentOrElse(
            word -> {
              if (!fitting.contains(word.value())) {
                holds = false;
                add(fact, "Here the site says: " + word.value() + ". " + otherwise);
              }
            },
            () -> add(fact, "it decides whether this sheet holds at all"));
  }

  private void depth(SiteDepths depths) {
    if (depths.pits().isPresent() || depths.excavation().isEmpty()) {
      return;
    }
    boolean bearingKnown = facts.number("bearingDepth").isPresent();
    holds &= !bearingKnown;
    add(
        "bearingDepth",
        (depths.digs()
                ? "The excavation does not go below the footing"
                : "There is no new excavation")
            + (bearingKnown
                ? " and the footing stands on good bearing: there is nothing for pits to reach."
                : ", so pits would go to good bearing, and its depth is not known."));
  }

  private void add(String fact, String why) {
    problems.add(new MissingInput(fact, facts.question(fact), why));
  }
}
