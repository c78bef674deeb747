package underhold.sizing.pits;

import underhold.mechanics.timber.BoardUnderPressure;
import underhold.mechanics.timber.CombinedStress;
import underhold.mechanics.timber.NdsFactors;
import underhold.sizing.Amount;
import underhold.sizing.Phrase;
import underhold.sizing.SheetBuilder;
import underhold.sizing.Source;

/** Steps and checks of a board on the flat. */
final class BoardSteps {
  private final PitsCase site;
  private final SheetBuilder sheet;
  private final BoardStrength allowed;

  BoardSteps(PitsCase site, SheetBuilder sheet, BoardStrength allowed) {
    this.site = site;
    this.sheet = sheet;
    this.allowed = allowed;
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
            .with("E", "elastic modulus, wet", Amount.stress(allowed.modulus()))
            .with("t", "actual thickness", Amount.thickness(thickness))
            .gives(Amount.thickness(board.deflection(allowed.modulus())));
    allowables(thickness);
    check("board-bending", "Bending of a board", bending, allowed.bending(thickness));
    check("board-shear", "Shear of a board", shear, allowed.shear());
    check("board-bearing", "Bearing of a board end", bearing, allowed.across());
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
    Amount duty = Amount.ratio(allowed.duration());
    sheet
        .step(
            "board-allowable-bending",
            "Allowable bending stress",
            "Fb' = {Fb} × {CD} × {CM} × {CF} × {Cfu}")
        .with("Fb", "reference value", Amount.stress(allowed.timber().bending()))
        .with("CD", "load duration", duty)
        .with("CM", "wet service", Amount.ratio(NdsFactors.WET_BENDING))
        .with("CF", "size", Amount.ratio(allowed.size()))
        .with("Cfu", "flat use", Amount.ratio(allowed.flat(thickness)))
        .from(Sources.NDS)
        .note("CM is 0.85 even where Fb CF is at most 1,150 psi (7.93 MPa), which would allow 1.0.")
        .gives(Amount.stress(allowed.bending(thickness)));
    sheet
        .step("board-allowable-shear", "Allowable shear stress", "Fv' = {Fv} × {CD} × {CM}")
        .with("Fv", "reference value", Amount.stress(allowed.timber().shear()))
        .with("CD", "load duration", duty)
        .with("CM", "wet service", Amount.ratio(NdsFactors.WET_SHEAR))
        .from(Sources.NDS)
        .gives(Amount.stress(allowed.shear()));
    sheet
        .step("board-allowable-bearing", "Allowable bearing across the grain", "Fc' = {Fc} × {CM}")
        .with("Fc", "reference value", Amount.stress(allowed.timber().compressionAcrossGrain()))
        .with("CM", "wet service", Amount.ratio(NdsFactors.WET_ACROSS_GRAIN))
        .from(Sources.NDS)
        .note("No load duration factor applies; no bearing area factor at the end of a board.")
        .gives(Amount.stress(allowed.across()));
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
            .gives(Amount.stress(BoardStrength.axial(board)));
    double buckling =
        sheet
            .step("board-buckling", "Buckling stress", "Fe = 0.822 × {Em} × ({t} / {L})^2")
            .with("Em", "modulus for stability, wet", Amount.stress(allowed.stabilityModulus()))
            .with("t", "actual thickness", Amount.thickness(thickness))
            .with("L", "span", Amount.length(span))
            .from(Sources.NDS)
            .gives(Amount.stress(allowed.buckling(span, thickness)));
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
            .with("Fa", "allowable along the grain, Fc CD CM", Amount.stress(allowed.along()))
            .with("fb", "bending stress", Amount.stress(board.bendingStress()))
            .with("Fb", "allowable bending stress", Amount.stress(allowed.bending(thickness)))
            .with("Fe", "buckling stress", Amount.stress(buckling))
            .from(Sources.NDS)
            .gives(Amount.ratio(allowed.combined(board)));
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
        Amount.stress(allowed.bending(thickness)),
        site.otherwise(site.faceStrength()),
        Sources.NDS,
        Phrase.of(""));
    double buckling = allowed.buckling(side, thickness);
    if (!CombinedStress.stable(BoardStrength.axial(board), buckling)) {
      sheet.check(
          "approach-use",
          "Thrust along an approach board against buckling",
          Amount.stress(BoardStrength.axial(board)),
          Amount.stress(buckling),
          site.otherwise(site.faceStrength()),
          Sources.NDS,
          Phrase.of(""));
      return;
    }
    double lb = site.get(PitsSetting.BOARD_BEARING);
    double bearing = board.endBearingStress(lb) / allowed.across();
    double deflection =
        board.deflection(allowed.modulus()) / site.get(PitsSetting.BOARD_DEFLECTION);
    double use =
        Math.max(
            Math.max(bearing, deflection),
            Math.max(board.shearStress() / allowed.shear(), allowed.combined(board)));
    use =
        sheet
            .step(
                "approach-use",
                "Bearing, shear, deflection, bending with thrust, approach pit: the greatest use",
                "k = max({p} × {L} / (2 × {lb} × {Fc}), 1.5 × {p} × {L} / (2 × {t} × {Fv}), 5 × {p} × {L}^4 × 12 / (384 × {E} × {t}^3 × {dm}), ({fa} / {Fa})^2 + {fb} / ({Fb} × (1 - {fa} / {Fe})))")
            .with("p", "pressure", Amount.pressure(approach))
            .with("L", "longer side of the approach pit", Amount.length(side))
            .with("lb", "bearing length", site.amount(PitsSetting.BOARD_BEARING))
            .with("Fc", "allowable bearing across the grain", Amount.stress(allowed.across()))
            .with("t", "actual thickness", Amount.thickness(thickness))
            .with("Fv", "allowable shear stress", Amount.stress(allowed.shear()))
            .with("E", "elastic modulus, wet", Amount.stress(allowed.modulus()))
            .with("dm", "deflection allowed", site.amount(PitsSetting.BOARD_DEFLECTION))
            .with(
                "fa",
                "stress along the board, p L / (2 t)",
                Amount.stress(BoardStrength.axial(board)))
            .with("Fa", "allowable along the grain", Amount.stress(allowed.along()))
            .with("fb", "bending stress", Amount.stress(stress))
            .with("Fb", "allowable bending stress", Amount.stress(allowed.bending(thickness)))
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
