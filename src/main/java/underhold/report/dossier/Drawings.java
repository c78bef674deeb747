package underhold.report.dossier;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import underhold.advice.RulePack;
import underhold.advice.SupportOption;
import underhold.consult.ZoneAdvice;
import underhold.consult.stage.StagePlan;
import underhold.quantity.UnitSystem;
import underhold.report.drawing.Drawn;
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
import underhold.report.drawing.needles.NeedleElevation;
import underhold.report.drawing.numbers.SheetNumbers;
import underhold.report.drawing.piles.PileElevation;
import underhold.report.drawing.piles.PilePlan;
import underhold.report.drawing.pits.PitPlan;
import underhold.report.drawing.pits.PitSection;
import underhold.report.drawing.section.SectionDrawing;
import underhold.site.Site;
import underhold.site.Zone;
import underhold.sizing.Sheet;

/** The drawings to scale and the charts of a package: which of them stands where. */
public final class Drawings implements Illustrations {
  private final RulePack pack;

  /** The drawings of an answer that rests on these rules. */
  public Drawings(RulePack pack) {
    this.pack = pack;
  }

  @Override
  public List<Drawn> ofZone(Site site, ZoneAdvice advice, String prefix, UnitSystem units) {
    return List.of(
        SectionDrawing.of(site, zone(site, advice), pack.limits(), units, prefix + "-section"));
  }

  @Override
  public List<Drawn> ofAdvice(ZoneAdvice advice, String prefix) {
    List<Drawn> charts = new ArrayList<>();
    charts.add(Drawn.of(RankingChart.of(advice, pack, prefix + "-ranking")));
    FirmnessChart.of(advice, prefix + "-firmness").map(Drawn::of).ifPresent(charts::add);
    return charts;
  }

  @Override
  public List<Drawn> ofSheet(
      Sheet sheet, Site site, ZoneAdvice advice, String prefix, UnitSystem units) {
    List<Drawn> drawings = new ArrayList<>(toBuild(sheet, site, advice, prefix, units));
    if (sheet.complete()) {
      drawings.add(CheckChart.of(sheet, advice.name(), units, prefix + "-checks"));
    }
    return drawings;
  }

  @Override
  public List<Drawn> toBuild(
      Sheet sheet, Site site, ZoneAdvice advice, String prefix, UnitSystem units) {
    if (!sheet.complete()) { // one reason for all of them
      return new SheetNumbers(sheet, units).refusal(List.of(), List.of()).stream().toList();
    }
    return SupportOption.find(sheet.methodId())
        .map(option -> of(option, sheet, site, advice, prefix, units))
        .orElse(List.of());
  }

  @Override
  public List<Drawn> ofPlan(StagePlan plan, String prefix) {
    return List.of(Drawn.of(StageChart.of(plan, prefix + "-gantt")));
  }

  private static List<Drawn> of(
      SupportOption option,
      Sheet sheet,
      Site site,
      ZoneAdvice advice,
      String prefix,
      UnitSystem units) {
    Zone zone = zone(site, advice);
    String name = advice.name();
    Function<String, String> id = kind -> prefix + "-" + kind;
    return switch (option) {
      case PITS ->
          List.of(
              PitPlan.of(sheet, name, units, id.apply("plan")),
              PitSection.of(site, zone, sheet, units, id.apply("section")));
      case NEEDLES -> List.of(NeedleElevation.of(site, zone, sheet, units, id.apply("elevation")));
      case DRILLED_PILES ->
          List.of(
              PilePlan.of(name, sheet, units, id.apply("plan")),
              PileElevation.of(site, name, sheet, units, id.apply("elevation")),
              PileResistanceChart.of(site, name, sheet, units, id.apply("resistance")),
              LoadSettlementChart.of(sheet, name, units, id.apply("settlement")));
      case BRACKET_PILES ->
          List.of(
              BracketSection.of(site, name, sheet, units, id.apply("section")),
              BracketDetail.of(name, sheet, units, id.apply("detail")),
              BondChart.of(site, name, sheet, units, id.apply("bond")));
      case EDGE_PITS -> List.of(EdgeWallSection.of(site, name, sheet, units, id.apply("section")));
      case MONITOR ->
          List.of(
              InfluenceSection.of(site, name, sheet, units, id.apply("influence")),
              MovementChart.of(name, sheet, units, id.apply("movement")));
      case REFER -> List.of();
    };
  }

  private static Zone zone(Site site, ZoneAdvice advice) {
    return site.zones().stream()
        .filter(zone -> zone.name().equals(advice.name()))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("no zone " + advice.name()));
  }
}
