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

/** Nominal bond of a mini pile over depth, layer by layer. */
public final class BondChart {
  private static final int MOST_PIECES = 200;
  private static final double ROUNDING = 1e-6;

  private BondChart() {}

  /**
   * The chart, or why there is none.
   *
   * @param site the site, for the layers
   * @param zone the zone's name
   * @param sheet the sheet of mini piles with brackets
   * @param units in which it is read
   * @param id the figure's id
   */
  public static Drawn of(Site site, String zone, Sheet sheet, UnitSystem units, String id) {
    SheetNumbers numbers = new SheetNumbers(sheet, units);
    Optional<Drawn> refusal =
        numbers.refusal(List.of(), List.of("founding-depth", "excavation-below-footing"));
    if (refusal.isPresent()) {
      return refusal.get();
    }
    Optional<Amount> from = numbers.checkNoted("pile-bond", "f");
    Optional<Amount> to = numbers.checkNoted("pile-bond", "t");
    if (from.isEmpty() || to.isEmpty()) {
      return numbers.withheld("it does not say from where to where the bond goes").orElseThrow();
    }
    double toe = to.get().si();
    List<Piece> pieces = pieces(numbers, Strata.of(site, zone, 0, toe * 1.04), from.get().si());
    if (pieces.isEmpty()) {
      return numbers.withheld("no layer that the pile reaches gives any bond").orElseThrow();
    }
    if (pieces.get(pieces.size() - 1).bottom() > toe + ROUNDING) {
      return numbers
          .withheld("the pieces of its bond could not be placed in the layers of the site")
          .orElseThrow();
    }
    return draw(site, zone, numbers, pieces, from.get().si(), toe, id);
  }

  /** Each piece follows the one before, or begins where its layer does below one without bond. */
  private static List<Piece> pieces(SheetNumbers numbers, Strata strata, double from) {
    List<Piece> pieces = new ArrayList<>();
    double at = from;
    for (int i = 1; i <= MOST_PIECES; i++) {
      String step = "bond-" + i;
      Optional<Amount> length = numbers.symbol(step, "L");
      Optional<Amount> bond = numbers.symbol(step, "a");
      if (length.isEmpty() || bond.isEmpty()) {
        continue;
      }
      String layer =
          numbers
              .sheet()
              .step(step)
              .map(one -> one.title().replaceFirst("^Bond in ", ""))
              .orElse("");
      String soil = layer.replaceFirst(" from .*", "").replace('-', ' ');
      double top = Math.max(at, begins(strata, soil, at));
      double bottom = top + length.get().si();
      pieces.add(
          new Piece(step, soil, top, bottom, bond.get(), numbers.result(step).orElseThrow()));
      at = bottom;
    }
    return pieces;
  }

  private static double begins(Strata strata, String soil, double at) {
    return strata.layers().stream()
        .filter(layer -> layer.name().equals(soil) && layer.bottom() > at + ROUNDING)
        .mapToDouble(Strata.Stratum::top)
        .findFirst()
        .orElse(at);
  }

  private static Drawn draw(
      Site site,
      String zone,
      SheetNumbers numbers,
      List<Piece> pieces,
      double from,
      double toe,
      String id) {
    double footing = si(numbers.input("founding-depth"));
    double dug = footing + si(numbers.input("excavation-below-footing"));
    List<Level> levels = new ArrayList<>();
    levels.add(new Level("footing underside", footing, Pen.HIDDEN));
    levels.add(new Level("bottom of the excavation", dug, Pen.OUTLINE));
    levels.add(new Level("casing ends, bond begins", from, Pen.ALERT));
    levels.add(new Level("toe", toe, Pen.OUTLINE));
    List<String> below =
        List.of(
            "The forces are allowable, by a factor of safety of "
                + numbers.in(numbers.symbol(pieces.get(0).name(), "FS"))
                + " on the nominal bond. Above the bond length and at the toe nothing is counted. Tests decide.",
            numbers
                .check("pile-bond")
                .map(
                    check ->
                        "Load of the pile "
                            + check.demand().in(numbers.units())
                            + " against "
                            + check.capacity().in(numbers.units())
                            + ": "
                            + check.verdict().label()
                            + ".")
                .orElse(""));
    return Drawn.of(
        new DepthChart(numbers, id, "Bond of one mini pile along its depth", zone)
            .draw(
                Strata.of(site, zone, 0, toe * 1.04),
                pieces,
                levels,
                toe,
                "nominal bond",
                below,
                "Bars of nominal bond over depth beside the layers of the ground."));
  }
}
