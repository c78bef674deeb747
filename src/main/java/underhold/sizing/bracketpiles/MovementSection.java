package underhold.sizing.bracketpiles;

import static underhold.sizing.bracketpiles.BracketInputs.*;

import java.util.List;
import java.util.Map;
import underhold.mechanics.micropile.FhwaCapacity;
import underhold.mechanics.micropile.FreeLength;
import underhold.mechanics.micropile.PileShortening;
import underhold.sizing.Amount;
import underhold.sizing.Phrase;
import underhold.sizing.SheetBuilder;
import underhold.sizing.Source;
import underhold.sizing.Verdict;
import underhold.sizing.bracketpiles.PileGround.Piece;

/** Movement to expect with and without preload; theta e beside P L / EA. */
final class MovementSection {
  private final BracketCase site;
  private final PileTrial pile;
  private final double casedLength;
  private final double bondLength;

  MovementSection(BracketCase site, PileTrial pile, List<Piece> bond) {
    this.site = site;
    this.pile = pile;
    this.casedLength = BondSection.casingBottom(site, pile) - site.get(FOUNDING_DEPTH);
    this.bondLength = BondSection.length(bond);
  }

  void write(SheetBuilder sheet) {
    double shortening = shortening(sheet);
    double drop = drop(sheet);
    String larger =
        shortening >= drop
            ? "The pile's shortening is the larger part."
            : "The seat's drop by rotation is the larger part: stiffen the head before the pile.";
    double bare =
        sheet
            .step("movement-bare", "Movement without preload", "d = {s} + {r} + {sl} + {b}")
            .with("s", "shortening", Amount.thickness(shortening))
            .with("r", "seat drop", Amount.thickness(drop))
            .with("sl", "slip that mobilises bond", site.amount(BracketSetting.SLIP))
            .with("b", "bedding of seat and shims", site.amount(BracketSetting.BEDDING))
            .from(Source.judgement())
            .note(
                Phrase.of(
                    "P L / EA {s} beside theta e {r}. " + larger,
                    Map.of("s", Amount.thickness(shortening), "r", Amount.thickness(drop))))
            .gives(Amount.thickness(shortening + drop + extras()));
    double residual =
        Math.max(0, 1 - site.get(BracketSetting.PRELOAD)) * bare
            + site.get(BracketSetting.CREEP)
            + site.get(BracketSetting.LOCK_OFF);
    sheet
        .step("movement", "Movement with preload", "dp = max(0, 1 - {p}) × {d} + {c} + {lo}")
        .with("p", "preload as a share of the bracket's load", site.amount(BracketSetting.PRELOAD))
        .with("d", "movement without preload", Amount.thickness(bare))
        .with("c", "creep", site.amount(BracketSetting.CREEP))
        .with("lo", "lost at lock-off", site.amount(BracketSetting.LOCK_OFF))
        .from(Source.judgement())
        .gives(Amount.thickness(residual));
    sheet.check(
        "movement",
        "Movement with preload against the limit",
        Amount.thickness(residual),
        site.amount(MOVEMENT_LIMIT),
        Verdict.FAILS,
        Source.judgement(),
        Phrase.of(
            "Without preload {d}. "
                + larger
                + " Rotation is that of the softer case. Ground moved by the excavation itself comes on top.",
            "d",
            Amount.thickness(bare)));
  }

  private double extras() {
    return site.get(BracketSetting.SLIP) + site.get(BracketSetting.BEDDING);
  }

  private double shortening(SheetBuilder sheet) {
    FhwaCapacity section = pile.fhwa();
    Amount bar = Amounts.steelArea(pile.bar().areaSquareMetres());
    Amount steel = Amount.stress(FreeLength.STEEL_MODULUS_KILOPASCALS);
    double grout = PileShortening.concreteModulus(site.get(BracketSetting.GROUT_STRENGTH));
    sheet
        .step(
            "grout-modulus",
            "Modulus of the grout",
            "Ec = 4733 × sqrt({fc})",
            "Ec = 57000 × sqrt({fc})")
        .with("fc", "strength of the grout", site.amount(BracketSetting.GROUT_STRENGTH))
        .from(Sources.ACI_MODULUS)
        .note("In MPa; the US text in psi.")
        .gives(Amount.stress(grout));
    double cased =
        sheet
            .step(
                "cased-stiffness",
                "Axial stiffness, cased",
                "EA = {Es} × ({Ac} + {Ab}) + {Ec} × {Ag}")
            .with("Es", "modulus of steel", steel)
            .with("Ac", "casing", Amounts.steelArea(pile.casing().area()))
            .with("Ab", "bar", bar)
            .with("Ec", "modulus of grout", Amount.stress(grout))
            .with("Ag", "grout inside", Amounts.steelArea(section.groutInCasing()))
            .gives(
                Amount.force(
                    PileShortening.axialStiffness(
                        pile.casing().area() + pile.bar().areaSquareMetres(),
                        section.groutInCasing(),
                        site.get(BracketSetting.GROUT_STRENGTH))));
    double hole = Math.PI * pile.hole() * pile.hole() / 4 - pile.bar().areaSquareMetres();
    double bond =
        sheet
            .step(
                "bond-stiffness",
                "Axial stiffness of the bond length",
                "EB = {Es} × {Ab} + {Ec} × (3.1416 / 4 × {D}^2 - {Ab})")
            .with("Es", "modulus of steel", steel)
            .with("Ab", "bar", bar)
            .with("Ec", "modulus of grout", Amount.stress(grout))
            .with("D", "hole", Amount.thickness(pile.hole()))
            .gives(
                Amount.force(
                    PileShortening.axialStiffness(
                        pile.bar().areaSquareMetres(),
                        hole,
                        site.get(BracketSetting.GROUT_STRENGTH))));
    return sheet
        .step(
            "shortening",
            "Elastic shortening of the pile",
            "s = {P} × ({Lc} / {EA} + {Lb} / (2 × {EB}))")
        .with("P", "load of the pile", Amount.force(pile.axial()))
        .with("Lc", "cased length", Amount.length(casedLength))
        .with("EA", "cased stiffness", Amount.force(cased))
        .with("Lb", "bond length", Amount.length(bondLength))
        .with("EB", "stiffness of the bond length", Amount.force(bond))
        .note("Even transfer along the bond length: half of it counts.")
        .gives(
            Amount.thickness(
                PileShortening.whole(pile.axial(), casedLength, cased)
                    + PileShortening.EVEN_TRANSFER
                        * PileShortening.whole(pile.axial(), bondLength, bond)));
  }

  private double drop(SheetBuilder sheet) {
    if (site.path() == MomentPath.PAIRED) {
      return pairDrop(sheet);
    }
    double rotation = pile.rotation(PileTrial.SOFT);
    return sheet
        .step(
            "seat-drop", "Drop of the seat by rotation of the head, softer case", "r = {th} × {e}")
        .with("th", "rotation of the head, radians", Amount.ratio(rotation))
        .with("e", "eccentricity", Amount.thickness(pile.eccentricity()))
        .gives(Amount.thickness(pile.bracket().seatDrop(rotation)));
  }

  /** The near pile goes down, the far one stretches; the seat overhangs both. */
  private double pairDrop(SheetBuilder sheet) {
    double bar = FreeLength.STEEL_MODULUS_KILOPASCALS * pile.bar().areaSquareMetres();
    double stretch = pile.pull() * (casedLength + bondLength / 2) / bar;
    double apart = site.get(BracketSetting.PAIR_APART);
    return sheet
        .step(
            "seat-drop",
            "Drop of the seat by stretch of the far pile's bar",
            "r = {T} × ({Lc} + {Lb} / 2) / ({Es} × {Ab}) × {e} / {L}")
        .with("T", "pull of the far pile", Amount.force(pile.pull()))
        .with("Lc", "cased length", Amount.length(casedLength))
        .with("Lb", "bond length", Amount.length(bondLength))
        .with("Es", "modulus of steel", Amount.stress(FreeLength.STEEL_MODULUS_KILOPASCALS))
        .with("Ab", "bar", Amounts.steelArea(pile.bar().areaSquareMetres()))
        .with("e", "eccentricity", Amount.thickness(pile.eccentricity()))
        .with("L", "distance of the piles", Amount.length(apart))
        .note("The bend of the cap beam comes on top.")
        .gives(Amount.thickness(stretch * pile.eccentricity() / apart));
  }
}
