package underhold.sizing.bracketpiles;

import static underhold.sizing.bracketpiles.BracketInputs.*;

import java.util.List;
import underhold.sizing.Amount;
import underhold.sizing.Phrase;
import underhold.sizing.SheetBuilder;
import underhold.sizing.bracketpiles.PileGround.Piece;

/** Quantities and time. */
final class BillSection {
  private static final double HOURS_PER_WORKING_DAY = 8;

  /** Grout placed over the net volume; common practice. */
  private static final double GROUT_LOSS = 1.5;

  private BillSection() {}

  static void write(BracketCase site, PileTrial pile, List<Piece> bond, SheetBuilder sheet) {
    double brackets = site.count();
    double piles = brackets * (site.path() == MomentPath.PAIRED ? 2 : 1);
    boolean whole = site.onColumn() || site.inputs().has(WALL_LENGTH);
    double cased = BondSection.casingBottom(site, pile) - site.get(FOUNDING_DEPTH);
    double bonded = BondSection.length(bond);
    sheet
        .quantity(
            "brackets",
            Amount.count(brackets),
            whole
                ? "along the edge or at the column"
                : "for one bracket: the length of the edge is not known")
        .quantity("piles", Amount.count(piles), "")
        .quantity(
            "proof tests",
            Amount.count(
                Math.max(1, Math.ceil(piles * site.get(BracketSetting.PROOF_SHARE) - 1e-9))),
            "share of piles, at least one")
        .quantity("verification tests", Amount.count(1), "at least one in each bond stratum")
        .quantity(
            "casing " + BracketSettings.name(pile.gross()),
            Amount.length(piles * cased),
            "from the bracket to the top of the bond length")
        .quantity(
            "bar " + pile.bar().name(), Amount.length(piles * (cased + bonded)), "full length")
        .quantity(
            "drilling",
            Amount.length(piles * (cased + bonded)),
            "from the underside of the footing; from the surface where the rig stands there")
        .quantity(
            "threaded joints",
            Amount.count(piles * Math.max(0, Math.ceil(cased / pile.piece() - 1e-9) - 1)),
            "by the length of a piece")
        .quantity(
            "grout",
            Amount.volume(
                GROUT_LOSS
                    * piles
                    * (pile.gross().boreArea() * cased
                        + Math.PI * pile.hole() * pile.hole() / 4 * bonded)),
            "1.5 times the net volume");
    double drilling = piles * site.get(BracketSetting.PILE_TIME);
    double fitting = brackets * site.get(BracketSetting.BRACKET_TIME);
    sheet
        .time("drilling and grouting, one rig", Amount.hours(drilling), Phrase.of("working hours"))
        .time("curing before load", site.amount(BracketSetting.CURE), Phrase.of("clock hours"))
        .time("fitting and preloading", Amount.hours(fitting), Phrase.of("working hours"))
        .time(
            "working days of eight hours, cure apart",
            Amount.count(Math.ceil((drilling + fitting) / HOURS_PER_WORKING_DAY - 1e-9)),
            Phrase.of(
                "one rig, one crew; below about ten piles mobilisation and tests dominate the cost"));
  }
}
