package underhold.report.drawing;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import underhold.advice.SupportOption;
import underhold.consult.Consultation;
import underhold.consult.ZoneAdvice;
import underhold.consult.scheme.SchemeDesk;
import underhold.consult.scheme.SchemeOutcome;
import underhold.consult.stage.PlanOutcome;
import underhold.consult.stage.PlanSettings;
import underhold.consult.stage.StagePlan;
import underhold.consult.stage.StagePlanner;
import underhold.quantity.UnitSystem;
import underhold.report.drawing.bracket.BracketDetail;
import underhold.report.drawing.bracket.BracketSection;
import underhold.report.drawing.chart.BondChart;
import underhold.report.drawing.chart.CheckChart;
import underhold.report.drawing.chart.FirmnessChart;
import underhold.report.drawing.chart.LoadSettlementChart;
import underhold.report.drawing.chart.MovementChart;
import underhold.report.drawing.chart.PileResistanceChart;
import underhold.report.drawing.chart.RankingChart;
import underhold.report.drawing.chart.StageChart;
import underhold.report.drawing.edgepits.EdgeWallSection;
import underhold.report.drawing.monitoring.InfluenceSection;
import underhold.report.drawing.piles.PileElevation;
import underhold.report.drawing.piles.PilePlan;
import underhold.site.Site;
import underhold.sizing.Sheet;

/** Every chart and every drawing of piles, brackets, edge pits and watching. */
final class MoreDrawings {
  private static final Map<ZoneAdvice, Map<SupportOption, Optional<Sheet>>> SHEETS =
      new IdentityHashMap<>();
  private static final Map<Consultation, Optional<StagePlan>> PLANS = new IdentityHashMap<>();

  private MoreDrawings() {}

  /** The sheet of an option, sized once. */
  private static Optional<Sheet> sheet(
      Consultation advised, ZoneAdvice zone, SupportOption option) {
    return SHEETS
        .computeIfAbsent(zone, key -> new EnumMap<>(SupportOption.class))
        .computeIfAbsent(option, key -> DemoDrawings.sheet(advised, zone, option));
  }

  /** All of one consultation, each with an id of its own. */
  static List<Drawn> all(Consultation advised, UnitSystem units) {
    List<Drawn> drawn = new ArrayList<>();
    int number = 0;
    for (ZoneAdvice zone : advised.zones()) {
      String id = "z" + ++number + "-";
      drawn.add(Drawn.of(RankingChart.of(zone, advised.pack(), id + "ranking")));
      FirmnessChart.of(zone, id + "firmness").ifPresent(figure -> drawn.add(Drawn.of(figure)));
      for (SupportOption option : SupportOption.values()) {
        sheet(advised, zone, option)
            .ifPresent(
                sheet -> drawn.addAll(of(advised.site(), zone.name(), option, sheet, units, id)));
      }
    }
    plan(advised).ifPresent(plan -> drawn.add(Drawn.of(StageChart.of(plan, "stages"))));
    return drawn;
  }

  static List<Drawn> of(
      Site site, String zone, SupportOption option, Sheet sheet, UnitSystem units, String id) {
    List<Drawn> drawn = new ArrayList<>();
    drawn.add(CheckChart.of(sheet, zone, units, id + option.id() + "-checks"));
    switch (option) {
      case DRILLED_PILES -> {
        drawn.add(LoadSettlementChart.of(sheet, zone, units, id + "curve"));
        drawn.add(PileResistanceChart.of(site, zone, sheet, units, id + "resistance"));
        drawn.add(PilePlan.of(zone, sheet, units, id + "plan"));
        drawn.add(PileElevation.of(site, zone, sheet, units, id + "pile"));
      }
      case BRACKET_PILES -> {
        drawn.add(BondChart.of(site, zone, sheet, units, id + "bond"));
        drawn.add(BracketSection.of(site, zone, sheet, units, id + "bracket"));
        drawn.add(BracketDetail.of(zone, sheet, units, id + "detail"));
      }
      case EDGE_PITS -> drawn.add(EdgeWallSection.of(site, zone, sheet, units, id + "edge"));
      case MONITOR -> {
        drawn.add(InfluenceSection.of(site, zone, sheet, units, id + "reach"));
        drawn.add(MovementChart.of(zone, sheet, units, id + "movement"));
      }
      default -> {}
    }
    return drawn;
  }

  static Optional<StagePlan> plan(Consultation advised) {
    return PLANS.computeIfAbsent(advised, MoreDrawings::planned);
  }

  private static Optional<StagePlan> planned(Consultation advised) {
    SchemeOutcome outcome = SchemeDesk.of(advised.pack()).scheme(advised);
    if (outcome instanceof SchemeOutcome.Made made
        && StagePlanner.plan(made.scheme(), PlanSettings.TABLE.defaults())
            instanceof PlanOutcome.Made plan) {
      return Optional.of(plan.plan());
    }
    return Optional.empty();
  }
}
