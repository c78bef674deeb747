package underhold.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import underhold.advice.Rule;
import underhold.advice.RulePack;
import underhold.advice.SupportOption;
import underhold.consult.turning.Change;
import underhold.consult.turning.Goal;
import underhold.consult.turning.TurningPoint;
import underhold.consult.turning.TurningPoints;
import underhold.quantity.Quantity;

/** The turning points of the zones of a site, for programs. */
public final class TurningJson {
  private TurningJson() {}

  /** The turning points zone by zone, by the name of the zone. */
  public static Object of(String site, Map<String, TurningPoints> zones, RulePack pack) {
    List<Object> trees = new ArrayList<>();
    zones.forEach((zone, points) -> trees.add(zone(zone, points)));
    return Json.object(
        "site", Json.object("name", site),
        "program", Json.object("name", Program.NAME, "version", Program.version()),
        "rulePack", AdviceJson.rulePack(pack),
        "caution", Program.CAUTION,
        "zones", trees);
  }

  private static Map<String, Object> zone(String zone, TurningPoints points) {
    Goal goal = points.goal();
    return Json.object(
        "name", zone,
        "leader", leader(points.base().leader().orElse(null)),
        "for", goal == null ? null : goal.option().id(),
        "singleChangesTried", points.tried(),
        "complete", points.complete(),
        "turningPoints", points.all().stream().map(TurningJson::point).toList());
  }

  static Map<String, Object> point(TurningPoint point) {
    return Json.object(
        "leader", leader(point.after().leader().orElse(null)),
        "tiedWith", point.after().leaders().stream().skip(1).map(SupportOption::id).toList(),
        "changes", point.changes().stream().map(TurningJson::change).toList(),
        "gained", point.gained().stream().map(Rule::id).toList(),
        "lost", point.lost().stream().map(Rule::id).toList(),
        "follows",
            point.follows().stream()
                .map(fact -> Json.object("fact", fact.name(), "value", fact.text()))
                .toList());
  }

  private static Map<String, Object> change(Change change) {
    return Json.object(
        "fact", change.fact().name(),
        "was", change.open() ? null : change.was().text(),
        "origin", change.was().origin().word(),
        "tried", change.tried().text(),
        "from", text(change.from()),
        "fromIncluded", change.atFrom(),
        "to", text(change.to()),
        "toIncluded", change.atTo());
  }

  private static @Nullable String text(@Nullable Quantity quantity) {
    return quantity == null ? null : quantity.text();
  }

  private static @Nullable String leader(@Nullable SupportOption option) {
    return option == null ? null : option.id();
  }
}
