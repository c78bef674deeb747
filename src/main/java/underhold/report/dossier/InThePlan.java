package underhold.report.dossier;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import underhold.consult.stage.PlanStage;
import underhold.consult.stage.StagePlan;
import underhold.quantity.UnitSystem;
import underhold.report.document.Prose;
import underhold.sizing.HoldPoint;
import underhold.sizing.Phrase;
import underhold.sizing.Stage;

/** Where a stage of a sheet stands in the plan of the site. */
final class InThePlan {
  private final StagePlan plan;
  private final List<PlanStage> stages;
  private final UnitSystem units;

  InThePlan(StagePlan plan, Material material, ZoneSheet sheet) {
    String zone = material.zones().get(sheet.zone() - 1).name();
    this.plan = plan;
    this.units = material.units();
    this.stages =
        plan.stages().stream()
            .filter(stage -> stage.zone().equals(zone))
            .filter(stage -> stage.method().filter(sheet.option()::equals).isPresent())
            .toList();
  }

  /**
   * The stages of the plan, each leading there, that together say a stage of the sheet; empty where
   * they do not say all its work and all its hold points, word for word.
   */
  List<Prose> of(Stage stage) {
    Set<String> left = words(stage.work(), stage.holdPoints());
    List<Prose> places = new ArrayList<>();
    for (PlanStage one : stages) {
      if (left.removeAll(words(one.work(), one.holds()))) {
        int number = plan.number(one.id());
        places.add(Prose.empty().link(String.valueOf(number), Anchor.stage(number)));
      }
    }
    return left.isEmpty() ? places : List.of();
  }

  private Set<String> words(List<Phrase> work, List<HoldPoint> holds) {
    Set<String> words = new HashSet<>();
    work.forEach(one -> words.add(one.in(units)));
    holds.forEach(hold -> words.add(hold.condition().in(units) + " / " + hold.releasedBy()));
    return words;
  }
}
