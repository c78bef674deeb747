package underhold.report.drawing.chart;

import static underhold.report.drawing.numbers.SheetNumbers.si;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import underhold.quantity.UnitSystem;
import underhold.report.drawing.Drawn;
import underhold.report.drawing.chart.DepthChart.Level;
import underhold.report.drawing.chart.DepthChart.Piece;
import underhold.report.drawing.ground.Strata;
import underhold.report.drawing.kit.Pen;
import underhold.report.drawing.numbers.SheetNumbers;
import underhold.site.Site;
import underhold.sizing.Amount;
import underhold.sizing.Sheet;

/** Ultimate side resistance of one drilled pile over depth, piece by piece, with its base. */
public final class PileResistanceChart {
  private PileResistanceChart() {}

  /**
   * The chart, or why there is none.
   *
   * @param site the site, for the layers
   * @param zone the zone's name
   * @param sheet the sheet of drilled piles
   * @param units in which it is read
   * @param id the figure's id
   */
  public static Drawn of(Site site, String zone, Sheet sheet, UnitSystem units, String id) {
    SheetNumbers numbers = new SheetNumbers(sheet, units);
    return numbers
        .refusal(List.of("dug-level", "embedment", "side-total"), List.of("founding-depth"))
        .or(
            () ->
                pieces(numbers).isEmpty()
                    ? numbers.withheld("it counts no side resistance at all")
                    : Optional.empty())
        .orElseGet(() -> draw(site, zone, numbers, id));
  }

  private static List<Piece> pieces(SheetNumbers numbers) {
    List<Piece> pieces = new ArrayList<>();
    for (int i = 1; numbers.result("side-" + i).isPresent(); i++) {
      String step = "side-" + i;
      Optional<Amount> unit = numbers.symbol(step, "f");
      if (unit.isPresent()) {
        pieces.add(
            new Piece(
                step,
                layer(numbers, step),
                si(numbers.noted(step, "from")),
                si(numbers.noted(step, "to")),
                unit.get(),
                numbers.result(step).orElseThrow()));
      }
    }
    return pieces;
  }

  private static String layer(SheetNumbers numbers, String step) {
    return numbers
        .sheet()
        .step(step)
        .map(
            one ->
                one.title().replaceFirst("^Side resistance in ", "").replaceFirst(" from .*", ""))
        .map(name -> name.replace('-', ' '))
        .orElse("");
  }

  private static Drawn draw(Site site, String zone, SheetNumbers numbers, String id) {
    double toe = si(numbers.symbol("embedment", "zt"));
    List<Level> levels = new ArrayList<>();
    levels.add(new Level("foundation underside", si(numbers.input("founding-depth")), Pen.HIDDEN));
    levels.add(new Level("dug level", si(numbers.result("dug-level")), Pen.OUTLINE));
    numbers
        .noted("dug-level", "from")
        .ifPresent(from -> levels.add(new Level("side counts from", from.si(), Pen.ALERT)));
    numbers
        .input("ground-water")
        .filter(water -> water.si() <= toe)
        .ifPresent(water -> levels.add(new Level("ground water", water.si(), Pen.WATER)));
    levels.add(new Level("toe", toe, Pen.OUTLINE));
    Optional<Amount> base = numbers.symbol("pile-allowable", "Qb");
    String baseWords =
        "Base: "
            + numbers.in(base)
            + (base.isPresent() && base.get().si() == 0 ? ", none is counted" : "")
            + ".";
    List<String> below =
        List.of(
            baseWords,
            "Side in all "
                + numbers.in(numbers.result("side-total"))
                + " ultimate; allowable of one pile "
                + numbers.in(numbers.result("pile-allowable"))
                + ", in the group "
                + numbers.in(numbers.result("pile-in-group-allowable"))
                + "; working load "
                + numbers.in(numbers.result("pile-load"))
                + ".");
    return Drawn.of(
        new DepthChart(numbers, id, "Resistance of one drilled pile along its depth", zone)
            .draw(
                Strata.of(site, zone, 0, toe * 1.04),
                pieces(numbers),
                levels,
                toe,
                "unit side resistance, ultimate",
                below,
                "Bars of unit side resistance over depth beside the layers of the ground."));
  }
}
