package underhold.sizing.needles;

import static underhold.sizing.needles.NeedleInput.*;

import java.util.Optional;
import underhold.mechanics.soil.bearing.BearingCapacity;
import underhold.mechanics.soil.bearing.BearingCase;
import underhold.mechanics.soil.bearing.BearingGround;
import underhold.mechanics.soil.bearing.DepthEffect;
import underhold.mechanics.soil.bearing.Footing;
import underhold.mechanics.soil.bearing.PresumptiveBearing;
import underhold.mechanics.soil.bearing.VesicBearing;
import underhold.mechanics.soil.settlement.SteinbrennerSettlement;
import underhold.sizing.Amount;
import underhold.sizing.Basis;
import underhold.sizing.Phrase;
import underhold.sizing.SheetBuilder;
import underhold.sizing.Source;
import underhold.sizing.Verdict;
import underhold.sizing.zone.SoilClass;

/** Pads under the seats: their size, bearing and settlement. */
final class SeatSection {
  private static final double NARROWEST_PAD = 0.6;
  private static final double STEP = 0.1;
  private static final double POISSON = 0.3;

  /** Compressible layer below a pad, in widths; judgement. */
  private static final double LAYER_WIDTHS = 4;

  private static final Source INVESTIGATION =
      new Source("ground investigation, as set", Basis.SITE_FACT);

  private final NeedleCase site;
  private final SheetBuilder sheet;

  SeatSection(NeedleCase site, SheetBuilder sheet) {
    this.site = site;
    this.sheet = sheet;
  }

  /** The smallest pad that serves a seat's load; the widest where none does. */
  static Pad pad(NeedleCase site, LoadSection.Load load, double seatLoad) {
    double force = seatLoad * site.get(SupportSettings.SEAT_ALLOWANCE);
    double widest = site.get(SupportSettings.WIDEST_PAD);
    for (int i = 0; NARROWEST_PAD + i * STEP <= widest + 1e-9; i++) {
      Pad pad = new Pad(NARROWEST_PAD + i * STEP, load.spacing(), load.needles());
      if (force / pad.area() <= allowable(site, pad)) {
        return pad;
      }
    }
    return new Pad(widest, load.spacing(), load.needles());
  }

  /** Allowable pressure under a pad, kPa; 0 where nothing allows any. */
  private static double allowable(NeedleCase site, Pad pad) {
    double set = site.get(SupportSettings.SEAT_PRESSURE);
    if (set > 0) {
      return set;
    }
    double listed = listed(site);
    return site.seatSoil() == SoilClass.ROCK
        ? listed
        : Math.min(listed, ultimate(site, pad) / site.get(SupportSettings.BEARING_FACTOR));
  }

  private static double listed(NeedleCase site) {
    return site.seatSoil()
        .presumptiveClass()
        .flatMap(PresumptiveBearing::find)
        .map(PresumptiveBearing::verticalKilopascals)
        .orElse(0.0);
  }

  private static Optional<BearingCapacity> capacity(NeedleCase site, Pad pad) {
    BearingGround ground =
        site.has(SEAT_STRENGTH)
            ? BearingGround.undrained(site.get(SEAT_STRENGTH), 0)
            : new BearingGround(
                site.has(SEAT_FRICTION) ? site.get(SEAT_FRICTION) : 0, 0, 0, site.get(SEAT_WEIGHT));
    return VesicBearing.ultimate(
            BearingCase.centred(
                Footing.rectangle(pad.width(), pad.length(), 0), ground, DepthEffect.IGNORED),
            VesicBearing.CohesionDepthFactor.LINEAR)
        .value();
  }

  private static double ultimate(NeedleCase site, Pad pad) {
    return capacity(site, pad).map(BearingCapacity::ultimateKilopascals).orElse(0.0);
  }

  /** Writes bearing and settlement of a pad; returns the settlement, m. */
  double write(double reaction, Pad pad) {
    double force =
        sheet
            .step("seat-load", "Load on one seat's pad", "R = {Rn} × {v}")
            .with("Rn", "reaction of the needle", Amount.force(reaction))
            .with(
                "v",
                "allowance for jack, crib and pad",
                site.amount(SupportSettings.SEAT_ALLOWANCE))
            .gives(Amount.force(reaction * site.get(SupportSettings.SEAT_ALLOWANCE)));
    double pressure =
        sheet
            .step("seat-pressure", "Pressure under a pad", "q = {R} / ({B} × min({B}, {s}))")
            .with("R", "load on the pad", Amount.force(force))
            .with("B", "side of the pad, in steps of 0.1 m", Amount.length(pad.side()))
            .with("s", "spacing of the needles", Amount.length(pad.spacing()))
            .note(
                pad.joined()
                    ? "Square pads would touch: they join in one mat under all needles of a side."
                    : "A square pad under each seat.")
            .gives(Amount.pressure(force / pad.area()));
    if (site.is(SupportSettings.SEAT, "pile")) {
      sheet.verdict(
          "seat-bearing",
          "Piles under the seats",
          Amount.force(force),
          Amount.force(0),
          Verdict.REFER,
          Source.judgement(),
          Phrase.of(
              "The seats stand on piles, as set: size them on the sheet of drilled piles for this"
                  + " load and let an engineer add their settlement."));
      return 0;
    }
    bearing(pressure, pad);
    return settlement(pressure, pad);
  }

  private void bearing(double pressure, Pad pad) {
    double set = site.get(SupportSettings.SEAT_PRESSURE);
    if (set > 0) {
      check(pressure, set, Verdict.FAILS, INVESTIGATION, "");
      return;
    }
    double listed = listed(site);
    if (site.seatSoil() != SoilClass.ROCK) {
      double ultimate = ultimateStep(pad);
      double allowable =
          sheet
              .step(
                  "seat-allowable",
                  "Allowable pressure under the pad",
                  "qa = min({qp}, {qu} / {F})")
              .with(
                  "qp",
                  "presumptive value of the soil; 0 where there is none",
                  Amount.pressure(listed))
              .with("qu", "ultimate pressure", Amount.pressure(ultimate))
              .with("F", "factor of safety", site.amount(SupportSettings.BEARING_FACTOR))
              .from(Sources.IBC_1806)
              .gives(
                  Amount.pressure(
                      Math.min(listed, ultimate / site.get(SupportSettings.BEARING_FACTOR))));
      check(pressure, allowable, Verdict.REFER, Sources.VESIC, note(listed));
      return;
    }
    check(pressure, listed, Verdict.REFER, Sources.IBC_1806, note(listed));
  }

  private static String note(double listed) {
    return listed > 0
        ? "Above it the ground investigation must justify the pressure, or the seats go on piles."
        : "No presumptive value serves this ground: a ground investigation must give one, or the"
            + " seats go on piles.";
  }

  private void check(
      double pressure, double allowable, Verdict otherwise, Source source, String note) {
    sheet.check(
        "seat-bearing",
        "Pressure under the pads of the seats",
        Amount.pressure(pressure),
        Amount.pressure(allowable),
        otherwise,
        source,
        Phrase.of(note));
  }

  private double ultimateStep(Pad pad) {
    if (site.has(SEAT_STRENGTH)) {
      return sheet
          .step(
              "seat-ultimate",
              "Ultimate pressure on clay, pad at the surface",
              "qu = {su} × {Nc} × (1 + {W} / {L} / {Nc})")
          .with("su", "undrained strength", site.amount(SEAT_STRENGTH))
          .with("Nc", "bearing factor at angle 0", Amount.ratio(VesicBearing.factors(0).cohesion()))
          .with("W", "shorter side of what bears as one", Amount.length(pad.width()))
          .with("L", "its longer side", Amount.length(pad.length()))
          .from(Sources.VESIC)
          .gives(Amount.pressure(ultimate(site, pad)));
    }
    double angle = site.has(SEAT_FRICTION) ? site.get(SEAT_FRICTION) : 0;
    return sheet
        .step(
            "seat-ultimate",
            "Ultimate pressure on a pad at the surface, no cohesion",
            "qu = 0.5 × {g} × {W} × {Ng} × (1 - 0.4 × {W} / {L})")
        .with("g", "unit weight below water", site.amount(SEAT_WEIGHT))
        .with("W", "shorter side of what bears as one", Amount.length(pad.width()))
        .with("L", "its longer side", Amount.length(pad.length()))
        .with("Ng", "bearing factor", Amount.ratio(VesicBearing.factors(angle).weight()))
        .from(Sources.VESIC)
        .gives(Amount.pressure(ultimate(site, pad)));
  }

  private double settlement(double pressure, Pad pad) {
    double width = pad.width();
    SteinbrennerSettlement.Case base =
        new SteinbrennerSettlement.Case(
            pressure,
            width,
            pad.length(),
            LAYER_WIDTHS * width,
            site.get(SEAT_MODULUS),
            POISSON,
            1);
    double influence =
        SteinbrennerSettlement.influence(pad.length() / width, 2 * LAYER_WIDTHS).combined(POISSON);
    double settlement =
        sheet
            .step(
                "seat-settlement",
                "Settlement of a seat, elastic",
                "S = 0.93 × 4 × {q} × {W} / 2 × (1 - {v}^2) / {E} × {Is}")
            .with("q", "pressure", Amount.pressure(pressure))
            .with("W", "shorter side of what bears as one", Amount.length(width))
            .with("v", "Poisson's ratio, assumed", Amount.ratio(POISSON))
            .with("E", "modulus of the soil", site.amount(SEAT_MODULUS))
            .with(
                "Is",
                "influence factor of its shape on a layer of four widths",
                Amount.ratio(influence))
            .from(Sources.STEINBRENNER)
            .note("Separate pads near each other add to it; creep and consolidation are not in it.")
            .gives(Amount.thickness(SteinbrennerSettlement.rigidMetres(base)));
    sheet.check(
        "seat-settlement",
        "Settlement of a seat while it takes the load",
        Amount.thickness(settlement),
        site.amount(SupportSettings.SETTLEMENT_LIMIT),
        Verdict.REFER,
        Sources.SEAT,
        Phrase.of("Jacks take it up while the load is put on; they need the stroke for it."));
    return settlement;
  }
}
