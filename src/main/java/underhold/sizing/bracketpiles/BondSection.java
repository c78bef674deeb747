package underhold.sizing.bracketpiles;

import java.util.List;
import java.util.Map;
import underhold.mechanics.micropile.BondZone;
import underhold.sizing.Amount;
import underhold.sizing.Phrase;
import underhold.sizing.SheetBuilder;
import underhold.sizing.Verdict;
import underhold.sizing.bracketpiles.PileGround.BondDemand;
import underhold.sizing.bracketpiles.PileGround.Piece;

/** The bond length in the layers below the base of the excavation. */
final class BondSection {
  private static final double ROUND_METRES = 0.1;

  private BondSection() {}

  /**
   * Depth of the casing's bottom below ground: below subgrade, and where bending has died away; at
   * most half of the longest pile goes to bending.
   */
  static double casingBottom(BracketCase site, PileTrial pile) {
    double bySubgrade = site.subgradeDepth() + site.get(BracketSetting.CASING_BELOW_SUBGRADE);
    double inGround =
        Math.min(
            LateralSection.leastInGround(site, pile), site.get(BracketSetting.LONGEST_PILE) / 2);
    double bottom = Math.max(bySubgrade, site.supportDepth() + inGround);
    return Math.ceil(bottom / ROUND_METRES - 1e-9) * ROUND_METRES;
  }

  static BondDemand demand(BracketCase site, PileTrial pile) {
    return new BondDemand(
        pile.axial(),
        site.get(BracketSetting.LEAST_BOND),
        pile.hole(),
        site.get(BracketSetting.BOND_SAFETY),
        site.settings().grouting(),
        site.get(BracketSetting.BOND_SHARE));
  }

  static List<Piece> pieces(BracketCase site, PileTrial pile, BondDemand demand) {
    double limit = site.get(BracketInputs.FOUNDING_DEPTH) + site.get(BracketSetting.LONGEST_PILE);
    double from = casingBottom(site, pile);
    return PileGround.bondLength(site.column(), from, Math.max(from, limit), demand);
  }

  /** Length of all pieces, m. */
  static double length(List<Piece> pieces) {
    return pieces.stream().mapToDouble(Piece::lengthMetres).sum();
  }

  static List<Piece> write(BracketCase site, PileTrial pile, SheetBuilder sheet) {
    BondDemand demand = demand(site, pile);
    List<Piece> pieces = pieces(site, pile, demand);
    steps("bond", pieces, demand, sheet);
    double toe = casingBottom(site, pile) + length(pieces);
    boolean beyond = toe > site.column().knownToMetres();
    sheet.check(
        "pile-bond",
        "Load of the pile against the bond length",
        Amount.force(pile.axial()),
        Amount.force(demand.capacity(pieces)),
        Verdict.FAILS,
        Sources.FHWA_BOND,
        Phrase.of(
            "Bond from {f} to {t} below ground; the pile above carries nothing, no end bearing counts. Tests decide."
                + (beyond
                    ? " The deepest layer is taken to reach on below {k}: prove it by a boring past the toe."
                    : ""),
            Map.of(
                "f", Amount.length(casingBottom(site, pile)),
                "t", Amount.length(toe),
                "k", Amount.length(site.column().knownToMetres()))));
    if (site.path() == MomentPath.PAIRED) {
      tension(site, pile, sheet);
    }
    return pieces;
  }

  private static void tension(BracketCase site, PileTrial pile, SheetBuilder sheet) {
    BondDemand down = demand(site, pile);
    BondDemand demand =
        new BondDemand(
            pile.pull(),
            down.leastLength(),
            down.hole(),
            site.get(BracketSetting.BOND_SAFETY_TENSION),
            down.grouting(),
            down.share());
    List<Piece> pieces = pieces(site, pile, demand);
    steps("tension-bond", pieces, demand, sheet);
    sheet.check(
        "tension-bond",
        "Pull of the far pile against its bond length",
        Amount.force(pile.pull()),
        Amount.force(demand.capacity(pieces)),
        Sources.FHWA_BOND,
        "The weight of the cone of soil that it lifts is not checked.");
  }

  private static void steps(String id, List<Piece> pieces, BondDemand demand, SheetBuilder sheet) {
    int number = 1;
    for (Piece piece : pieces) {
      if (piece.bondKilopascals() > 0) {
        sheet
            .step(
                id + "-" + number,
                "Bond in " + piece.layer(),
                "Q = {a} × 3.1416 × {D} × {L} / {FS}")
            .with("a", "nominal bond", Amounts.bond(piece.bondKilopascals()))
            .with("D", "hole", Amount.thickness(demand.hole()))
            .with("L", "length in the layer", Amount.length(piece.lengthMetres()))
            .with("FS", "factor of safety", Amount.ratio(demand.safety()))
            .from(Sources.FHWA_BOND)
            .gives(
                Amount.force(
                    new BondZone(piece.bondKilopascals(), demand.hole(), demand.safety())
                        .allowableLoad(piece.lengthMetres())));
      }
      number++;
    }
  }
}
