package underhold.mechanics.steel;

/**
 * Bending of a doubly symmetric I section about its strong axis, AISC 360-16 F2 (yielding,
 * lateral-torsional buckling) and F3 (flange local buckling where the flange is not compact); phi
 * 0.90, Omega 1.67.
 *
 * <p>Mp = Fy Zx. Lp = 1.76 ry sqrt(E/Fy). Lr = 1.95 rts E/(0.7Fy) sqrt(Jc/(Sx ho) + sqrt((Jc/(Sx
 * ho))^2 + 6.76 (0.7Fy/E)^2)), c = 1. Between Lp and Lr: Mn = Cb (Mp - (Mp - 0.7 Fy Sx)(Lb -
 * Lp)/(Lr - Lp)) at most Mp; beyond Lr: Mn = Fcr Sx at most Mp, Fcr = Cb pi^2 E/(Lb/rts)^2 sqrt(1 +
 * 0.078 Jc/(Sx ho) (Lb/rts)^2). F3 between lambda-p = 0.38 sqrt(E/Fy) and lambda-r = 1.0
 * sqrt(E/Fy): Mn = Mp - (Mp - 0.7 Fy Sx)(lambda - lambda-p)/(lambda-r - lambda-p); beyond: 0.9 E kc
 * Sx / lambda^2.
 *
 * <p>Source: AISC 360-16; Mp and the flange limits read in AISC Design Examples v15.1 (F.1), the
 * rest from memory but reproducing those examples. Valid for compact webs, h/tw at most 3.76
 * sqrt(E/Fy).
 *
 * @param section the section
 * @param steel its steel
 */
public record StrongAxisFlexure(RolledSection section, Steel steel) {
  /** Resistance factor of bending. */
  public static final double PHI = 0.90;

  /** Safety factor of bending. */
  public static final double OMEGA = 1.67;

  /** Share of the yield stress left beside residual stress. */
  private static final double RESIDUAL = 0.7;

  private static final double COMPACT_FLANGE = 0.38;
  private static final double NONCOMPACT_FLANGE = 1.0;
  private static final double COMPACT_WEB = 3.76;

  public StrongAxisFlexure {
    if (section.plates().webSlenderness() > COMPACT_WEB * steel.rootModulusOverYield()) {
      throw new IllegalArgumentException(section.name() + ": the web is not compact in bending");
    }
  }

  /** Mp, kN m. */
  public double plasticMoment() {
    return steel.yieldKilopascals() * section.strong().plasticModulus();
  }

  /** 0.7 Fy Sx, kN m. */
  public double firstYieldWithResidual() {
    return RESIDUAL * steel.yieldKilopascals() * section.strong().elasticModulus();
  }

  /** Lp, m. */
  public double plasticLengthMetres() {
    return 1.76 * section.weak().radiusMetres() * steel.rootModulusOverYield();
  }

  /** Lr, m. */
  public double elasticLengthMetres() {
    double yieldRatio = RESIDUAL * steel.yieldKilopascals() / steel.elasticModulusKilopascals();
    double torsion = torsionTerm();
    return 1.95
        * section.torsion().effectiveRadiusMetres()
        / yieldRatio
        * Math.sqrt(torsion + Math.sqrt(torsion * torsion + 6.76 * yieldRatio * yieldRatio));
  }

  /** F2: yielding and lateral-torsional buckling over an unbraced length (0: braced throughout). */
  public NominalStrength lateralTorsional(double unbracedMetres, double gradient) {
    Require.notNegative("unbraced length", unbracedMetres);
    Require.positive("Cb", gradient);
    double plastic = plasticMoment();
    double lp = plasticLengthMetres();
    double lr = elasticLengthMetres();
    double nominal = plastic;
    if (unbracedMetres > lr) {
      nominal = gradient * elasticStress(unbracedMetres) * section.strong().elasticModulus();
    } else if (unbracedMetres > lp) {
      nominal =
          gradient
              * (plastic
                  - (plastic - firstYieldWithResidual()) * (unbracedMetres - lp) / (lr - lp));
    }
    return new NominalStrength(Math.min(nominal, plastic), PHI, OMEGA);
  }

  /** Whether the flange is compact: bf/2tf at most 0.38 sqrt(E/Fy). */
  public boolean compactFlange() {
    return section.plates().flangeSlenderness() <= COMPACT_FLANGE * steel.rootModulusOverYield();
  }

  /** F3: flange local buckling; Mp where the flange is compact. */
  public NominalStrength flangeLocalBuckling() {
    double plastic = plasticMoment();
    double slenderness = section.plates().flangeSlenderness();
    double compact = COMPACT_FLANGE * steel.rootModulusOverYield();
    double noncompact = NONCOMPACT_FLANGE * steel.rootModulusOverYield();
    double nominal = plastic;
    if (slenderness > noncompact) {
      double kc = Math.min(0.76, Math.max(0.35, 4 / Math.sqrt(section.plates().webSlenderness())));
      nominal =
          0.9
              * steel.elasticModulusKilopascals()
              * kc
              * section.strong().elasticModulus()
              / (slenderness * slenderness);
    } else if (slenderness > compact) {
      nominal =
          plastic
              - (plastic - firstYieldWithResidual())
                  * (slenderness - compact)
                  / (noncompact - compact);
    }
    return new NominalStrength(nominal, PHI, OMEGA);
  }

  /** The lower of F2 and F3. */
  public NominalStrength nominal(double unbracedMetres, double gradient) {
    return lateralTorsional(unbracedMetres, gradient).or(flangeLocalBuckling());
  }

  private double elasticStress(double unbracedMetres) {
    double slenderness = unbracedMetres / section.torsion().effectiveRadiusMetres();
    return Math.PI
        * Math.PI
        * steel.elasticModulusKilopascals()
        / (slenderness * slenderness)
        * Math.sqrt(1 + 0.078 * torsionTerm() * slenderness * slenderness);
  }

  /** J c / (Sx ho) with c = 1. */
  private double torsionTerm() {
    return section.torsion().constant()
        / (section.strong().elasticModulus() * section.torsion().flangeDistanceMetres());
  }
}
