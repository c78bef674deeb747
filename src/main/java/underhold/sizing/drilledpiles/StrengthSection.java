package underhold.sizing.drilledpiles;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import underhold.mechanics.pile.column.BaringStages.Stage;
import underhold.mechanics.pile.column.SteelColumn;
import underhold.mechanics.pile.structure.IbcAllowable.Concrete;
import underhold.sizing.Amount;
import underhold.sizing.Phrase;
import underhold.sizing.SheetBuilder;
import underhold.sizing.Source;
import underhold.sizing.Verdict;

/** Strength of the section, held by the ground and bared stage by stage. */
final class StrengthSection {
  private final PileCase site;
  private final PileDesign design;
  private final SheetBuilder sheet;
  private final PileStrength strength;

  private StrengthSection(PileCase site, PileDesign design, SheetBuilder sheet) {
    this.site = site;
    this.design = design;
    this.sheet = sheet;
    this.strength = new PileStrength(site);
  }

  static void write(PileCase site, PileDesign design, SheetBuilder sheet) {
    StrengthSection section = new StrengthSection(site, design, sheet);
    section.held();
    section.bared();
    section.sideways();
  }

  private void held() {
    boolean rock = PileStrength.startsInRock(design.pieces());
    Amount bar = Amounts.section(site.barArea());
    Amount load = Amount.force(design.layout().pileKilonewtons());
    double cased =
        sheet
            .step(
                "strength-cased",
                "Allowable load of the cased pile, held by the ground",
                "Pc = {kc} × {fc} × ({Ac} - {Ab}) + {fs} × {As} + {fb} × {Ab}")
            .with("kc", "share of f'c", Amount.ratio(Concrete.IN_CASING_OR_ROCK.share()))
            .with("fc", "f'c", site.amount(PileNumbers.CONCRETE))
            .with(
                "Ac", "inside of the casing", Amounts.section(site.rusted().fillAreaSquareMetres()))
            .with("Ab", "bars", bar)
            .with("fs", "allowable stress of the casing", Amount.stress(strength.steelStress()))
            .with(
                "As", "casing after rust", Amounts.section(site.rusted().casingAreaSquareMetres()))
            .with("fb", "allowable stress of bars", Amount.stress(strength.barStress()))
            .from(Sources.IBC_STRESS)
            .gives(Amount.force(strength.cased()));
    double uncased =
        sheet
            .step(
                "strength-uncased",
                "Allowable load where the casing ends",
                "Pu = {kc} × {fc} × ({A} - {Ab}) + {fb} × {Ab}")
            .with("kc", "share of f'c", Amount.ratio(PileStrength.where(rock).share()))
            .with("fc", "f'c", site.amount(PileNumbers.CONCRETE))
            .with(
                "A",
                rock ? "socket in rock" : "hole in soil",
                Amounts.section(strength.bondArea(rock)))
            .with("Ab", "bars", bar)
            .with("fb", "allowable stress of bars", Amount.stress(strength.barStress()))
            .from(Sources.IBC_STRESS)
            .gives(Amount.force(strength.uncased(rock)));
    sheet.check(
        "pile-structure",
        "Load of one pile against its section, held by the ground",
        load,
        Amount.force(Math.min(cased, uncased)),
        Sources.IBC_STRESS,
        "The weaker of the cased pile and of the pile where the casing ends.");
  }

  private void bared() {
    SteelColumn column = strength.column();
    if (design.stages().isEmpty()) {
      sheet
          .step("bared-none", "The casing without free length", "Pb = {Fy} × {A}" + safety())
          .with("Fy", "yield stress of the casing", site.amount(PileNumbers.CASING_YIELD))
          .with("A", "casing after rust", Amounts.section(column.areaSquareMetres()))
          .with("g", safetyMeaning(), safetyFactor())
          .from(Sources.AISC)
          .gives(Amount.force(design.baredKilonewtons()));
    } else {
      sheet
          .step(
              "gyration",
              "Radius of gyration of the casing after rust",
              "r = sqrt({D}^2 + {d}^2) / 4")
          .with("D", "outer diameter", Amount.thickness(site.rusted().diameterMetres()))
          .with("d", "inner diameter", Amount.thickness(site.rusted().innerDiameterMetres()))
          .gives(Amount.thickness(column.radiusOfGyrationMetres()));
      fixity();
      design.stages().forEach(stage -> stage(stage, column));
    }
    Stage worst =
        design.stages().stream()
            .max(java.util.Comparator.comparingDouble(Stage::effectiveMetres))
            .orElseGet(() -> new Stage(1, 0, 0, 0, 1));
    sheet.check(
        "pile-bared",
        "Load of one pile against the bared casing as a column, worst stage",
        Amount.force(design.layout().pileKilonewtons()),
        Amount.force(design.baredKilonewtons()),
        Verdict.FAILS,
        Sources.AISC,
        design.stages().isEmpty()
            ? Phrase.of("The piles are set not to be bared.")
            : Phrase.of(
                "Stage {k} governs: {L} free with its fixity, K {K}. The casing alone counts; the fill stiffens it but is not counted."
                    + (strength.headHeld()
                        ? " The head is set as held sideways: prove it."
                        : " The head is taken as free to sway."),
                Map.of(
                    "k", Amount.count(worst.number()),
                    "L", Amount.length(worst.spanMetres()),
                    "K", Amount.ratio(worst.factor()))));
    sheet.check(
        "pile-slenderness",
        "Slenderness of the bared casing",
        Amount.ratio(column.slenderness(worst.factor(), worst.spanMetres())),
        Amount.ratio(SteelColumn.PREFERRED_SLENDERNESS),
        Verdict.REFER,
        Source.memory("ANSI/AISC 360, E2: preferably at most 200"),
        Phrase.of(""));
    sheet.check(
        "casing-wall",
        "Diameter over wall of the casing, so that the wall does not buckle first",
        Amount.ratio(site.rusted().diameterMetres() / site.rusted().wallMetres()),
        Amount.ratio(
            0.11 * site.get(PileNumbers.STEEL_MODULUS) / site.get(PileNumbers.CASING_YIELD)),
        Source.memory("ANSI/AISC 360, Table B4.1a: 0.11 E/Fy"),
        "");
  }

  /** What pushes the piles sideways is not reckoned here: it must not read as if it were. */
  private void sideways() {
    List<String> pushes = new ArrayList<>();
    if (!site.is(PileInputs.LATERAL, "low")) {
      pushes.add("sideways demand of the structure: " + site.inputs().get(PileInputs.LATERAL));
    }
    if (!design.stages().isEmpty()
        && !site.is(PileInputs.WALL_FIRST, "stiff-watertight")
        && !site.is(PileInputs.WALL_FIRST, "stiff")) {
      pushes.add("ground that moves towards an open or flexible face");
    }
    sheet.verdict(
        "sideways",
        "Causes of bending in the piles that the site names, against those reckoned here",
        Amount.count(pushes.size()),
        Amount.count(0),
        pushes.isEmpty() ? Verdict.PASSES : Verdict.REFER,
        Source.judgement(),
        Phrase.of(
            pushes.isEmpty()
                ? "None is named; tolerance out of plumb still bends a bared pile."
                : "Named: "
                    + String.join("; ", pushes)
                    + ". An engineer reckons the bending of the bared casing and its joints, with the tolerance out of plumb, and adds it to the load above."));
  }

  private void fixity() {
    Amount depth = Amount.length(design.fixityMetres());
    Amount bending = Amount.stress(strength.column().modulusKilopascals());
    switch (site.settings().get(PileChoices.FIXITY)) {
      case "sand" ->
          sheet
              .step(
                  "fixity",
                  "Depth of fixity below the dug level, sand",
                  "Lf = 1.8 × ({E} × {A} × {r}^2 / {nh})^0.2")
              .with("E", "modulus of steel", bending)
              .with("A", "casing after rust", Amounts.section(strength.column().areaSquareMetres()))
              .with(
                  "r",
                  "radius of gyration",
                  Amount.thickness(strength.column().radiusOfGyrationMetres()))
              .with("nh", "growth of the horizontal modulus", site.amount(ColumnNumbers.NH))
              .from(Sources.FIXITY)
              .gives(depth);
      case "clay" ->
          sheet
              .step(
                  "fixity",
                  "Depth of fixity below the dug level, clay",
                  "Lf = 1.4 × ({E} × {A} × {r}^2 / {k})^0.25")
              .with("E", "modulus of steel", bending)
              .with("A", "casing after rust", Amounts.section(strength.column().areaSquareMetres()))
              .with(
                  "r",
                  "radius of gyration",
                  Amount.thickness(strength.column().radiusOfGyrationMetres()))
              .with("k", "horizontal modulus", site.amount(ColumnNumbers.K_CLAY))
              .from(Sources.FIXITY)
              .gives(depth);
      default ->
          sheet
              .step("fixity", "Depth of fixity below the dug level, by rule", "Lf = {d}")
              .with(
                  "d",
                  strength.softGround() ? "the rule for soft ground" : "the rule for stiff ground",
                  depth)
              .from(Sources.IBC_FREE)
              .gives(depth);
    }
  }

  private void stage(Stage stage, SteelColumn column) {
    double ratio =
        column.yieldKilopascals()
            * Math.pow(column.slenderness(stage.factor(), stage.spanMetres()), 2)
            / (Math.PI * Math.PI * column.modulusKilopascals());
    String sign = "Pb" + stage.number();
    String formula =
        ratio <= 2.25
            ? " = 0.658^({Fy} × ({K} × {L} / {r})^2 / (9.8696 × {E})) × {Fy} × {A}"
            : " = 0.877 × 9.8696 × {E} / ({K} × {L} / {r})^2 × {A}";
    sheet
        .step(
            "bared-stage-" + stage.number(),
            "Stage " + stage.number() + " of digging, " + braces(stage.bracesSet()),
            sign + formula + safety())
        .with("Fy", "yield stress of the casing", site.amount(PileNumbers.CASING_YIELD))
        .with("K", "effective length factor of the governing span", Amount.ratio(stage.factor()))
        .with("L", "governing span with its fixity", Amount.length(stage.spanMetres()))
        .with("r", "radius of gyration", Amount.thickness(column.radiusOfGyrationMetres()))
        .with("E", "modulus of steel", site.amount(PileNumbers.STEEL_MODULUS))
        .with("A", "casing after rust", Amounts.section(column.areaSquareMetres()))
        .with("g", safetyMeaning(), safetyFactor())
        .from(Sources.AISC)
        .note(
            Phrase.of(
                "Dug to {dug} below the cap; Fy/Fe is {ratio}.",
                "dug",
                Amount.length(stage.dugMetres()),
                "ratio",
                Amount.ratio(ratio)))
        .gives(Amount.force(strength.column(stage.factor(), stage.spanMetres())));
  }

  /** The end of a column formula: the factor of safety, or those of LRFD. */
  private String safety() {
    return strength.lrfd() ? " × 0.9 / {g}" : " / {g}";
  }

  private Amount safetyFactor() {
    return strength.lrfd()
        ? site.amount(ColumnNumbers.STEEL_LOAD_FACTOR)
        : Amount.ratio(SteelColumn.OMEGA);
  }

  private String safetyMeaning() {
    return strength.lrfd() ? "factor on all loads" : "factor of safety of compression";
  }

  static String braces(int set) {
    return switch (set) {
      case 0 -> "no bracing set";
      case 1 -> "one level of bracing set";
      default -> set + " levels of bracing set";
    };
  }
}
