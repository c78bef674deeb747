package underhold.review.saved;

import java.util.List;
import underhold.advice.RuleEngine;
import underhold.consult.Consultation;
import underhold.consult.scheme.SchemeDesk;
import underhold.consult.scheme.SchemeOutcome;
import underhold.consult.stage.PlanSettings;
import underhold.consult.stage.StagePlanner;
import underhold.quantity.UnitSystem;
import underhold.review.file.Raw;
import underhold.site.SiteWriter;

/** Makes what is saved of a consultation. */
public final class AdviceSaver {
  private final SchemeDesk schemes;

  /** Saves consultations; the engine judges pairs of zones. */
  public AdviceSaver(RuleEngine engine) {
    this.schemes = new SchemeDesk(engine);
  }

  /**
   * The consultation with its scheme and plan, sealed.
   *
   * @param answer the answer to every zone of its site
   * @throws IllegalArgumentException if zones are left out: a plan of a part could mislead
   */
  public SavedAdvice save(Consultation answer, SavedMaking made) {
    if (answer.zones().size() != answer.site().zones().size()) {
      throw new IllegalArgumentException("a consultation is saved with all its zones");
    }
    UnitSystem units = answer.site().units();
    SchemeOutcome scheme = schemes.scheme(answer);
    return new SavedAdvice(
            SavedAdvice.FORM,
            made,
            units.name(),
            PackDigest.of(answer.pack()),
            Raw.of(SiteWriter.toText(answer.site())),
            answer.zones().stream().map(zone -> SavedZone.of(zone, units)).toList(),
            SavedScheme.of(scheme),
            plan(scheme, units),
            "")
        .sealed();
  }

  private static SavedPlan plan(SchemeOutcome outcome, UnitSystem units) {
    if (outcome instanceof SchemeOutcome.NotMade none) {
      return SavedPlan.none(List.of(none.reason()));
    }
    return SavedPlan.of(
        StagePlanner.plan(((SchemeOutcome.Made) outcome).scheme(), PlanSettings.TABLE.defaults()),
        units);
  }
}
