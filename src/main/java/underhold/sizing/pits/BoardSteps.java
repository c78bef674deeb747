package underhold.sizing.pits;

import underhold.mechanics.timber.BoardUnderPressure;
import underhold.mechanics.timber.CombinedStress;
import underhold.mechanics.timber.NdsFactors;
import underhold.mechanics.timber.ReferenceValues;
import underhold.sizing.Amount;
import underhold.sizing.Phrase;
import underhold.sizing.SheetBuilder;
import underhold.sizing.Source;

/** A board on the flat against the allowable stresses of its timber. */
final class BoardSteps {
  private static final double METRES_PER_INCH = 0.0254;

  private final PitsCase site;
  private final SheetBuilder sheet;
  private final ReferenceValues timber;
  private final double nominalWidthInches;
  private final double duration;
  private final double size;

  BoardSteps(PitsCase site, SheetBuilder sheet) {
    this.site = site;
    this.sheet = sheet;
    this.timber = site.settings().timberValues();
    this.nominalWidthInches =
        Math.ceil(site.get(PitsSetting.BOARD_HEIGHT) / METRES_PER_INCH - 1e-6);
    this.duration = NdsFactors.loadDuration(site.get(PitsSetting.BOARD_DURATION) / 24);
    this.size = timber.sizeFactorIncluded() ? 1 : NdsFactors.size(nominalWidthInches);
  }

  private double flat(double thickness) {
    double nominal = (thickness + site.get(PitsSetting.BOARD_LOSS)) / METRES_PER_INCH;
    return NdsFactors.flatUse(nominalWidthInches, Math.rint(nominal));
  }

  private double bending(double thickness) {
    return timber.bending() * duration * NdsFactors.WET_BENDING * size * flat(thickness);
  }

  private double shear() {
    return timber.shear() * duration * NdsFactors.WET_SHEAR;
  }

  private double across() {
    return timber.compressionAcrossGrain() * NdsFactors.WET_ACROSS_GRAIN;
  }

  private double along() {
    return timber.compressionAlongGrain() * duration * NdsFactors.WET_ALONG_GRAIN;
  }

  private double modulus() {
    return timber.elasticModulus() * NdsFactors.WET_MODULUS;
  }

  private double buckling(double span, double thickness) {
    return CombinedStress.bucklingStress(
        timber.stabilityModulus() * NdsFactors.WET_MODULUS, span, thickness);
  }

  /** Stress along a board that braces its neighbour, kPa. */
  private static double axial(BoardUnderPressure board) {
    return board.shear() / board.thicknessMetres();
  }

  boolean passes(double thickness, double pressure, double span, double approach) {
    return stands(new BoardUnderPressure(pressure, span, thickness))
        && stands(
            new BoardUnderPressure(approach, site.get(PitsSetting.APPROACH_WIDTH), thickness));
  }

  private boolean stands(BoardUnderPressure board) {
    return board.bendingStress() <= bending(board.thicknessMetres())
        && board.shearStress() <= shear()
        && board.endBearingStress(site.get(PitsSetting.BOARD_BEARING)) <= across()
        && board.deflection(modulus()) <= site.get(PitsSetting.BOARD_DEFLECTION)
        && combined(board) <= 1;
  }

  private double combined(BoardUnderPressure board) {
    double buckling = buckling(board.spanMetres(), board.thicknessMetres());
    return CombinedStress.stable(axial(board), buckling)
        ? CombinedStress.sum(
            axial(board),
            along(),
            board.bendingStress(),
            bending(board.thicknessMetres()),
            buckling)
        : Double.MAX_VALUE;
  }

  void write(double thickness, double pressure, double span, double approach) {
    BoardUnderPressure board = new BoardUnderPressure(pressure, span, thickness);
    double moment =
        sheet
            .step("board-moment", "Moment of a board", "M = {p} × {L}^2 / 8")
            .with("p", "pressure", Amount.pressure(pressure))
            .with("L", "span", Amount.length(span))
            .gives(Amount.momentPerLength(board.moment()));
    double modulus =
        sheet
            .step("board-modulus", "Section modulus per height of board", "S = {t}^2 / 6")
            .with("t", "actual thickness", Amount.thickness(thickness))
            .note("Per unit of height: in3 per in, mm3 per mm.")
            .gives(Amount.modulusPerLength(board.sectionModulus()));
    double bending =
        sheet
            .step("board-bending", "Bending stress", "fb = {M} / {S}")
            .with("M", "moment", Amount.momentPerLength(moment))
            .with("S", "section modulus", Amount.modulusPerLength(modulus))
            .gives(Amount.stress(board.bendingStress()));
    double shear =
        sheet
            .step("board-shear", "Shear stress", "fv = 1.5 × {p} × {L} / (2 × {t})")
            .with("p", "pressure", Amount.pressure(pressure))
            .with("L", "span", Amount.length(span))
            .with("t", "actual thickness", Amount.thickness(thickness))
            .gives(Amount.stress(board.shearStress()));
    double bearing =
        sheet
            .step(
                "board-bearing",
                "Bearing of the board end in its corner",
                "fc = {p} × {L} / (2 × {lb})")
            .with("p", "pressure", Amount.pressure(pressure))
            .with("L", "span", Amount.length(span))
            .with("lb", "bearing length", site.amount(PitsSetting.BOARD_BEARING))
            .gives(Amount.stress(board.endBearingStress(site.get(PitsSetting.BOARD_BEARING))));
    double deflection =
        sheet
            .step(
                "board-deflection", "Deflection", "d = 5 × {p} × {L}^4 × 12 / (384 × {E} × {t}^3)")
            .with("p", "pressure", Amount.pressure(pressure))
            .with("L", "span", Amount.length(span))
            .with("E", "elastic modulus, wet", Amount.stress(modulus()))
            .with("t", "actual thickness", Amount.thickness(thickness))
            .gives(Amount.thickness(board.deflection(modulus())));
    allowables(thickness);
    check("board-bending", "Bending of a board", bending, bending(thickness));
    check("board-shear", "Shear of a board", shear, shear());
    check("board-bearing", "Bearing of a board end", bearing, across());
    sheet.check(
        "board-deflection",
        "Deflection of a board, which is soil lost from under the footing",
        Amount.thickness(deflection),
        site.amount(PitsSetting.BOARD_DEFLECTION),
        site.otherwise(site.faceStrength()),
        Source.judgement(),
        Phrase.of(""));
    combinedStress(board);
    approachBoards(thickness, approach);
  }

  private void check(String id, String title, double demand, double capacity) {
    sheet.check(
        id,
        title,
        Amount.stress(demand),
        Amount.stress(capacity),
        site.otherwise(site.faceStrength()),
        Sources.NDS,
        Phrase.of(""));
  }

  private void allowables(double thickness) {
    Amount duty = Amount.ratio(duration);
    sheet
        .step(
            "board-allowable-bending",
            "Allowable bending stress",
            "Fb' = {Fb} × {CD} × {CM} × {CF} × {Cfu}")
        .with("Fb", "reference value", Amount.stress(timber.bending()))
        .with("CD", "load duration", duty)
        .with("CM", "wet service", Amount.ratio(NdsFactors.WET_BENDING))
        .with("CF", "size", Amount.ratio(size))
        .with("Cfu", "flat use", Amount.ratio(flat(thickness)))
        .from(Sources.NDS)
        .note("CM is 0.85 even where Fb CF is at most 1,150 psi (7.93 MPa), which would allow 1.0.")
        .gives(Amount.stress(bending(thickness)));
    sheet
        .step("board-allowable-shear", "Allowable shear stress", "Fv' = {Fv} × {CD} × {CM}")
        .with("Fv", "reference value", Amount.stress(timber.shear()))
        .with("CD", "load duration", duty)
        .with("CM", "wet service", Amount.ratio(NdsFactors.WET_SHEAR))
        .from(Sources.NDS)
        .gives(Amount.stress(shear()));
    sheet
        .step("board-allowable-bearing", "Allowable bearing across the grain", "Fc' = {Fc} × {CM}")
        .with("Fc", "reference value", Amount.stress(timber.compressionAcrossGrain()))
        .with("CM", "wet service", Amount.ratio(NdsFactors.WET_ACROSS_GRAIN))
        .from(Sources.NDS)
        .note("No load duration factor applies; no bearing area factor at the end of a board.")
        .gives(Amount.stress(across()));
  }

  private void combinedStress(BoardUnderPressure board) {
    double thickness = board.thicknessMetres();
    double span = board.spanMetres();
    double axial =
        sheet
            .step(
                "board-axial",
                "Stress along the board from the next side of the box",
                "fa = {p} × {L} / (2 × {t})")
            .with("p", "pressure", Amount.pressure(board.pressureKilopascals()))
            .with("L", "span", Amount.length(span))
            .with("t", "actual thickness", Amount.thickness(thickness))
            .gives(Amount.stress(axial(board)));
    double buckling =
        sheet
            .step("board-buckling", "Buckling stress", "Fe = 0.822 × {Em} × ({t} / {L})^2")
            .with(
                "Em",
                "modulus for stability, wet",
                Amount.stress(timber.stabilityModulus() * NdsFactors.WET_MODULUS))
            .with("t", "actual thickness", Amount.thickness(thickness))
            .with("L", "span", Amount.length(span))
            .from(Sources.NDS)
            .gives(Amount.stress(buckling(span, thickness)));
    if (!CombinedStress.stable(axial, buckling)) {
      sheet.check(
          "board-combined",
          "Thrust along a board against buckling",
          Amount.stress(axial),
          Amount.stress(buckling),
          site.otherwise(site.faceStrength()),
          Sources.NDS,
          Phrase.of(""));
      return;
    }
    double sum =
        sheet
            .step(
                "board-combined",
                "Bending and thrust together",
                "k = ({fa} / {Fa})^2 + {fb} / ({Fb} × (1 - {fa} / {Fe}))")
            .with("fa", "stress along the board", Amount.stress(axial))
            .with("Fa", "allowable along the grain, Fc CD CM", Amount.stress(along()))
            .with("fb", "bending stress", Amount.stress(board.bendingStress()))
            .with("Fb", "allowable bending stress", Amount.stress(bending(thickness)))
            .with("Fe", "buckling stress", Amount.stress(buckling))
            .from(Sources.NDS)
            .gives(Amount.ratio(combined(board)));
    sheet.check(
        "board-combined",
        "Bending and thrust together",
        Amount.ratio(sum),
        Amount.ratio(1),
        site.otherwise(site.faceStrength()),
        Sources.NDS,
        Phrase.of(""));
  }

  private void approachBoards(double thickness, double approach) {
    double side = site.get(PitsSetting.APPROACH_WIDTH);
    BoardUnderPressure board = new BoardUnderPressure(approach, side, thickness);
    double stress =
        sheet
            .step(
                "approach-bending",
                "Bending stress, approach pit",
                "fb = {p} × {L}^2 / 8 × 6 / {t}^2")
            .with("p", "pressure", Amount.pressure(approach))
            .with("L", "longer side of the approach pit", Amount.length(side))
            .with("t", "actual thickness", Amount.thickness(thickness))
            .gives(Amount.stress(board.bendingStress()));
    sheet.check(
        "approach-bending",
        "Bending of the boards of the approach pit",
        Amount.stress(stress),
        Amount.stress(bending(thickness)),
        site.otherwise(site.faceStrength()),
        Sources.NDS,
        Phrase.of(""));
    double buckling = buckling(side, thickness);
    if (!CombinedStress.stable(axial(board), buckling)) {
      sheet.check(
          "approach-use",
          "Thrust along an approach board against buckling",
          Amount.stress(axial(board)),
          Amount.stress(buckling),
          site.otherwise(site.faceStrength()),
          Sources.NDS,
          Phrase.of(""));
      return;
    }
    double lb = site.get(PitsSetting.BOARD_BEARING);
    double bearing = board.endBearingStress(lb) / across();
    double deflection = board.deflection(modulus()) / site.get(PitsSetting.BOARD_DEFLECTION);
    double use =
        Math.max(
            Math.max(bearing, deflection),
            Math.max(board.shearStress() / shear(), combined(board)));
    use =
        sheet
            .step(
                "approach-use",
                "Bearing, shear, deflection, bending with thrust, approach pit: the greatest use",
                "k = max({p} × {L} / (2 × {lb} × {Fc}), 1.5 × {p} × {L} / (2 × {t} × {Fv}), 5 × {p} × {L}^4 × 12 / (384 × {E} × {t}^3 × {dm}), ({fa} / {Fa})^2 + {fb} / ({Fb} × (1 - {fa} / {Fe})))")
            .with("p", "pressure", Amount.pressure(approach))
            .with("L", "longer side of the approach pit", Amount.length(side))
            .with("lb", "bearing length", site.amount(PitsSetting.BOARD_BEARING))
            .with("Fc", "allowable bearing across the grain", Amount.stress(across()))
            .with("t", "actual thickness", Amount.thickness(thickness))
            .with("Fv", "allowable shear stress", Amount.stress(shear()))
            .with("E", "elastic modulus, wet", Amount.stress(modulus()))
            .with("dm", "deflection allowed", site.amount(PitsSetting.BOARD_DEFLECTION))
            .with("fa", "stress along the board, p L / (2 t)", Amount.stress(axial(board)))
            .with("Fa", "allowable along the grain", Amount.stress(along()))
            .with("fb", "bending stress", Amount.stress(stress))
            .with("Fb", "allowable bending stress", Amount.stress(bending(thickness)))
            .with("Fe", "buckling stress at this span", Amount.stress(buckling))
            .from(Sources.NDS)
            .gives(Amount.ratio(use));
    sheet.check(
        "approach-use",
        "Boards of the approach pit, all uses",
        Amount.ratio(use),
        Amount.ratio(1),
        site.otherwise(site.faceStrength()),
        Sources.NDS,
        Phrase.of(""));
  }
}
