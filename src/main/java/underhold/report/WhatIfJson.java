package underhold.report;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import underhold.advice.Finding;
import underhold.advice.Hold;
import underhold.advice.OptionAdvice;
import underhold.consult.Bearing;
import underhold.consult.Consultation;
import underhold.consult.change.ChangedFact;
import underhold.consult.change.CheckChange;
import underhold.consult.change.FactChange;
import underhold.consult.change.FindingChange;
import underhold.consult.change.OptionChange;
import underhold.consult.change.Place;
import underhold.consult.change.SheetChange;
import underhold.consult.change.SiteChange;
import underhold.consult.change.ZoneChange;
import underhold.quantity.UnitSystem;
import underhold.site.Fact;
import underhold.sizing.Check;

/** What a change of facts does to the answer, as a JSON tree. */
public final class WhatIfJson {
  private final UnitSystem units;

  private WhatIfJson(UnitSystem units) {
    this.units = units;
  }

  /** The differences, zone by zone. */
  public static Map<String, Object> of(SiteChange change) {
    WhatIfJson json = new WhatIfJson(change.trial().after().units());
    Map<String, Object> root =
        AdviceJson.head(new Consultation(change.trial().after(), change.pack(), List.of()));
    root.put("changed", change.trial().changed().stream().map(WhatIfJson::changed).toList());
    root.put(
        "leftAsTheyWere",
        change.trial().left().entrySet().stream()
            .map(left -> Json.object("fact", left.getKey().name(), "zones", left.getValue()))
            .toList());
    root.put("nothingChanges", change.nothing());
    root.put("zones", change.zones().stream().map(json::zone).toList());
    return root;
  }

  private static Map<String, Object> changed(ChangedFact one) {
    return Json.object(
        "fact", one.fact().name(),
        "label", one.fact().label(),
        "zone", one.zone().orElse(null),
        "before", one.textBefore(),
        "after", one.textAfter(),
        "already", one.already());
  }

  private Map<String, Object> zone(ZoneChange zone) {
    return Json.object(
        "name", zone.name(),
        "nothingChanges", zone.nothing(),
        "leader",
            Json.object("before", leader(zone.leaderBefore()), "after", leader(zone.leaderAfter())),
        "verdict", ChangeWords.leader(zone),
        "options", zone.options().stream().map(this::option).toList(),
        "conditions", told(zone.conditionsGained(), zone.conditionsLost()),
        "cautions", told(zone.cautionsGained(), zone.cautionsLost()),
        "facts", zone.facts().stream().map(WhatIfJson::fact).toList());
  }

  private static @Nullable String leader(Optional<OptionAdvice> advice) {
    return advice.isPresent() ? advice.get().option().id() : null;
  }

  private static Map<String, Object> told(List<Finding> gained, List<Finding> lost) {
    return Json.object("gained", findings(gained), "lost", findings(lost));
  }

  private static List<Map<String, Object>> findings(List<Finding> findings) {
    return findings.stream().map(finding -> FindingJson.of(finding, false)).toList();
  }

  private Map<String, Object> option(OptionChange option) {
    SheetChange sheet = option.sheet();
    return Json.object(
        "id", option.option().id(),
        "before", place(option.before()),
        "after", place(option.after()),
        "findings", option.findings().stream().map(WhatIfJson::finding).toList(),
        "holds",
            Json.object(
                "gained", option.holdsGained().stream().map(WhatIfJson::hold).toList(),
                "lost", option.holdsLost().stream().map(WhatIfJson::hold).toList()),
        "sheet",
            Json.object(
                "before", sheet.stateBefore().word(),
                "after", sheet.stateAfter().word(),
                "checks", sheet.checks().stream().map(this::check).toList()));
  }

  private static Map<String, Object> place(Place place) {
    return Json.object(
        "rank", place.rank().isPresent() ? place.rank().getAsInt() : null,
        "standing", place.standing().word(),
        "score", place.score(),
        "tied", place.tied());
  }

  private static Map<String, Object> finding(FindingChange change) {
    Map<String, Object> tree = FindingJson.of(change.finding(), change.after() == Bearing.COUNTS);
    tree.put("change", change.kind().word());
    tree.put("before", change.before().word());
    tree.put("after", change.after().word());
    return tree;
  }

  private static Map<String, Object> hold(Hold hold) {
    return Json.object(
        "rule", hold.rule().id(), "explanation", hold.explanation(), "ask", hold.ask());
  }

  private Map<String, Object> check(CheckChange change) {
    return Json.object(
        "check", change.check().id(),
        "title", change.check().title(),
        "before", state(change.before()),
        "after", state(change.after()));
  }

  private @Nullable Map<String, Object> state(Optional<Check> maybe) {
    if (maybe.isEmpty()) {
      return null;
    }
    Check check = maybe.get();
    return Json.object(
        "verdict", check.verdict().label(),
        "demand", check.demand().in(units),
        "capacity", check.capacity().in(units));
  }

  private static Map<String, Object> fact(FactChange change) {
    return Json.object(
        "name", change.after().name(),
        "label", change.after().definition().label(),
        "before", state(change.before()),
        "after", state(change.after()));
  }

  private static Map<String, Object> state(Fact fact) {
    return Json.object("value", fact.text(), "origin", fact.origin().word(), "how", fact.how());
  }
}
