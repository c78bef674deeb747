package underhold.sizing.pits;

import underhold.mechanics.timber.BoardUnderPressure;
import underhold.mechanics.timber.CombinedStress;
import underhold.mechanics.timber.NdsFactors;
import underhold.mechanics.timber.ReferenceValues;

/** Allowable stresses of the boards by NDS, kPa, and whether a board keeps them all. */
final class BoardStrength {
  private static final double METRES_PER_INCH = 0.0254;

  private final PitsCase site;
  private final ReferenceValues timber;
  private final double nominalWidthInches;
  private final double duration;
  private final double size;

  BoardStrength(PitsCase site, double loadedHours) {
    this.site = site;
    this.timber = site.settings().timberValues();
    this.nominalWidthInches =
        Math.ceil(site.get(PitsSetting.BOARD_HEIGHT) / METRES_PER_INCH - 1e-6);
    this.duration = NdsFactors.loadDuration(loadedHours / 24);
    this.size = timber.sizeFactorIncluded() ? 1 : NdsFactors.size(nominalWidthInches);
  }

  ReferenceValues timber() {
    return timber;
  }

  double duration() {
    return duration;
  }

  double size() {
    return size;
  }

  double flat(double thickness) {
    double nominal = (thickness + site.get(PitsSetting.BOARD_LOSS)) / METRES_PER_INCH;
    return NdsFactors.flatUse(nominalWidthInches, Math.rint(nominal));
  }

  double bending(double thickness) {
    return timber.bending() * duration * NdsFactors.WET_BENDING * size * flat(thickness);
  }

  double shear() {
    return timber.shear() * duration * NdsFactors.WET_SHEAR;
  }

  double across() {
    return timber.compressionAcrossGrain() * NdsFactors.WET_ACROSS_GRAIN;
  }

  double along() {
    return timber.compressionAlongGrain() * duration * NdsFactors.WET_ALONG_GRAIN;
  }

  double modulus() {
    return timber.elasticModulus() * NdsFactors.WET_MODULUS;
  }

  double stabilityModulus() {
    return timber.stabilityModulus() * NdsFactors.WET_MODULUS;
  }

  double buckling(double span, double thickness) {
    return CombinedStress.bucklingStress(stabilityModulus(), span, thickness);
  }

  /** Stress along a board that braces its neighbour, kPa. */
  static double axial(BoardUnderPressure board) {
    return board.shear() / board.thicknessMetres();
  }

  boolean passes(double thickness, double pressure, double span, double approach) {
    return stands(new BoardUnderPressure(pressure, span, thickness))
        && stands(
            new BoardUnderPressure(approach, site.get(PitsSetting.APPROACH_WIDTH), thickness));
  }

  boolean stands(BoardUnderPressure board) {
    return board.bendingStress() <= bending(board.thicknessMetres())
        && board.shearStress() <= shear()
        && board.endBearingStress(site.get(PitsSetting.BOARD_BEARING)) <= across()
        && board.deflection(modulus()) <= site.get(PitsSetting.BOARD_DEFLECTION)
        && combined(board) <= 1;
  }

  double combined(BoardUnderPressure board) {
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
}
