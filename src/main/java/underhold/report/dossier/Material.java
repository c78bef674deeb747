package underhold.report.dossier;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import underhold.advice.OptionAdvice;
import underhold.advice.RulePack;
import underhold.advice.SupportOption;
import underhold.consult.Consultation;
import underhold.consult.ZoneAdvice;
import underhold.consult.scheme.Scheme;
import underhold.consult.scheme.SchemeOutcome;
import underhold.consult.stage.PlanOutcome;
import underhold.consult.stage.StagePlan;
import underhold.consult.turning.TurningPoints;
import underhold.quantity.UnitSystem;
import underhold.site.Site;

/**
 * What a package is made from: one consultation and all that follows from it.
 *
 * @param consultation the answer, zone by zone, with how firm it is
 * @param turning what would change the answer, by the name of the zone; empty where not asked for
 * @param scheme the methods of all zones together
 * @param plan the order of work; empty where there is no scheme
 * @param sheets every sheet of an option still in play, in the order of the zones and the ranking
 */
public record Material(
    Consultation consultation,
    Map<String, TurningPoints> turning,
    SchemeOutcome scheme,
    Optional<PlanOutcome> plan,
    List<ZoneSheet> sheets) {
  public Material {
    turning = Collections.unmodifiableMap(new LinkedHashMap<>(turning));
    sheets = List.copyOf(sheets);
  }

  Site site() {
    return consultation.site();
  }

  RulePack pack() {
    return consultation.pack();
  }

  public UnitSystem units() {
    return consultation.site().units();
  }

  /** The zones with their places, from 1. */
  List<ZonePart> zones() {
    List<ZonePart> parts = new ArrayList<>();
    for (ZoneAdvice advice : consultation.zones()) {
      parts.add(new ZonePart(parts.size() + 1, advice));
    }
    return parts;
  }

  /** The scheme, where one was made. */
  Optional<Scheme> madeScheme() {
    return scheme instanceof SchemeOutcome.Made made
        ? Optional.of(made.scheme())
        : Optional.empty();
  }

  /** The plan, where one holds. */
  Optional<StagePlan> madePlan() {
    return plan.filter(PlanOutcome.Made.class::isInstance)
        .map(PlanOutcome.Made.class::cast)
        .map(PlanOutcome.Made::plan);
  }

  /** The method of a zone: the scheme's choice, or what leads where there is no scheme. */
  Optional<SupportOption> method(ZonePart zone) {
    Optional<Scheme> made = madeScheme();
    return made.isPresent()
        ? made.get().best().of(zone.name()).method()
        : zone.advice().ranking().leader().map(OptionAdvice::option);
  }

  /** The sheets of a zone. */
  List<ZoneSheet> sheets(ZonePart zone) {
    return sheets.stream().filter(sheet -> sheet.zone() == zone.number()).toList();
  }

  /** The sheet of an option in a zone, if it has one. */
  Optional<ZoneSheet> sheet(ZonePart zone, SupportOption option) {
    return sheets(zone).stream().filter(sheet -> sheet.option() == option).findFirst();
  }

  /** The sheet of the method of a zone, if it has one. */
  Optional<ZoneSheet> chosen(ZonePart zone) {
    return method(zone).flatMap(option -> sheet(zone, option));
  }
}
