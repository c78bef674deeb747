package underhold.sizing.needles;

import java.util.ArrayList;
import java.util.List;
import underhold.mechanics.steel.BearingStiffeners;
import underhold.mechanics.steel.EurocodeBending;
import underhold.mechanics.steel.EurocodeClass;
import underhold.mechanics.steel.EurocodeShear;
import underhold.mechanics.steel.EurocodeStiffeners;
import underhold.mechanics.steel.PatchLoad;
import underhold.mechanics.steel.RolledSection;
import underhold.mechanics.steel.Steel;
import underhold.mechanics.steel.WebLocalYielding;
import underhold.sizing.Amount;
import underhold.sizing.Phrase;
import underhold.sizing.SheetBuilder;
import underhold.sizing.Source;

/** A needle by EN 1993-1-1 and EN 1993-1-5, partial factors of resistance 1.0. */
final class EurocodeNeedle implements SteelCode {
  private final NeedleCase site;
  private final Steel steel;

  EurocodeNeedle(NeedleCase site) {
    this.site = site;
    this.steel = site.steel();
  }

  @Override
  public boolean covers(RolledSection section) {
    return EurocodeClass.inBending(section, steel) <= 3 && EurocodeShear.applies(section, steel);
  }

  @Override
  public Source source() {
    return Sources.EUROCODE_BENDING;
  }

  @Override
  public List<Limb> limbs(RolledSection section, NeedleBeam beam) {
    double own = section.weightKilonewtonsPerMetre();
    double factor = site.loadFactor();
    EurocodeBending bending = new EurocodeBending(section, steel);
    List<Limb> limbs = new ArrayList<>();
    limbs.add(
        new Limb(
            "bending",
            "bending",
            factor * beam.moment(own),
            bending.bucklingMoment(critical(section, bending, beam)),
            Amount.moment(0)));
    limbs.add(
        new Limb(
            "shear",
            "shear",
            factor * beam.shear(own),
            EurocodeShear.resistance(section, steel),
            Amount.force(0)));
    for (WebPlace place : places(section, beam)) {
      limbs.addAll(
          needsStiffeners(section, place)
              ? stiffened(section, place, plates(section, place))
              : List.of(bare(section, place)));
    }
    return limbs;
  }

  private List<WebPlace> places(RolledSection section, NeedleBeam beam) {
    return List.of(
        WebPlace.load(site, beam), WebPlace.jack(site, beam, section.weightKilonewtonsPerMetre()));
  }

  /** C1 of a mid-span load on the top flange; 1 and no height where held or cantilevered. */
  private double critical(RolledSection section, EurocodeBending bending, NeedleBeam beam) {
    double length = unbraced(beam);
    return uniform(beam)
        ? bending.criticalMoment(length, 1, 0, 0)
        : bending.criticalMoment(
            length,
            EurocodeBending.MIDSPAN_C1,
            EurocodeBending.MIDSPAN_C2,
            section.plates().depthMetres() / 2);
  }

  private boolean uniform(NeedleBeam beam) {
    return site.held() || beam instanceof NeedleBeam.Tailed;
  }

  private double unbraced(NeedleBeam beam) {
    return beam.unbraced(site.held(), site.get(BeamSettings.CANTILEVER_LENGTH));
  }

  private boolean needsStiffeners(RolledSection section, WebPlace place) {
    return switch (site.get(BeamSettings.STIFFENERS)) {
      case "none" -> false;
      case "as-needed" -> place.atFreeEnd() || !bare(section, place).passes();
      default -> true;
    };
  }

  private EurocodeStiffeners plates(RolledSection section, WebPlace place) {
    List<Double> sold = site.plateThicknesses();
    return sold.stream()
        .map(thickness -> pair(section, thickness))
        .filter(
            pair ->
                pair.plates().bigEnough()
                    && stiffened(section, place, pair).stream().allMatch(Limb::passes))
        .findFirst()
        .orElseGet(() -> pair(section, sold.get(sold.size() - 1)));
  }

  private EurocodeStiffeners pair(RolledSection section, double thickness) {
    return new EurocodeStiffeners(BearingStiffeners.fullWidth(section, steel, thickness));
  }

  private List<Limb> stiffened(RolledSection section, WebPlace place, EurocodeStiffeners pair) {
    boolean inside = WebLocalYielding.inside(section, place.bearing());
    return List.of(
        limb(place, "stiffener-column", "stiffeners as a column", pair.column(inside)),
        limb(place, "stiffener-bearing", "bearing of the stiffeners", pair.bearing()));
  }

  private Limb bare(RolledSection section, WebPlace place) {
    return limb(place, "patch-load", "patch load", patch(section, place).kilonewtons());
  }

  private PatchLoad.Resistance patch(RolledSection section, WebPlace place) {
    double length = place.bearing().bearingMetres();
    return WebLocalYielding.inside(section, place.bearing())
        ? PatchLoad.inside(section, steel, length)
        : PatchLoad.end(
            section, steel, length, Math.max(0, place.bearing().fromEndMetres() - length / 2));
  }

  private Limb limb(WebPlace place, String id, String words, double capacity) {
    return new Limb(
        place.id() + "-" + id,
        words + " " + place.words(),
        place.force(),
        capacity,
        Amount.force(0));
  }

  @Override
  public void write(SheetBuilder sheet, RolledSection section, NeedleBeam beam) {
    EurocodeBending bending = new EurocodeBending(section, steel);
    int rank = EurocodeClass.inBending(section, steel);
    double whole =
        sheet
            .step("plastic-moment", "Moment of the section " + section.name(), "Mc = {W} × {fy}")
            .with(
                "W",
                rank <= 2 ? "plastic modulus, class " + rank : "elastic modulus, class 3",
                BeamSettings.modulus(bending.modulus()))
            .with("fy", "yield strength", site.amount(BeamSettings.YIELD))
            .from(Sources.EUROCODE_BENDING)
            .gives(Amount.moment(bending.sectionMoment()));
    double critical = writeCritical(sheet, section, bending, beam);
    double slenderness =
        sheet
            .step(
                "slenderness",
                "Slenderness in lateral-torsional buckling",
                "l = sqrt({Mc} / {Mcr})")
            .with("Mc", "moment of the section", Amount.moment(whole))
            .with("Mcr", "critical moment", Amount.moment(critical))
            .from(Sources.EUROCODE_BENDING)
            .gives(Amount.ratio(bending.slenderness(critical)));
    sheet
        .step("bending-capacity", "Design moment of " + section.name(), "Mb = {chi} × {Mc}")
        .with(
            "chi",
            "reduction for that slenderness, 6.3.2.3, curve b or c",
            Amount.ratio(bending.reduction(critical)))
        .with("Mc", "moment of the section", Amount.moment(whole))
        .from(Sources.EUROCODE_BENDING)
        .note("At a slenderness of " + rounded(slenderness) + ".")
        .gives(Amount.moment(bending.bucklingMoment(critical)));
    sheet
        .step("shear-capacity", "Design shear of " + section.name(), "V = {Av} × {fy} / sqrt(3)")
        .with("Av", "shear area", BeamSettings.steelArea(EurocodeShear.area(section)))
        .with("fy", "yield strength", site.amount(BeamSettings.YIELD))
        .from(Sources.EUROCODE_SHEAR)
        .gives(Amount.force(EurocodeShear.resistance(section, steel)));
    for (WebPlace place : places(section, beam)) {
      writeWeb(sheet, section, place);
    }
  }

  private static String rounded(double value) {
    return String.format(java.util.Locale.ROOT, "%.3f", value);
  }

  private double writeCritical(
      SheetBuilder sheet, RolledSection section, EurocodeBending bending, NeedleBeam beam) {
    boolean uniform = uniform(beam);
    double length = unbraced(beam);
    double euler =
        Math.PI
            * Math.PI
            * steel.elasticModulusKilopascals()
            * section.weak().secondMoment()
            / (length * length);
    return sheet
        .step(
            "critical-moment",
            "Critical moment of lateral-torsional buckling",
            "Mcr = {C1} × {Pe} × (sqrt({w} + {t} + ({C2} × {z})^2) - {C2} × {z})")
        .with("C1", "moment factor", Amount.ratio(uniform ? 1 : EurocodeBending.MIDSPAN_C1))
        .with("C2", "load height factor", Amount.ratio(uniform ? 0 : EurocodeBending.MIDSPAN_C2))
        .with("Pe", "weak-axis Euler force over the unbraced length", Amount.force(euler))
        .with(
            "w",
            "Iw / Iz",
            BeamSettings.steelArea(section.torsion().warping() / section.weak().secondMoment()))
        .with(
            "t",
            "G It / Pe",
            BeamSettings.steelArea(
                steel.shearModulusKilopascals() * section.torsion().constant() / euler))
        .with(
            "z",
            "height of the load above mid-depth",
            Amount.length(section.plates().depthMetres() / 2))
        .from(Sources.EUROCODE_BENDING)
        .gives(Amount.moment(critical(section, bending, beam)));
  }

  private void writeWeb(SheetBuilder sheet, RolledSection section, WebPlace place) {
    PatchLoad.Resistance patch = patch(section, place);
    sheet
        .step(
            place.id() + "-patch-load",
            "Bare web " + place.words(),
            "FR = {chi} × {fy} × {ly} × {tw}")
        .with("chi", "reduction, 0.5 / slenderness", Amount.ratio(patch.reduction()))
        .with("fy", "yield strength", site.amount(BeamSettings.YIELD))
        .with("ly", "length of web that yields", Amount.thickness(patch.lengthMetres()))
        .with("tw", "web", Amount.thickness(section.plates().webThicknessMetres()))
        .from(Sources.EUROCODE_WEB)
        .note(
            bare(section, place).passes()
                ? "The web would do without stiffeners."
                : "Without stiffeners it fails.")
        .gives(Amount.force(patch.kilonewtons()));
    if (!needsStiffeners(section, place)) {
      return;
    }
    EurocodeStiffeners pair = plates(section, place);
    boolean inside = WebLocalYielding.inside(section, place.bearing());
    double area = pair.columnArea(inside);
    sheet
        .step(
            place.id() + "-stiffener-column",
            "Stiffeners " + place.words() + " as a column",
            "R = {chi} × {As} × {fy}")
        .with(
            "chi",
            "reduction, curve c, length 0.75 hw",
            Amount.ratio(pair.column(inside) / (area * steel.yieldKilopascals())))
        .with("As", "two plates with 15 epsilon tw of web a side", BeamSettings.steelArea(area))
        .with("fy", "yield strength", site.amount(BeamSettings.YIELD))
        .from(Sources.EUROCODE_WEB)
        .note(
            Phrase.of(
                "Plates {t} thick. The welds are not covered here.",
                "t",
                Amount.thickness(pair.plates().thicknessMetres())))
        .gives(Amount.force(pair.column(inside)));
  }
}
