package underhold.sizing.zone;

import java.util.Optional;
import underhold.mechanics.timber.LaggingThickness.Ground;
import underhold.mechanics.timber.SheetingSoil;

/**
 * Class of soil with the careful values that stand in where nothing was measured.
 *
 * <p>Friction angles of sand and gravel: lower end of Caltrans Tables 3-1 and 3-2; base friction:
 * lower end of Table 4-2 (read in a digest). Other angles and all undrained strengths: judgement.
 * Presumptive class: International Building Code Table 1806.2; empty where the table must not be
 * used.
 */
public enum SoilClass {
  /** Sound rock. */
  ROCK("rock", 40, 0, 29, "sedimentary-rock", SheetingSoil.A, Ground.COMPETENT),
  /** Hard or cemented soil. */
  HARD("hard or cemented soil", 37, 0, 22, "sand", SheetingSoil.A, Ground.COMPETENT),
  /** Dense gravel. */
  DENSE_GRAVEL("dense gravel", 37, 0, 29, "gravel", SheetingSoil.C, Ground.COMPETENT),
  /** Dense sand. */
  DENSE_SAND("dense sand", 37, 0, 24, "sand", SheetingSoil.C, Ground.COMPETENT),
  /** Loose sand. */
  LOOSE_SAND("loose sand", 28, 0, 19, "sand", SheetingSoil.C, Ground.DIFFICULT),
  /** Silt. */
  SILT("silt", 26, 0, 17, "clay", SheetingSoil.C, Ground.DIFFICULT),
  /** Stiff clay. */
  STIFF_CLAY("stiff clay", 24, 50, 17, "clay", SheetingSoil.B, Ground.COMPETENT),
  /** Soft clay. */
  SOFT_CLAY("soft clay", 20, 15, 17, "", SheetingSoil.C, Ground.DANGEROUS),
  /** Fill of unknown making. */
  FILL("fill", 26, 0, 17, "", SheetingSoil.C, Ground.DIFFICULT),
  /** Peat or organic soil. */
  PEAT("peat or organic soil", 15, 0, 15, "", SheetingSoil.C, Ground.DANGEROUS);

  private final String label;
  private final double frictionAngleDegrees;
  private final double undrainedStrengthKilopascals;
  private final double baseFrictionDegrees;
  private final String presumptive;
  private final SheetingSoil sheetingSoil;
  private final Ground ground;

  SoilClass(
      String label,
      double frictionAngleDegrees,
      double undrainedStrengthKilopascals,
      double baseFrictionDegrees,
      String presumptive,
      SheetingSoil sheetingSoil,
      Ground ground) {
    this.label = label;
    this.frictionAngleDegrees = frictionAngleDegrees;
    this.undrainedStrengthKilopascals = undrainedStrengthKilopascals;
    this.baseFrictionDegrees = baseFrictionDegrees;
    this.presumptive = presumptive;
    this.sheetingSoil = sheetingSoil;
    this.ground = ground;
  }

  /** In words. */
  public String label() {
    return label;
  }

  /** Whether short-term strength is undrained. */
  public boolean clay() {
    return undrainedStrengthKilopascals > 0;
  }

  /** Whether water in it carries grains into a pit. */
  public boolean runs() {
    return this != ROCK && this != HARD && !clay();
  }

  public double frictionAngleDegrees() {
    return frictionAngleDegrees;
  }

  public double undrainedStrengthKilopascals() {
    return undrainedStrengthKilopascals;
  }

  public double baseFrictionDegrees() {
    return baseFrictionDegrees;
  }

  public Optional<String> presumptiveClass() {
    return presumptive.isEmpty() ? Optional.empty() : Optional.of(presumptive);
  }

  public SheetingSoil sheetingSoil() {
    return sheetingSoil;
  }

  public Ground ground() {
    return ground;
  }
}
