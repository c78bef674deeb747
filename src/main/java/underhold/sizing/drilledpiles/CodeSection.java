package underhold.sizing.drilledpiles;

import underhold.mechanics.pile.axial.EurocodePile;
import underhold.mechanics.pile.axial.LrfdFactor;
import underhold.sizing.Amount;
import underhold.sizing.SheetBuilder;
import underhold.sizing.drilledpiles.BondLayer.Kind;

/** The same pile by other formats, for comparison; nothing is checked by them. */
final class CodeSection {
  private CodeSection() {}

  static void write(PileCase site, PileDesign design, SheetBuilder sheet) {
    LrfdFactor base = factor(new Ground(site).at(design.toeMetres()).kind());
    sheet
        .step(
            "pile-lrfd",
            "For comparison: factored resistance of one pile by LRFD",
            "Rr = {fc} × {Qc} + {fs} × {Qd} + {fr} × {Qr} + {fb} × {Qb}")
        .with("fc", "factor in clay", Amount.ratio(LrfdFactor.CLAY.side()))
        .with("Qc", "side in clay", Amount.force(side(design, Kind.CLAY)))
        .with("fs", "factor in sand", Amount.ratio(LrfdFactor.SAND.side()))
        .with("Qd", "side in sand", Amount.force(side(design, Kind.SAND)))
        .with("fr", "factor in rock", Amount.ratio(LrfdFactor.ROCK.side()))
        .with("Qr", "side in rock", Amount.force(side(design, Kind.ROCK)))
        .with("fb", "factor of the base", Amount.ratio(base.base()))
        .with("Qb", "base", Amount.force(design.baseKilonewtons()))
        .from(Sources.LRFD)
        .note(
            "Against factored loads, which this sheet does not form; a shaft that stands alone keeps 80 %.")
        .gives(
            Amount.force(
                LrfdFactor.CLAY.side() * side(design, Kind.CLAY)
                    + LrfdFactor.SAND.side() * side(design, Kind.SAND)
                    + LrfdFactor.ROCK.side() * side(design, Kind.ROCK)
                    + base.base() * design.baseKilonewtons()));
    EurocodePile factors = EurocodePile.UK_R4_UNCHECKED;
    sheet
        .step(
            "pile-eurocode",
            "For comparison: design resistance of one pile by Eurocode 7, UK set R4",
            "Rd = ({Qs} / {gs} + {Qb} / {gb}) / {gm}")
        .with("Qs", "side", Amount.force(design.sideKilonewtons()))
        .with(
            "gs", "factor of the side, settlement not proved", Amount.ratio(factors.shaftFactor()))
        .with("Qb", "base", Amount.force(design.baseKilonewtons()))
        .with("gb", "factor of the base", Amount.ratio(factors.baseFactor()))
        .with("gm", "model factor", Amount.ratio(factors.modelFactor()))
        .from(Sources.EC7)
        .note("Against factored loads, which this sheet does not form.")
        .gives(
            Amount.force(
                factors.designKilonewtons(design.sideKilonewtons(), design.baseKilonewtons())));
  }

  private static LrfdFactor factor(Kind kind) {
    return switch (kind) {
      case CLAY, NONE -> LrfdFactor.CLAY;
      case SAND -> LrfdFactor.SAND;
      case ROCK -> LrfdFactor.ROCK;
    };
  }

  private static double side(PileDesign design, Kind kind) {
    return design.pieces().stream()
        .filter(one -> one.layer().kind() == kind)
        .mapToDouble(SidePiece::resistanceKilonewtons)
        .sum();
  }
}
