package underhold.sizing.needles;

import underhold.mechanics.steel.RolledSection;
import underhold.sizing.Amount;
import underhold.sizing.Phrase;
import underhold.sizing.SheetBuilder;
import underhold.sizing.StepBuilder;
import underhold.sizing.Verdict;

/** The whole sheet of needles, from load to cautions. */
final class NeedleSizing {
  private final NeedleCase site;
  private final SheetBuilder sheet;

  private NeedleSizing(NeedleCase site, SheetBuilder sheet) {
    this.site = site;
    this.sheet = sheet;
  }

  /** Writes everything below the inputs. */
  static void write(NeedleCase site, SheetBuilder sheet) {
    new NeedleSizing(site, sheet).write();
  }

  private void write() {
    LoadSection.Load load = LoadSection.write(site, sheet);
    NeedleBeam beam =
        SpanSection.write(site, sheet, load, SeatSection.pad(site, load, seatLoad(load)).side());
    SectionChooser.Result choice = SectionChooser.choose(site, beam);
    RolledSection section = choice.chosen().section();
    effects(section, beam);
    SteelCode code = SteelCode.of(site);
    code.write(sheet, section, beam);
    double deflection = Deflection.write(site, sheet, section, beam);
    section(choice, code);
    if (sheet.whole()) {
      RunnersUp.write(sheet, choice);
    }
    double own = section.weightKilonewtonsPerMetre();
    double reaction = beam.reaction(own);
    Pad pad = SeatSection.pad(site, load, reaction);
    double settlement = new SeatSection(site, sheet).write(reaction, pad);
    boolean crib = site.is(SupportSettings.SEAT, "crib");
    int timbers = crib ? CribSection.write(site, sheet, reaction) : 0;
    double jack = JackSection.write(site, sheet, reaction);
    double preload = JackSection.preload(site, sheet, load, beam);
    PickUp.write(site, sheet, load, beam, section);
    if (beam instanceof NeedleBeam.Tailed tailed) {
      TailSection.write(site, sheet, tailed);
    }
    MovementSection.write(site, sheet, beam, deflection, settlement);
    if (sheet.whole()) {
      BillSection.write(site, sheet, load, beam, section, pad, timbers, jack);
      StageSection.write(site, sheet, load, beam, preload);
      CautionSection.write(site, sheet, section);
    }
  }

  /** A seat's load before a section is chosen; {@link SeatSection} checks it with the section. */
  private double seatLoad(LoadSection.Load load) {
    double ratio = site.get(BeamSettings.BACK_SPAN);
    return site.cantilever()
        ? load.perNeedle() * (1 + ratio) / ratio
        : load.perNeedle() * (1 - site.get(BeamSettings.POSITION));
  }

  private void effects(RolledSection section, NeedleBeam beam) {
    double own = section.weightKilonewtonsPerMetre();
    with(
            sheet.step(
                "needle-moment",
                "Working moment of the needle, " + section.name(),
                seated(beam)
                    ? "M = {N} × {a} × {b} / ({a} + {b}) + {g} × ({a} + {b})^2 / 8"
                    : "M = {N} × {a} + {g} × {a}^2 / 2"),
            beam,
            own,
            seated(beam))
        .gives(Amount.moment(beam.moment(own)));
    with(
            sheet.step(
                "needle-shear",
                "Working shear of the needle",
                seated(beam)
                    ? "V = {N} × {a} / ({a} + {b}) + {g} × ({a} + {b}) / 2"
                    : "V = max({N}, {N} × {a} / {b}) + {g} × {a}"),
            beam,
            own,
            true)
        .gives(Amount.force(beam.shear(own)));
    with(
            sheet.step(
                "needle-reaction",
                seated(beam)
                    ? "Working reaction of the nearer seat"
                    : "Working reaction of the fulcrum",
                seated(beam)
                    ? "Rn = {N} × {a} / ({a} + {b}) + {g} × ({a} + {b}) / 2"
                    : "Rn = {N} × ({a} + {b}) / {b} + {g} × ({a} + {b})^2 / (2 × {b})"),
            beam,
            own,
            true)
        .gives(Amount.force(beam.reaction(own)));
  }

  private static boolean seated(NeedleBeam beam) {
    return beam instanceof NeedleBeam.Seated;
  }

  private static StepBuilder with(StepBuilder step, NeedleBeam beam, double own, boolean both) {
    step.with("N", "load on the needle", Amount.force(beam.load()))
        .with("g", "weight of the needle", Amount.lineLoad(own));
    if (beam instanceof NeedleBeam.Tailed tailed) {
      step.with("a", "overhang", Amount.length(tailed.overhang()));
      return both ? step.with("b", "back span", Amount.length(tailed.back())) : step;
    }
    NeedleBeam.Seated seat = (NeedleBeam.Seated) beam;
    return step.with("a", "from the load to the farther seat", Amount.length(seat.far()))
        .with("b", "from the load to the nearer seat", Amount.length(seat.near()));
  }

  private void section(SectionChooser.Result choice, SteelCode code) {
    RolledSection section = choice.chosen().section();
    Limb governing = choice.chosen().governingStrength();
    double use =
        sheet
            .step(
                "needle-use",
                "Use of " + section.name() + ": " + governing.words() + " governs its strength",
                "u = {S} / {R}")
            .with(
                "S",
                site.loadFactor() == 1 ? "working effect" : "effect with the load factor",
                governing.demandAmount())
            .with("R", "available strength", governing.capacityAmount())
            .from(code.source())
            .gives(Amount.ratio(governing.utilisation()));
    String words =
        choice.found()
            ? section.name()
                + " is the lightest section of its table that passes in strength and deflection."
            : "No section of the table passes; "
                + section.name()
                + " comes nearest, fails in "
                + choice.chosen().governing().words()
                + " and is shown.";
    boolean strong = use <= 1 + 1e-9;
    sheet.verdict(
        "needle-section",
        "Needle " + section.name(),
        Amount.ratio(use),
        Amount.ratio(1),
        choice.found() && strong ? Verdict.PASSES : Verdict.FAILS,
        code.source(),
        Phrase.of(words + " Origin of the table: " + site.table().origin() + "."));
  }
}
