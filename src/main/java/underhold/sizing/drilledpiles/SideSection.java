package underhold.sizing.drilledpiles;

import underhold.mechanics.pile.Atmosphere;
import underhold.mechanics.pile.axial.RockSide;
import underhold.sizing.Amount;
import underhold.sizing.Phrase;
import underhold.sizing.SheetBuilder;
import underhold.sizing.Source;
import underhold.sizing.StepBuilder;
import underhold.sizing.drilledpiles.BondLayer.Kind;
import underhold.sizing.zone.SoilClass;

/** Side and base resistance, piece by piece, and the working load of one pile. */
final class SideSection {
  private final PileCase site;
  private final PileDesign design;
  private final SheetBuilder sheet;
  private final Ground ground;

  private SideSection(PileCase site, PileDesign design, SheetBuilder sheet) {
    this.site = site;
    this.design = design;
    this.sheet = sheet;
    this.ground = new Ground(site);
  }

  static void write(PileCase site, PileDesign design, SheetBuilder sheet) {
    new SideSection(site, design, sheet).write();
  }

  private void write() {
    sheet
        .step("embedment", "Embedment below the dug level", "Le = {zt} - {zd}")
        .with("zt", "toe below ground", Amount.length(design.toeMetres()))
        .with("zd", "dug level below ground", Amount.length(site.dugLevel()))
        .note(
            Phrase.of(
                "The shortest that suffices, in steps of {step}; the longest tried where none does.",
                "step",
                Amount.length(Designer.STEP_METRES)))
        .gives(Amount.length(design.toeMetres() - site.dugLevel()));
    if (design.pieces().stream().anyMatch(one -> one.layer().kind() == Kind.SAND)) {
      water();
    }
    int number = 1;
    StringBuilder sum = new StringBuilder();
    for (SidePiece piece : design.pieces()) {
      piece(number, piece);
      sum.append(number == 1 ? "" : " + ").append("{Q").append(number++).append("}");
    }
    StepBuilder total =
        sheet.step(
            "side-total",
            "Side resistance of one pile, ultimate",
            "Qs = " + (design.pieces().isEmpty() ? "0" : sum));
    number = 1;
    for (SidePiece piece : design.pieces()) {
      total.with("Q" + number++, piece.layer().name(), Amount.force(piece.resistanceKilonewtons()));
    }
    total.note(OtherMethods.words(site, design)).gives(Amount.force(design.sideKilonewtons()));
    BaseSection.write(site, design, sheet);
    double allowable =
        sheet
            .step(
                "pile-allowable",
                "Allowable load of one pile by the ground",
                "Qa = ({Qs} + {Qb}) / {F}")
            .with("Qs", "side", Amount.force(design.sideKilonewtons()))
            .with("Qb", "base", Amount.force(design.baseKilonewtons()))
            .with("F", "factor of safety by what is tested", Amount.ratio(site.safetyFactor()))
            .from(Sources.FACTORS)
            .gives(Amount.force(design.ultimateKilonewtons() / site.safetyFactor()));
    sheet.check(
        "pile-bond",
        "Load of one pile against its allowable load by the ground",
        Amount.force(design.layout().pileKilonewtons()),
        Amount.force(allowable),
        Sources.FACTORS,
        site.is(PileChoices.BASE, "counted")
            ? "Side and base together: only where both answer at the working settlement and the base is cleaned and inspected."
            : "Side alone; no base is counted.");
    CodeSection.write(site, design, sheet);
  }

  /** The water that counts, with its reason: nobody should have to guess it from the stresses. */
  private void water() {
    Amount stated = site.amount(PileInputs.WATER);
    boolean lowered = ground.lowered();
    StepBuilder step =
        sheet
            .step(
                "water-after-digging",
                "Water that counts after digging, below ground",
                lowered ? "zw = max({w}, {zd})" : "zw = {w}")
            .with("w", "ground water below ground", stated)
            .from(Source.judgement())
            .note(reason(lowered));
    if (lowered) {
      step.with("zd", "dug level below ground", Amount.length(site.dugLevel()));
    }
    step.gives(Amount.length(ground.waterLevel()));
  }

  private String reason(boolean lowered) {
    boolean set = !site.is(PileChoices.WATER, PileChoices.WATER.fallback());
    if (set) {
      return lowered
          ? "Set so (water-after-digging): it stands no higher than the dug level, so it must be lowered in every layer that carries, and stay so."
          : "Set so (water-after-digging): the layers that carry keep the head stated.";
    }
    if (lowered) {
      return "The site's facts say that lowering is allowed, works and harms nothing: it stands no higher than the dug level, in every layer that carries, and must stay so (water-after-digging).";
    }
    String why =
        site.is(PileInputs.LOWERING, "no")
            ? "By the site's facts lowering is not allowed, does not work or would do harm"
            : site.is(PileInputs.LOWERING, "limited")
                ? "By the site's facts lowering is allowed within limits only"
                : "Nobody stated that lowering is allowed, works and harms nothing";
    return why + ": the layers that carry keep the head stated (water-after-digging).";
  }

  private void piece(int number, SidePiece piece) {
    String range = piece.layer().name();
    if (piece.layer().kind() == Kind.SAND) {
      stress(number, piece);
    }
    switch (piece.layer().kind()) {
      case CLAY -> clay(number, piece);
      case SAND -> sand(number, piece);
      default -> rock(number, piece);
    }
    sheet
        .step(
            "side-" + number,
            "Side resistance in " + range,
            "Q" + number + " = 3.1416 × {D} × {L} × {f}")
        .with("D", "diameter of the hole", Amount.thickness(piece.diameterMetres()))
        .with("L", "length that counts", Amount.length(piece.lengthMetres()))
        .with("f", "unit side resistance", Amount.pressure(piece.unitKilopascals()))
        .note(
            Phrase.of(
                "From {from} to {to} below ground.",
                "from",
                Amount.length(piece.topMetres()),
                "to",
                Amount.length(piece.bottomMetres())))
        .gives(Amount.force(piece.resistanceKilonewtons()));
  }

  private void stress(int number, SidePiece piece) {
    double depth = piece.middleMetres();
    StringBuilder formula = new StringBuilder();
    int index = 1;
    for (BondLayer layer : site.layers()) {
      if (within(layer, depth) > 0) {
        formula.append(index == 1 ? "" : " + ").append("{g" + index + "} × {h" + index + "}");
        index++;
      }
    }
    StepBuilder step =
        sheet.step(
            "stress-" + number,
            "Effective stress after digging, middle of the piece in " + piece.layer().name(),
            "s" + number + " = max(" + formula + " - {gw} × {hw}, 0)");
    index = 1;
    for (BondLayer layer : site.layers()) {
      double height = within(layer, depth);
      if (height > 0) {
        step.with(
            "g" + index, "unit weight of " + layer.name(), Amount.unitWeight(layer.unitWeight()));
        step.with("h" + index, "height of it above the middle", Amount.length(height));
        index++;
      }
    }
    step.with("gw", "unit weight of water", Amount.unitWeight(Ground.WATER_WEIGHT))
        .with(
            "hw", "water above the middle", Amount.length(Math.max(0, depth - ground.waterLevel())))
        .gives(Amount.pressure(piece.stressKilopascals()));
  }

  private double within(BondLayer layer, double depth) {
    return Math.max(
        0, Math.min(layer.bottomMetres(), depth) - Math.max(layer.topMetres(), site.dugLevel()));
  }

  private void clay(int number, SidePiece piece) {
    Amount su = Amount.pressure(Ground.countedStrength(piece.layer()));
    String title = "alpha in " + piece.layer().name();
    String meaning = "undrained strength, counted to 2.5 atmospheres";
    String sign = "a" + number;
    Amount pressure = Amount.pressure(Atmosphere.KILOPASCALS);
    double alpha =
        switch (site.settings().get(PileChoices.ALPHA)) {
          case "2018" ->
              sheet
                  .step(
                      "coefficient-" + number, title, sign + " = min(0.3 + 0.17 × {pa} / {su}, 1)")
                  .with("pa", "atmospheric pressure", pressure)
                  .with("su", meaning, su)
                  .from(Sources.ALPHA_2018)
                  .gives(Amount.ratio(piece.coefficient()));
          case "fixed" ->
              sheet
                  .step("coefficient-" + number, title, sign + " = {a}")
                  .with("a", "one alpha for all clay", site.amount(PileNumbers.FIXED_ALPHA))
                  .from(Sources.ALPHA_FIXED)
                  .gives(Amount.ratio(piece.coefficient()));
          default ->
              sheet
                  .step(
                      "coefficient-" + number,
                      title,
                      sign + " = 0.55 - 0.1 × max({su} / {pa} - 1.5, 0)")
                  .with("su", meaning, su)
                  .with("pa", "atmospheric pressure", pressure)
                  .from(Sources.ALPHA_1999)
                  .gives(Amount.ratio(piece.coefficient()));
        };
    sheet
        .step(
            "unit-" + number,
            "Unit side resistance of " + piece.layer().name(),
            "f" + number + " = {a} × {su}")
        .with("a", "alpha", Amount.ratio(alpha))
        .with("su", meaning, su)
        .from(alphaSource())
        .gives(Amount.pressure(piece.unitKilopascals()));
  }

  private Source alphaSource() {
    return switch (site.settings().get(PileChoices.ALPHA)) {
      case "2018" -> Sources.ALPHA_2018;
      case "fixed" -> Sources.ALPHA_FIXED;
      default -> Sources.ALPHA_1999;
    };
  }

  private void sand(int number, SidePiece piece) {
    String title = "beta in " + piece.layer().name();
    String sign = "b" + number;
    Amount beta = Amount.ratio(piece.coefficient());
    boolean gravelly =
        piece.layer().soil() == SoilClass.DENSE_GRAVEL && site.is(PileChoices.GRAVEL, "gravelly");
    if (site.is(PileChoices.BETA, "2010")) {
      rational(number, piece, title, sign, beta);
    } else if (gravelly) {
      sheet
          .step(
              "coefficient-" + number,
              title,
              sign + " = min(max(2 - 0.15 × {z}^0.75, 0.25), 1.8)",
              sign + " = min(max(2 - 0.06153 × {z}^0.75, 0.25), 1.8)")
          .with("z", "depth below ground", Amount.length(piece.middleMetres()))
          .from(Sources.BETA_GRAVEL)
          .gives(beta);
    } else {
      sheet
          .step(
              "coefficient-" + number,
              title,
              sign + " = min(max(1.5 - 0.245 × sqrt({z}), 0.25), 1.2) × min({N} / 15, 1)",
              sign + " = min(max(1.5 - 0.1353 × sqrt({z}), 0.25), 1.2) × min({N} / 15, 1)")
          .with("z", "depth below ground", Amount.length(piece.middleMetres()))
          .with("N", "N60", Amount.count(piece.layer().blowCount()))
          .from(Sources.BETA_1999)
          .note(
              "By depth below the ground surface, which gives less than by depth below the dug level.")
          .gives(beta);
    }
    sheet
        .step(
            "unit-" + number,
            "Unit side resistance of " + piece.layer().name(),
            "f" + number + " = min({b} × {s}, {fm})")
        .with("b", "beta", beta)
        .with("s", "effective stress", Amount.pressure(piece.stressKilopascals()))
        .with("fm", "largest unit side resistance", Amount.pressure(200))
        .from(Sources.BETA_1999)
        .gives(Amount.pressure(piece.unitKilopascals()));
  }

  private void rational(int number, SidePiece piece, String title, String sign, Amount beta) {
    if (piece.stressKilopascals() <= 0) {
      sheet
          .step("coefficient-" + number, title, sign + " = 0")
          .from(Source.judgement())
          .note("No effective stress.")
          .gives(beta);
      return;
    }
    BondLayer layer = piece.layer();
    sheet
        .step(
            "coefficient-" + number,
            title,
            sign
                + " = min((1 - sin({phi})) × max({sp} / {s}, 1)^sin({phi}) × tan({phi}), tan(45 + {phi} / 2)^2 × tan({phi}))")
        .with(
            "phi",
            "27.5 + 9.2 log10 (N1)60, from 20 to 45 degrees",
            Amount.angle(Ground.angle(layer, piece.stressKilopascals())))
        .with(
            "sp",
            "past stress, 0.47 pa N60^0.6 (sand), 0.47 pa N60^0.8 (silt), 0.15 pa N60 (gravel)",
            Amount.pressure(Ground.grain(layer).preconsolidationKilopascals(layer.blowCount())))
        .with("s", "effective stress", Amount.pressure(piece.stressKilopascals()))
        .from(Sources.BETA_2010)
        .gives(beta);
  }

  private void rock(int number, SidePiece piece) {
    Amount weaker =
        Amount.stress(
            RockSide.weakerKilopascals(
                piece.layer().rockStrength(), site.get(PileNumbers.CONCRETE)));
    String title = "Unit side resistance of " + piece.layer().name();
    String sign = "f" + number;
    String meaning = "the weaker of rock and concrete";
    Amount pressure = Amount.pressure(Atmosphere.KILOPASCALS);
    Amount unit = Amount.pressure(piece.unitKilopascals());
    switch (site.settings().get(PileChoices.ROCK)) {
      case "normal" ->
          sheet
              .step("unit-" + number, title, sign + " = {C} × {pa} × sqrt({q} / {pa})")
              .with("C", "coefficient of the socket", Amount.ratio(piece.coefficient()))
              .with("pa", "atmospheric pressure", pressure)
              .with("q", meaning, weaker)
              .from(Sources.ROCK_SIDE)
              .gives(unit);
      case "textbook" ->
          sheet
              .step(
                  "unit-" + number,
                  title,
                  sign + " = min(6.5645 × sqrt({q}), 0.15 × {q})",
                  sign + " = min(2.5 × sqrt({q}), 0.15 × {q})")
              .with("q", meaning, weaker)
              .from(Sources.ROCK_DAS)
              .note("In psi by its source.")
              .gives(unit);
      default ->
          sheet
              .step("unit-" + number, title, sign + " = 0.65 × {aE} × {pa} × sqrt({q} / {pa})")
              .with(
                  "aE",
                  "joint factor by rock quality, 0 below 20 %",
                  Amount.ratio(piece.coefficient()))
              .with("pa", "atmospheric pressure", pressure)
              .with("q", meaning, weaker)
              .from(Sources.ROCK_JOINTED)
              .gives(unit);
    }
  }
}
