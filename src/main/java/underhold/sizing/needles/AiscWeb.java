package underhold.sizing.needles;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import underhold.mechanics.steel.BearingStiffeners;
import underhold.mechanics.steel.DesignMethod;
import underhold.mechanics.steel.NominalStrength;
import underhold.mechanics.steel.RolledSection;
import underhold.mechanics.steel.Steel;
import underhold.mechanics.steel.WebCompressionBuckling;
import underhold.mechanics.steel.WebLocalCrippling;
import underhold.mechanics.steel.WebLocalYielding;
import underhold.mechanics.steel.WebSideswayBuckling;
import underhold.sizing.Amount;
import underhold.sizing.Check;
import underhold.sizing.Phrase;
import underhold.sizing.SheetBuilder;

/** The web of a needle under its load and over its jacks, with and without stiffeners. */
final class AiscWeb {
  private final NeedleCase site;
  private final Steel steel;
  private final DesignMethod method;

  AiscWeb(NeedleCase site) {
    this.site = site;
    this.steel = site.steel();
    this.method = site.designMethod();
  }

  List<Limb> limbs(RolledSection section, NeedleBeam beam) {
    List<Limb> limbs = new ArrayList<>();
    for (WebPlace place : places(section, beam)) {
      limbs.addAll(
          needsStiffeners(section, beam, place)
              ? stiffened(section, place, plates(section, place))
              : bare(section, beam, place));
    }
    return limbs;
  }

  private List<WebPlace> places(RolledSection section, NeedleBeam beam) {
    return List.of(
        WebPlace.load(site, beam), WebPlace.jack(site, beam, section.weightKilonewtonsPerMetre()));
  }

  /** J10.7 asks for them at ends that nothing else holds against rolling over (from memory). */
  private boolean needsStiffeners(RolledSection section, NeedleBeam beam, WebPlace place) {
    return switch (site.get(BeamSettings.STIFFENERS)) {
      case "none" -> false;
      case "as-needed" ->
          place.atFreeEnd() || !bare(section, beam, place).stream().allMatch(Limb::passes);
      default -> true;
    };
  }

  /** The thinnest plates that serve; the thickest sold where none does. */
  private BearingStiffeners plates(RolledSection section, WebPlace place) {
    List<Double> sold = site.plateThicknesses();
    boolean inside = WebLocalYielding.inside(section, place.bearing());
    return sold.stream()
        .map(thickness -> BearingStiffeners.fullWidth(section, steel, thickness))
        .filter(
            pair ->
                pair.bigEnough()
                    && carries(place, pair.column(inside))
                    && carries(place, pair.bearing()))
        .findFirst()
        .orElseGet(() -> BearingStiffeners.fullWidth(section, steel, sold.get(sold.size() - 1)));
  }

  private List<Limb> stiffened(RolledSection section, WebPlace place, BearingStiffeners pair) {
    boolean inside = WebLocalYielding.inside(section, place.bearing());
    return List.of(
        limb(place, "stiffener-column", "stiffeners as a column", pair.column(inside)),
        limb(place, "stiffener-bearing", "bearing of the stiffeners", pair.bearing()));
  }

  private List<Limb> bare(RolledSection section, NeedleBeam beam, WebPlace place) {
    List<Limb> limbs = new ArrayList<>();
    limbs.add(
        limb(
            place,
            "web-yielding",
            "yielding of the web",
            WebLocalYielding.of(section, steel, place.bearing())));
    limbs.add(
        limb(
            place,
            "web-crippling",
            "crippling of the web",
            WebLocalCrippling.of(section, steel, place.bearing())));
    limbs.add(
        limb(
            place,
            "web-squeezed",
            "buckling of a squeezed web",
            WebCompressionBuckling.of(section, steel, place.bearing().fromEndMetres())));
    sidesway(section, beam)
        .filter(strength -> place.id().equals("load"))
        .ifPresent(
            strength -> limbs.add(limb(place, "web-sidesway", "sidesway of the web", strength)));
    return limbs;
  }

  private Optional<NominalStrength> sidesway(RolledSection section, NeedleBeam beam) {
    double factor = method == DesignMethod.ASD ? 1.5 : site.loadFactor();
    double moment = factor * beam.moment(section.weightKilonewtonsPerMetre());
    boolean belowYield = moment < steel.yieldKilopascals() * section.strong().elasticModulus();
    return WebSideswayBuckling.of(
        section,
        beam.unbraced(site.held(), site.get(BeamSettings.CANTILEVER_LENGTH)),
        site.held(),
        belowYield);
  }

  private boolean carries(WebPlace place, NominalStrength strength) {
    return Check.covers(place.force(), strength.available(method));
  }

  private Limb limb(WebPlace place, String id, String words, NominalStrength strength) {
    return new Limb(
        place.id() + "-" + id,
        words + " " + place.words(),
        place.force(),
        strength.available(method),
        Amount.force(0));
  }

  void write(SheetBuilder sheet, RolledSection section, NeedleBeam beam) {
    for (WebPlace place : places(section, beam)) {
      yielding(sheet, section, place);
      crippling(sheet, section, place);
      without(sheet, section, beam, place);
      if (needsStiffeners(section, beam, place)) {
        StiffenerSteps.write(sheet, site, place, plates(section, place));
      }
    }
  }

  private void yielding(SheetBuilder sheet, RolledSection section, WebPlace place) {
    NominalStrength strength = WebLocalYielding.of(section, steel, place.bearing());
    boolean inside = WebLocalYielding.inside(section, place.bearing());
    sheet
        .step(
            place.id() + "-web-yielding",
            "Yielding of the bare web " + place.words() + ", nominal",
            "Rn = {Fy} × {tw} × (" + (inside ? "5" : "2.5") + " × {k} + {lb})")
        .with("Fy", "yield strength", site.amount(BeamSettings.YIELD))
        .with("tw", "web", Amount.thickness(section.plates().webThicknessMetres()))
        .with("k", "flange and fillet", Amount.thickness(section.plates().toeDistanceMetres()))
        .with("lb", "length of bearing", Amount.thickness(place.bearing().bearingMetres()))
        .from(Sources.AISC_WEB)
        .note(factors(strength))
        .gives(Amount.force(strength.nominal()));
  }

  private void crippling(SheetBuilder sheet, RolledSection section, WebPlace place) {
    RolledSection.Plates plates = section.plates();
    NominalStrength strength = WebLocalCrippling.of(section, steel, place.bearing());
    boolean inside = place.bearing().fromEndMetres() >= plates.depthMetres() / 2;
    boolean shortBearing = inside || place.bearing().bearingMetres() <= 0.2 * plates.depthMetres();
    sheet
        .step(
            place.id() + "-web-crippling",
            "Crippling of the bare web " + place.words() + ", nominal",
            "Rn = "
                + (inside ? "0.8" : "0.4")
                + " × {tw}^2 × (1 + ("
                + (shortBearing ? "3 × {lb} / {d}" : "4 × {lb} / {d} - 0.2")
                + ") × ({tw} / {tf})^1.5) × sqrt({E} × {Fy} × {tf} / {tw})")
        .with("tw", "web", Amount.thickness(plates.webThicknessMetres()))
        .with("lb", "length of bearing", Amount.thickness(place.bearing().bearingMetres()))
        .with("d", "depth", Amount.thickness(plates.depthMetres()))
        .with("tf", "flange", Amount.thickness(plates.flangeThicknessMetres()))
        .with("E", "modulus of steel", Amount.stress(steel.elasticModulusKilopascals()))
        .with("Fy", "yield strength", site.amount(BeamSettings.YIELD))
        .from(Sources.AISC_WEB)
        .note(factors(strength))
        .gives(Amount.force(strength.nominal()));
  }

  /** What the bare web would do. */
  private void without(SheetBuilder sheet, RolledSection section, NeedleBeam beam, WebPlace place) {
    List<Limb> limbs = bare(section, beam, place);
    Limb worst = limbs.get(0);
    for (Limb limb : limbs) {
      worst = limb.utilisation() > worst.utilisation() ? limb : worst;
    }
    sheet
        .step(
            place.id() + "-bare-web",
            "Use of the bare web " + place.words() + ": " + worst.words() + " governs",
            "u = {R} / {Rc}")
        .with("R", "force", worst.demandAmount())
        .with("Rc", "available strength", worst.capacityAmount())
        .from(Sources.AISC_WEB)
        .note(
            Phrase.of(
                "Least of yielding, crippling, sidesway where it can occur, and buckling of a web"
                    + " squeezed from both flanges, counted on the safe side."
                    + (worst.passes()
                        ? " The web would do without stiffeners."
                        : " Without stiffeners it fails.")))
        .gives(Amount.ratio(worst.utilisation()));
  }

  private String factors(NominalStrength strength) {
    return method == DesignMethod.ASD
        ? "Omega is " + strength.omega() + "."
        : "phi is " + strength.phi() + ".";
  }
}
