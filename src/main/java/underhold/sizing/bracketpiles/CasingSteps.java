package underhold.sizing.bracketpiles;

import underhold.mechanics.micropile.CasingSection;
import underhold.mechanics.micropile.CombinedStress;
import underhold.mechanics.micropile.FhwaCapacity;
import underhold.mechanics.micropile.FreeLength;
import underhold.mechanics.micropile.IbcCapacity;
import underhold.sizing.Amount;
import underhold.sizing.Phrase;
import underhold.sizing.SheetBuilder;
import underhold.sizing.Verdict;

/** Axial capacity of the casing and the bond length's section, by both codes, and bending. */
final class CasingSteps {
  private CasingSteps() {}

  static void write(BracketCase site, PileTrial pile, SheetBuilder sheet) {
    section(site, pile, sheet);
    cased(site, pile, sheet);
    uncased(site, pile, sheet);
    combined(site, pile, sheet);
  }

  private static void section(BracketCase site, PileTrial pile, SheetBuilder sheet) {
    CasingSection casing = pile.casing();
    sheet
        .step("casing-area", "Steel area of the casing", "A = 3.1416 / 4 × ({OD}^2 - {ID}^2)")
        .with("OD", "outside diameter, corrosion deducted", Amounts.outside(casing))
        .with("ID", "inside diameter", Amounts.inside(casing))
        .note(
            Phrase.of(
                "Casing "
                    + BracketSettings.name(pile.gross())
                    + ", the lightest of the table that passes unless it was set; {c} of its wall deducted outside.",
                "c",
                Amount.thickness(site.corrosion())))
        .gives(Amounts.steelArea(casing.area()));
    sheet
        .step(
            "casing-modulus",
            "Section modulus of the casing",
            "S = 3.1416 / 32 × ({OD}^4 - {ID}^4) / {OD}")
        .with("OD", "outside diameter, corrosion deducted", Amounts.outside(casing))
        .with("ID", "inside diameter", Amounts.inside(casing))
        .gives(Amounts.modulus(casing.sectionModulus()));
  }

  private static void cased(BracketCase site, PileTrial pile, SheetBuilder sheet) {
    FhwaCapacity fhwa = pile.fhwa();
    IbcCapacity ibc = pile.ibc();
    Amount grout = Amounts.steelArea(fhwa.groutInCasing());
    Amount bar = Amounts.steelArea(pile.bar().areaSquareMetres());
    Amount casing = Amounts.steelArea(pile.casing().area());
    sheet
        .step(
            "cased-fhwa",
            "Allowable compression, cased, FHWA",
            "Pc = 0.40 × {fc} × {Ag} + 0.47 × {Fy} × ({Ab} + {Ac})")
        .with("fc", "strength of the grout", site.amount(BracketSetting.GROUT_STRENGTH))
        .with("Ag", "grout inside the casing", grout)
        .with(
            "Fy",
            "least yield of casing, bar and 87 ksi",
            Amount.stress(fhwa.casedCompressionYield()))
        .with("Ab", "bar", bar)
        .with("Ac", "casing", casing)
        .from(Sources.FHWA_CASED)
        .gives(Amount.force(fhwa.casedCompression()));
    sheet
        .step(
            "cased-ibc",
            "Allowable compression, cased, IBC",
            "Pi = 0.33 × {fc} × {Ag} + {Fp} × {Ac} + {Fb} × {Ab}")
        .with("fc", "strength of the grout", site.amount(BracketSetting.GROUT_STRENGTH))
        .with("Ag", "grout inside the casing", grout)
        .with("Fp", "pipe, 0.40 Fy up to 32 ksi", Amount.stress(ibc.pipeStress()))
        .with("Ac", "casing", casing)
        .with("Fb", "bar, 0.40 fy up to 30 ksi", Amount.stress(ibc.barStress()))
        .with("Ab", "bar", bar)
        .from(Sources.IBC)
        .gives(Amount.force(ibc.casedCompression()));
    if (pile.bared()) {
      freeLength(site, pile, sheet);
    }
    sheet.check(
        "cased-compression",
        "Load of the pile against the cased section, by the lower of FHWA and IBC",
        Amount.force(pile.axial()),
        Amount.force(pile.casedCompression()),
        Sources.IBC,
        "Both stand above; the building code holds where it applies."
            + (pile.bared() ? " Cut by the ratio of the free length." : "")
            + (ibc.steelShareCased() < IbcCapacity.LEAST_STEEL_SHARE
                ? " IBC wants 40 % of the load in steel, which this section does not reach."
                : ""));
  }

  private static void freeLength(BracketCase site, PileTrial pile, SheetBuilder sheet) {
    FreeLength free = pile.free();
    sheet
        .step("slenderness", "Slenderness of the bared length", "ks = {K} × ({H} + {f}) / {r}")
        .with("K", "effective length factor", Amount.ratio(pile.lengthFactor()))
        .with("H", "bare length, or bay between braces", Amount.length(site.bareBay()))
        .with("f", "depth to fixity", Amount.length(pile.freeLength() - site.bareBay()))
        .with(
            "r",
            "radius of gyration of the casing",
            Amount.thickness(pile.casing().radiusOfGyration()))
        .from(Sources.IBC_FIXITY)
        .gives(Amount.ratio(free.slenderness()));
    Amount steel = Amount.stress(FreeLength.STEEL_MODULUS_KILOPASCALS);
    Amount yield = site.amount(BracketSetting.CASING_YIELD);
    boolean stocky = free.slenderness() <= free.limitingSlenderness();
    sheet
        .step(
            "bared-stress",
            "Allowable axial stress over the bared length",
            stocky
                ? "Fa = {Fy} / 2.12 × (1 - {ks}^2 × {Fy} / (4 × 9.8696 × {E}))"
                : "Fa = 9.8696 × {E} / (2.12 × {ks}^2)")
        .with("Fy", "yield of the casing", yield)
        .with("ks", "slenderness", Amount.ratio(free.slenderness()))
        .with("E", "modulus of steel", steel)
        .from(Sources.FHWA)
        .note("9.8696 is the square of pi. At most 0.47 Fy counts.")
        .gives(Amount.stress(free.allowableStress()));
    sheet
        .step("bared-share", "Share of the cased capacity left", "r = min(1, {Fa} / (0.47 × {Fy}))")
        .with("Fa", "allowable axial stress", Amount.stress(free.allowableStress()))
        .with("Fy", "yield of the casing", yield)
        .from(Sources.FHWA)
        .gives(Amount.ratio(pile.share()));
  }

  private static void uncased(BracketCase site, PileTrial pile, SheetBuilder sheet) {
    double fhwa = pile.fhwa().uncasedCompression(pile.hole());
    double ibc = pile.ibc().uncasedCompression(pile.hole());
    Amount bar = Amounts.steelArea(pile.bar().areaSquareMetres());
    Amount hole = Amount.thickness(pile.hole());
    Amount grout = site.amount(BracketSetting.GROUT_STRENGTH);
    sheet
        .step(
            "uncased-fhwa",
            "Allowable compression at the top of the bond length, FHWA",
            "Pu = 0.40 × {fc} × (3.1416 / 4 × {D}^2 - {Ab}) + 0.47 × {Fy} × {Ab}")
        .with("fc", "strength of the grout", grout)
        .with("D", "hole", hole)
        .with("Ab", "bar " + pile.bar().name(), bar)
        .with(
            "Fy",
            "yield of the bar, at most 87 ksi",
            Amount.stress(pile.fhwa().barCompressionYield()))
        .from(Sources.FHWA)
        .gives(Amount.force(fhwa));
    sheet
        .step(
            "uncased-ibc",
            "The same, IBC",
            "Pv = 0.30 × {fc} × (3.1416 / 4 × {D}^2 - {Ab}) + {Fb} × {Ab}")
        .with("fc", "strength of the grout", grout)
        .with("D", "hole", hole)
        .with("Ab", "bar", bar)
        .with("Fb", "bar, 0.40 fy up to 30 ksi", Amount.stress(pile.ibc().barStress()))
        .from(Sources.IBC)
        .gives(Amount.force(ibc));
    sheet.check(
        "uncased-compression",
        "Load of the pile against the uncased section, by the lower of FHWA and IBC",
        Amount.force(pile.axial()),
        Amount.force(pile.uncasedCompression()),
        Sources.IBC,
        "The bar laps into the casing by at least its development length."
            + (pile.barFits() ? "" : " The bar with its coupler does not go into this casing."));
    if (site.path() == MomentPath.PAIRED) {
      sheet.check(
          "pile-tension",
          "Pull of the far pile against its bar",
          Amount.force(pile.pull()),
          Amount.force(pile.fhwa().uncasedTension()),
          Sources.FHWA,
          "0.55 Fy of the bar; its bond length is below, with the factor for tension.");
    }
  }

  private static void combined(BracketCase site, PileTrial pile, SheetBuilder sheet) {
    sheet
        .step(
            "combined",
            "Axial stress and bending of the casing at the head, braced by soil",
            "R = {P} / ({A} × 0.47 × {Fy}) + {M} / ({S} × 0.55 × {Fy})")
        .with("P", "load of the pile", Amount.force(pile.axial()))
        .with("A", "casing", Amounts.steelArea(pile.casing().area()))
        .with("Fy", "yield of the casing", site.amount(BracketSetting.CASING_YIELD))
        .with("M", "moment on the pile head", Amount.moment(pile.headMoment()))
        .with("S", "section modulus", Amounts.modulus(pile.casing().sectionModulus()))
        .from(Sources.FHWA)
        .note("Grout and bar are left out on the safe side.")
        .gives(Amount.ratio(pile.combinedRatio()));
    sheet.check(
        "casing-combined",
        "Combined stress of the casing at the head",
        Amount.ratio(pile.combinedRatio()),
        Amount.ratio(1),
        Sources.FHWA,
        pile.bared() ? "The bared length is checked apart." : "");
    bared(site, pile, sheet);
  }

  private static void bared(BracketCase site, PileTrial pile, SheetBuilder sheet) {
    if (!pile.bared()) {
      sheet.check(
          "pile-bared",
          "Combined stress where the excavation bares the pile",
          Amount.ratio(pile.combinedRatio()),
          Amount.ratio(1),
          Sources.FHWA,
          "Not bared: the pile stands in ground that stays.");
      return;
    }
    CombinedStress free = CombinedStress.free(pile.free());
    boolean holds = pile.baredRatio().isPresent();
    double unamplified =
        free.axialStress(pile.axial()) / free.allowableAxialKilopascals()
            + free.bendingStress(pile.headMoment()) / free.allowableBendingKilopascals();
    double ratio = pile.baredRatio().orElse(unamplified);
    if (holds) {
      sheet
          .step(
              "bared-combined",
              "Axial stress and bending over the bared length",
              "R = {P} / ({A} × {Fa}) + {M} / ({S} × 0.55 × {Fy} × (1 - {P} / ({A} × {Fe})))")
          .with("P", "load of the pile", Amount.force(pile.axial()))
          .with("A", "casing", Amounts.steelArea(pile.casing().area()))
          .with("Fa", "allowable axial stress", Amount.stress(free.allowableAxialKilopascals()))
          .with("M", "moment, whole over the bare length", Amount.moment(pile.headMoment()))
          .with("S", "section modulus", Amounts.modulus(pile.casing().sectionModulus()))
          .with("Fy", "yield of the casing", site.amount(BracketSetting.CASING_YIELD))
          .with(
              "Fe",
              "amplifier stress 9.8696 E / (2.12 ks^2)",
              Amount.stress(pile.free().amplifierStress()))
          .from(Sources.FHWA)
          .gives(Amount.ratio(ratio));
    }
    boolean unbraced = site.braceLevels() == 0 && pile.headMoment() > 0;
    boolean passes = holds && ratio <= 1;
    sheet.verdict(
        "pile-bared",
        "Combined stress where the excavation bares the pile",
        Amount.ratio(ratio),
        Amount.ratio(1),
        !passes ? Verdict.FAILS : unbraced ? Verdict.REFER : Verdict.PASSES,
        Sources.FHWA,
        Phrase.of(
            (holds ? "" : "The axial stress alone reaches the buckling stress. ")
                + (unbraced
                    ? "A pile bared with a moment and without braces goes to the engineer: brace it (brace-levels) or take the moment elsewhere. "
                    : "")
                + "No bracing counts before walers are tight."));
  }
}
