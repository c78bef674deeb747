package underhold.sizing.drilledpiles;

import static underhold.sizing.drilledpiles.PileInputs.*;

import underhold.mechanics.pile.PileSection;
import underhold.sizing.Amount;
import underhold.sizing.Phrase;
import underhold.sizing.SheetBuilder;
import underhold.sizing.Source;
import underhold.sizing.Verdict;
import underhold.sizing.zone.NumberInput;

/** Pieces of casing, quantities and time. */
final class WorkSection {
  /** Unit weight of steel, kN/m3. */
  private static final double STEEL_WEIGHT = 77;

  private final PileCase site;
  private final PileDesign design;
  private final WorkPlan plan;
  private final SheetBuilder sheet;

  private WorkSection(PileCase site, PileDesign design, SheetBuilder sheet) {
    this.site = site;
    this.design = design;
    this.plan = WorkPlan.of(site, design);
    this.sheet = sheet;
  }

  static void write(PileCase site, PileDesign design, SheetBuilder sheet) {
    WorkSection section = new WorkSection(site, design, sheet);
    section.joints();
    section.quantities();
    section.hours();
  }

  private void joints() {
    sheet
        .step(
            "casing-piece",
            "Piece of casing that fits under the headroom",
            "lp = max(min({h} - {t}, {m}), 0)")
        .with("h", "headroom where the rig stands", Amount.length(site.access().headroomMetres()))
        .with("t", "taken up by rig and head", site.amount(WorkNumbers.RIG_TOP))
        .with("m", "longest piece", site.amount(WorkNumbers.LONGEST_PIECE))
        .from(Source.judgement())
        .gives(Amount.length(plan.pieceMetres()));
    sheet.check(
        "casing-joints",
        "Shortest practical piece of casing against the piece that fits",
        site.amount(WorkNumbers.LEAST_PIECE),
        Amount.length(plan.pieceMetres()),
        site.otherwise(headrooms()),
        Source.judgement(),
        Phrase.of(
            "Casing of one pile {L}; joints in it: {n}, each a weak place in bending.",
            "L",
            Amount.length(plan.casingMetres()),
            "n",
            Amount.count(plan.joints())));
  }

  private NumberInput[] headrooms() {
    return switch (site.access().from()) {
      case "inside" -> new NumberInput[] {INSIDE_HEADROOM};
      case "outside" -> new NumberInput[] {OUTSIDE_HEADROOM};
      default -> new NumberInput[] {INSIDE_HEADROOM, OUTSIDE_HEADROOM};
    };
  }

  private void quantities() {
    int piles = plan.piles();
    PileSection casing = site.casing();
    double bond =
        design.pieces().stream()
            .mapToDouble(
                one ->
                    one.lengthMetres()
                        * PileSection.uncased(one.diameterMetres()).grossAreaSquareMetres())
            .sum();
    double fill = casing.fillAreaSquareMetres() * SettlementSection.freeLength(site, design) + bond;
    double hole = casing.grossAreaSquareMetres() * (plan.soilMetres() + plan.rockMetres());
    sheet.quantity("piles", Amount.count(piles), plan.groups() > 1 ? "all columns" : "");
    sheet.quantity("drilling in soil", Amount.length(piles * plan.soilMetres()), from());
    sheet.quantity("drilling in rock", Amount.length(piles * plan.rockMetres()), "");
    sheet.quantity(
        "casing, length",
        Amount.length(piles * plan.casingMetres()),
        "from where it is drilled to where the ground counts; cut off at the cap");
    sheet.quantity(
        "casing, weight",
        Amount.force(piles * plan.casingMetres() * casing.casingAreaSquareMetres() * STEEL_WEIGHT),
        "");
    sheet.quantity("casing joints", Amount.count((double) piles * plan.joints()), "");
    if (plan.temporaryMetres() > design.casingBottomMetres()) {
      sheet.quantity(
          "temporary casing, one string below the casing that stays",
          Amount.length(plan.temporaryMetres() - design.casingBottomMetres()),
          "driven on while drilling, pulled as the concrete rises; judgement");
    }
    if (plan.temporaryJoints() > 0) {
      sheet.quantity(
          "temporary casing joints, made and broken again",
          Amount.count((double) piles * plan.temporaryJoints()),
          "");
    }
    sheet.quantity(
        "concrete or grout",
        Amount.volume(piles * fill * site.get(WorkNumbers.OVERBREAK)),
        "with overbreak; bars not taken off");
    sheet.quantity(
        "spoil to cart",
        Amount.volume(piles * hole * site.get(WorkNumbers.BULKING)),
        "loose, without flush water");
    sheet.quantity("load tests", site.amount(WorkNumbers.TESTS), "before the working piles");
  }

  private String from() {
    return WorkPlan.startLevel(site) > 0 ? "from the cap level" : "from ground level";
  }

  private void hours() {
    double shift = WorkPlan.hoursPerShift(site);
    sheet.time(
        "one pile",
        Amount.hours(plan.pileHours()),
        Phrase.of(
            "Judgement, by the rates set: no published rate for low headroom was found."
                + (plan.temporaryJoints() > 0
                    ? " Joints of the temporary casing count twice, made and broken."
                    : "")));
    double all = plan.pileHours() * plan.piles() / site.get(WorkNumbers.RIGS);
    sheet.time("all piles, drilling hours", Amount.hours(all), Phrase.of("Judgement."));
    String unit = WorkPlan.byNight(site) ? "night closures" : "shifts";
    if (shift > 0) {
      sheet.time(
          "all piles, " + unit,
          Amount.count(Math.ceil(all / shift - 1e-9)),
          Phrase.of("Of {h} working hours each; judgement.", "h", Amount.hours(shift)));
    }
    if (WorkPlan.byNight(site)) {
      sheet.check(
          "night-hours",
          "Hours lost in a night closure against its length",
          site.amount(WorkNumbers.POSSESSION_LOSS),
          site.amount(NIGHT),
          Verdict.REFER,
          Source.judgement(),
          Phrase.of(
              "{h} of work are left in a night; one pile takes {p}, so a pile stands half made between nights.",
              "h",
              Amount.hours(shift),
              "p",
              Amount.hours(plan.pileHours())));
    }
  }
}
