package underhold.sizing.needles;

import java.util.ArrayList;
import java.util.List;
import underhold.mechanics.steel.BeamShear;
import underhold.mechanics.steel.DesignMethod;
import underhold.mechanics.steel.MomentGradient;
import underhold.mechanics.steel.NominalStrength;
import underhold.mechanics.steel.RolledSection;
import underhold.mechanics.steel.Steel;
import underhold.mechanics.steel.StrongAxisFlexure;
import underhold.sizing.Amount;
import underhold.sizing.SheetBuilder;
import underhold.sizing.Source;
import underhold.sizing.StepBuilder;

/** A needle by AISC 360: allowable strength, or load and resistance factors. */
final class AiscNeedle implements SteelCode {
  private static final double COMPACT_WEB = 3.76;

  private final NeedleCase site;
  private final Steel steel;
  private final DesignMethod method;
  private final AiscWeb web;

  AiscNeedle(NeedleCase site) {
    this.site = site;
    this.steel = site.steel();
    this.method = site.designMethod();
    this.web = new AiscWeb(site);
  }

  @Override
  public boolean covers(RolledSection section) {
    return section.plates().webSlenderness() <= COMPACT_WEB * steel.rootModulusOverYield();
  }

  @Override
  public Source source() {
    return Sources.AISC_FLEXURE;
  }

  /** Half of a linear diagram where the load point is held, else Cb = 1. */
  private double gradient(NeedleBeam beam) {
    boolean linear = site.held() && beam instanceof NeedleBeam.Seated;
    return linear ? MomentGradient.factor(x -> x, 0, 1) : MomentGradient.UNIFORM;
  }

  private double unbraced(NeedleBeam beam) {
    return beam.unbraced(site.held(), site.get(BeamSettings.CANTILEVER_LENGTH));
  }

  @Override
  public List<Limb> limbs(RolledSection section, NeedleBeam beam) {
    double own = section.weightKilonewtonsPerMetre();
    double factor = site.loadFactor();
    NominalStrength bending =
        new StrongAxisFlexure(section, steel).nominal(unbraced(beam), gradient(beam));
    NominalStrength shear = new BeamShear(section, steel).alongWeb();
    List<Limb> limbs = new ArrayList<>();
    limbs.add(
        new Limb(
            "bending",
            "bending",
            factor * beam.moment(own),
            bending.available(method),
            Amount.moment(0)));
    limbs.add(
        new Limb(
            "shear", "shear", factor * beam.shear(own), shear.available(method), Amount.force(0)));
    limbs.addAll(web.limbs(section, beam));
    return limbs;
  }

  @Override
  public void write(SheetBuilder sheet, RolledSection section, NeedleBeam beam) {
    double nominal = bending(sheet, section, beam);
    available(
            sheet.step(
                "bending-capacity", "Available moment of " + section.name(), form("Mc", "{Mn}")),
            StrongAxisFlexure.PHI,
            StrongAxisFlexure.OMEGA)
        .with("Mn", "nominal moment", Amount.moment(nominal))
        .from(Sources.AISC_FLEXURE)
        .gives(
            Amount.moment(
                new NominalStrength(nominal, StrongAxisFlexure.PHI, StrongAxisFlexure.OMEGA)
                    .available(method)));
    shear(sheet, section);
    web.write(sheet, section, beam);
  }

  private double bending(SheetBuilder sheet, RolledSection section, NeedleBeam beam) {
    StrongAxisFlexure flexure = new StrongAxisFlexure(section, steel);
    double plastic =
        sheet
            .step("plastic-moment", "Plastic moment of " + section.name(), "Mp = {Fy} × {Zx}")
            .with("Fy", "yield strength", site.amount(BeamSettings.YIELD))
            .with("Zx", "plastic modulus", BeamSettings.modulus(section.strong().plasticModulus()))
            .from(Sources.AISC_FLEXURE)
            .gives(Amount.moment(flexure.plasticMoment()));
    double lp =
        sheet
            .step(
                "plastic-length",
                "Unbraced length up to which it reaches Mp",
                "Lp = 1.76 × {ry} × sqrt({E} / {Fy})")
            .with("ry", "weak radius of gyration", Amount.thickness(section.weak().radiusMetres()))
            .with("E", "modulus of steel", Amount.stress(steel.elasticModulusKilopascals()))
            .with("Fy", "yield strength", site.amount(BeamSettings.YIELD))
            .from(Sources.AISC_FLEXURE)
            .gives(Amount.length(flexure.plasticLengthMetres()));
    double lr = elasticLength(sheet, section, flexure);
    double torsional = torsional(sheet, section, flexure, beam, plastic, lp, lr);
    if (flexure.compactFlange()) {
      return torsional;
    }
    return Math.min(torsional, flange(sheet, section, flexure, plastic));
  }

  private double elasticLength(
      SheetBuilder sheet, RolledSection section, StrongAxisFlexure flexure) {
    return sheet
        .step(
            "elastic-length",
            "Unbraced length beyond which it buckles elastically",
            "Lr = 1.95 × {rts} × {E} / (0.7 × {Fy}) × sqrt({x} + sqrt({x}^2 + 6.76 × (0.7 × {Fy} / {E})^2))")
        .with(
            "rts", "effective radius", Amount.thickness(section.torsion().effectiveRadiusMetres()))
        .with("E", "modulus of steel", Amount.stress(steel.elasticModulusKilopascals()))
        .with("Fy", "yield strength", site.amount(BeamSettings.YIELD))
        .with("x", "J / (Sx ho), from the table", Amount.ratio(torsion(section)))
        .from(Sources.AISC_FLEXURE)
        .gives(Amount.length(flexure.elasticLengthMetres()));
  }

  private static double torsion(RolledSection section) {
    return section.torsion().constant()
        / (section.strong().elasticModulus() * section.torsion().flangeDistanceMetres());
  }

  private double torsional(
      SheetBuilder sheet,
      RolledSection section,
      StrongAxisFlexure flexure,
      NeedleBeam beam,
      double plastic,
      double lp,
      double lr) {
    double unbraced = unbraced(beam);
    double nominal = flexure.lateralTorsional(unbraced, gradient(beam)).nominal();
    String title = "Nominal moment with lateral-torsional buckling";
    StepBuilder step;
    if (unbraced <= lp) {
      step = sheet.step("lateral-torsional", title + ": Lb is below Lp", "Mn = {Mp}");
    } else if (unbraced <= lr) {
      step =
          sheet
              .step(
                  "lateral-torsional",
                  title + ": Lb is between Lp and Lr",
                  "Mn = min({Cb} × ({Mp} - ({Mp} - 0.7 × {Fy} × {Sx}) × ({Lb} - {Lp}) / ({Lr} - {Lp})), {Mp})")
              .with("Fy", "yield strength", site.amount(BeamSettings.YIELD))
              .with("Lp", "plastic length", Amount.length(lp))
              .with("Lr", "elastic length", Amount.length(lr));
    } else {
      step =
          sheet
              .step(
                  "lateral-torsional",
                  title + ": Lb is above Lr",
                  "Mn = min({Cb} × 3.14159265^2 × {E} / ({Lb} / {rts})^2 × sqrt(1 + 0.078 × {x} × ({Lb} / {rts})^2) × {Sx}, {Mp})")
              .with("E", "modulus of steel", Amount.stress(steel.elasticModulusKilopascals()))
              .with(
                  "rts",
                  "effective radius",
                  Amount.length(section.torsion().effectiveRadiusMetres()))
              .with("x", "J / (Sx ho), from the table", Amount.ratio(torsion(section)));
    }
    if (unbraced > lp) {
      step.with("Cb", "moment gradient factor", Amount.ratio(gradient(beam)))
          .with("Sx", "elastic modulus", BeamSettings.modulus(section.strong().elasticModulus()))
          .with("Lb", "unbraced length", Amount.length(unbraced));
    }
    return step.with("Mp", "plastic moment", Amount.moment(plastic))
        .from(Sources.AISC_FLEXURE)
        .note(
            site.held()
                ? "The load point is held sideways and against twist, as set."
                : "The load sits on a free top flange: Cb = 1.")
        .gives(Amount.moment(nominal));
  }

  private double flange(
      SheetBuilder sheet, RolledSection section, StrongAxisFlexure flexure, double plastic) {
    double root = steel.rootModulusOverYield();
    return sheet
        .step(
            "flange-buckling",
            "Nominal moment with local buckling of the flange, which is not compact",
            "Mn = {Mp} - ({Mp} - 0.7 × {Fy} × {Sx}) × ({f} - {fp}) / ({fr} - {fp})")
        .with("Mp", "plastic moment", Amount.moment(plastic))
        .with("Fy", "yield strength", site.amount(BeamSettings.YIELD))
        .with("Sx", "elastic modulus", BeamSettings.modulus(section.strong().elasticModulus()))
        .with("f", "bf / 2tf", Amount.ratio(section.plates().flangeSlenderness()))
        .with("fp", "0.38 sqrt(E/Fy)", Amount.ratio(0.38 * root))
        .with("fr", "1.0 sqrt(E/Fy)", Amount.ratio(root))
        .from(Sources.AISC_FLEXURE)
        .gives(Amount.moment(flexure.flangeLocalBuckling().nominal()));
  }

  private void shear(SheetBuilder sheet, RolledSection section) {
    BeamShear shear = new BeamShear(section, steel);
    NominalStrength strength = shear.alongWeb();
    double gross =
        0.6
            * site.get(BeamSettings.YIELD)
            * section.plates().depthMetres()
            * section.plates().webThicknessMetres();
    available(
            sheet.step(
                "shear-capacity",
                "Available shear of " + section.name(),
                form("Vc", "0.6 × {Fy} × {d} × {tw} × {Cv}")),
            strength.phi(),
            strength.omega())
        .with("Fy", "yield strength", site.amount(BeamSettings.YIELD))
        .with("d", "depth", Amount.thickness(section.plates().depthMetres()))
        .with("tw", "web", Amount.thickness(section.plates().webThicknessMetres()))
        .with("Cv", "web shear coefficient", Amount.ratio(strength.nominal() / gross))
        .from(Sources.AISC_SHEAR)
        .note(
            shear.stockyWeb()
                ? ""
                : "h/tw is above 2.24 sqrt(E/Fy): the larger safety factor applies.")
        .gives(Amount.force(strength.available(method)));
  }

  /** "Mc = {Mn} / {F}" or "Mc = {F} × {Mn}". */
  private String form(String result, String nominal) {
    return method == DesignMethod.ASD
        ? result + " = " + nominal + " / {F}"
        : result + " = {F} × " + nominal;
  }

  private StepBuilder available(StepBuilder step, double phi, double omega) {
    return method == DesignMethod.ASD
        ? step.with("F", "Omega", Amount.ratio(omega))
        : step.with("F", "phi", Amount.ratio(phi));
  }
}
