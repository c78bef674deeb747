package underhold.sizing.pits;

import static underhold.sizing.pits.PitsFact.*;

import underhold.mechanics.soil.settlement.SteinbrennerSettlement;
import underhold.sizing.Amount;
import underhold.sizing.Phrase;
import underhold.sizing.SheetBuilder;
import underhold.sizing.Source;
import underhold.sizing.Verdict;

/** Shortening of the pier and settlement of its base against the movement limit. */
final class MovementSection {
  private static final double POISSON = 0.3;

  /** Compressible layer below the base, in pier thicknesses. */
  private static final double LAYER_WIDTHS = 4;

  /** A pressure at the base, in words. */
  private record Pressure(String step, String title, String words, String note) {}

  private static final Pressure WITHOUT_PIER =
      new Pressure(
          "base-settlement",
          "Elastic settlement of the finished row of piers",
          "pressure without the pier's weight",
          "");

  private static final Pressure WITH_PIER =
      new Pressure(
          "base-settlement-gross",
          "The same with the weight of the piers",
          "pressure with the pier's weight",
          "The piers settle by their own weight before the dry pack is rammed, and they replace soil of nearly their weight: the wall feels the settlement above, which the check takes.");

  private final PitsCase site;
  private final SheetBuilder sheet;

  private MovementSection(PitsCase site, SheetBuilder sheet) {
    this.site = site;
    this.sheet = sheet;
  }

  static void write(PitsCase site, SheetBuilder sheet, Layout layout, double net, double gross) {
    new MovementSection(site, sheet).settlement(net, gross, layout);
  }

  private void settlement(double net, double gross, Layout layout) {
    double shortening =
        sheet
            .step("pier-shortening", "Elastic shortening of the pier", "d = {q} × {D} / {E}")
            .with("q", "stress in the pier", Amount.pressure(net))
            .with("D", "height of the pier", site.amount(PIT_DEPTH))
            .with("E", "modulus of concrete", Amount.stress(concreteModulus()))
            .gives(Amount.thickness(net * site.get(PIT_DEPTH) / concreteModulus()));
    double elastic = 0;
    if (site.has(BASE_MODULUS)) {
      elastic = elastic(WITHOUT_PIER, net, layout);
      elastic(WITH_PIER, gross, layout);
    }
    if (!site.has(MOVEMENT_LIMIT)) {
      return;
    }
    double expected = Math.max(site.get(PitsSetting.EXPECTED_MOVEMENT), elastic + shortening);
    sheet.check(
        "movement",
        "Settlement to expect against what the structure may suffer",
        Amount.thickness(expected),
        site.amount(MOVEMENT_LIMIT),
        Verdict.REFER,
        Sources.FHWA_MOVEMENT,
        Phrase.of(
            site.has(BASE_MODULUS)
                ? "The greater of the experience value and the reckoned settlement. Jacks in the gap take up movement."
                : "The experience value; no modulus of the base soil is known. Jacks in the gap take up movement."));
  }

  /** 57,000 sqrt(f'c) psi, ACI 318-19 19.2.2.1 (from memory), kPa. */
  private double concreteModulus() {
    double psi = 6.894757293168361;
    return 57_000 * Math.sqrt(site.get(PitsSetting.PIER_STRENGTH) / psi) * psi;
  }

  private double elastic(Pressure which, double pressure, Layout layout) {
    double width = site.pierThickness();
    double length = Math.max(width, layout.row().lengthMetres());
    SteinbrennerSettlement.Case footing =
        new SteinbrennerSettlement.Case(
            pressure, width, length, LAYER_WIDTHS * width, site.get(BASE_MODULUS), POISSON, 1);
    double influence =
        SteinbrennerSettlement.influence(length / width, LAYER_WIDTHS * 2).combined(POISSON);
    return sheet
        .step(
            which.step(),
            which.title(),
            "S = 0.93 × 4 × {q} × ({t} / 2) × (1 - {v}^2) / {E} × {Is}")
        .with("q", which.words(), Amount.pressure(pressure))
        .with("t", "thickness of the pier", Amount.length(width))
        .with("v", "Poisson's ratio, assumed", Amount.ratio(POISSON))
        .with("E", "modulus of the soil", site.amount(BASE_MODULUS))
        .with(
            "Is",
            "influence factor of the whole length on a layer of four thicknesses",
            Amount.ratio(influence))
        .from(
            Source.memory(
                "Steinbrenner 1934, in the form of Bowles, Foundation Analysis and Design"))
        .note(which.note())
        .gives(Amount.thickness(SteinbrennerSettlement.rigidMetres(footing)));
  }
}
