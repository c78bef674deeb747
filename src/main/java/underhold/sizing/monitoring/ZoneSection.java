package underhold.sizing.monitoring;

import static underhold.sizing.monitoring.MonitoringInputs.*;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import underhold.mechanics.movement.InfluenceRule;
import underhold.sizing.Amount;
import underhold.sizing.Phrase;
import underhold.sizing.SheetBuilder;
import underhold.sizing.StepBuilder;

/** Zones of influence by each published rule, side by side, and whether this element is inside. */
final class ZoneSection {
  private final MonitoringCase site;
  private final SheetBuilder sheet;
  private final List<String> inside = new ArrayList<>();
  private final List<String> outside = new ArrayList<>();
  private double widest;

  private ZoneSection(MonitoringCase site, SheetBuilder sheet) {
    this.site = site;
    this.sheet = sheet;
  }

  static void write(MonitoringCase site, SheetBuilder sheet) {
    if (!site.digs()) {
      sheet.notCovered("Zones of influence: no excavation is stated at this element.");
      return;
    }
    ZoneSection section = new ZoneSection(site, sheet);
    for (InfluenceRule rule : InfluenceRule.values()) {
      section.rule(rule);
    }
    section.verdict();
  }

  private void rule(InfluenceRule rule) {
    boolean wallFirst = rule == InfluenceRule.BERM && !site.get(WALL).equals("none");
    if (wallFirst || rule.reachMetres(site.excavation()).value().isEmpty()) {
      return;
    }
    double reach = rule.reachMetres(site.excavation()).orThrow();
    boolean in = rule.inside(site.excavation()).orThrow();
    StepBuilder step =
        sheet
            .step("zone-" + name(rule), "Reach by: " + rule.title(), formula(rule))
            .from(Sources.of(rule.citation()))
            .note(
                Phrase.of(
                    "Made for: %s. At {g} the element is %s%s."
                        .formatted(
                            rule.purpose(),
                            in ? "inside" : "outside",
                            rule.forExcavations() ? "" : "; for comparison only"),
                    "g",
                    site.amount(GAP)));
    symbols(rule, step).gives(Amount.length(reach));
    if (rule.forExcavations()) {
      (in ? inside : outside).add(rule.title());
      widest = Math.max(widest, reach);
    }
  }

  private String formula(InfluenceRule rule) {
    return switch (rule) {
      case STRESS_OVERLAP -> "R = tan(30) × max({De}, 0)";
      case FORTY_FIVE_DEGREES, CLEARANCE_AS_DEPTH, ONE_ON_ONE -> "R = max({De}, 0)";
      case ONE_ON_ONE_AND_A_HALF -> "R = 1.5 × max({De}, 0)";
      case TEN_ON_SIX -> "R = 10 / 6 × max({De}, 0)";
      case ONE_ON_TWO, FIRM_GROUND_1914 -> "R = 2 × max({De}, 0)";
      case BERM -> bermReaches() ? "R = {b} + 2 × ({De} + {hb})" : "R = 0 × {De}";
      case MONITORING_DEPTH -> ringReaches() ? "R = {Dx}" : "R = 0 × {Dx}";
      case MONITORING_HISTORIC -> "R = {Rh}";
    };
  }

  private StepBuilder symbols(InfluenceRule rule, StepBuilder step) {
    return switch (rule) {
      case BERM -> {
        step.with("De", "excavation below the footing", site.amount(BELOW));
        yield bermReaches()
            ? step.with("b", "width of the berm", Amount.length(InfluenceRule.BERM_WIDTH_METRES))
                .with(
                    "hb",
                    "its top above the underside of the footing",
                    Amount.length(InfluenceRule.BERM_ABOVE_FOOTING_METRES))
            : step;
      }
      case MONITORING_DEPTH -> step.with("Dx", "depth of the excavation", site.amount(DEPTH));
      case MONITORING_HISTORIC ->
          step.with(
              "Rh",
              "distance of the code, 90 ft",
              Amount.length(rule.reachMetres(site.excavation()).orThrow()));
      default -> step.with("De", "excavation below the footing", site.amount(BELOW));
    };
  }

  private boolean bermReaches() {
    return InfluenceRule.BERM.reachMetres(site.excavation()).orThrow() > 0;
  }

  private boolean ringReaches() {
    return InfluenceRule.MONITORING_DEPTH.reachMetres(site.excavation()).orThrow() > 0;
  }

  private void verdict() {
    String words =
        "Inside by: %s. Outside by: %s. Negative or nothing is inside by the widest rule, which serves as the screen."
            .formatted(list(inside), list(outside));
    sheet
        .step("in-zone", "Distance of the element from the widest zone", "m = {g} - {R}")
        .with("g", "gap to the excavation", site.amount(GAP))
        .with("R", "reach by the widest of the rules above for excavations", Amount.length(widest))
        .note(words + skipped())
        .gives(Amount.length(site.get(GAP) - widest));
  }

  private String skipped() {
    StringBuilder words = new StringBuilder();
    if (site.get(BELOW) > InfluenceRule.BERM_DEEPEST_METRES && site.get(WALL).equals("none")) {
      words.append(" The berm rule ends at 4 m below the footing: a wall is needed.");
    }
    if (!site.get(WALL).equals("none")) {
      words.append(" The berm rule is for faces without a wall.");
    }
    return words.toString();
  }

  private static String list(List<String> names) {
    return names.isEmpty() ? "none" : String.join("; ", names);
  }

  private static String name(InfluenceRule rule) {
    return rule.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
