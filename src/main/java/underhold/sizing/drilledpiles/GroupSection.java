package underhold.sizing.drilledpiles;

import static underhold.sizing.drilledpiles.PileInputs.COLUMN;
import static underhold.sizing.drilledpiles.PileInputs.WALL;

import java.util.Optional;
import underhold.mechanics.pile.group.GroupEfficiency;
import underhold.mechanics.pile.group.RigidCap;
import underhold.mechanics.pile.group.RigidCap.Loss;
import underhold.mechanics.pile.group.RigidCap.Position;
import underhold.sizing.Amount;
import underhold.sizing.Phrase;
import underhold.sizing.SheetBuilder;
import underhold.sizing.Source;
import underhold.sizing.drilledpiles.BondLayer.Kind;

/** The piles together, and with any one of them lost. */
final class GroupSection {
  private final PileCase site;
  private final PileDesign design;
  private final PileLayout layout;
  private final SheetBuilder sheet;

  private GroupSection(PileCase site, PileDesign design, SheetBuilder sheet) {
    this.site = site;
    this.design = design;
    this.layout = design.layout();
    this.sheet = sheet;
  }

  static void write(PileCase site, PileDesign design, SheetBuilder sheet) {
    GroupSection section = new GroupSection(site, design, sheet);
    section.together();
    section.lost();
  }

  private void together() {
    Amount spacing = Amount.length(layout.leastSpacingMetres());
    sheet.check(
        "pile-spacing",
        "Spacing of piles",
        Amount.length(GroupEfficiency.CLOSEST * site.diameter()),
        spacing,
        Sources.SPACING,
        "At least 2.5 diameters.");
    factor(spacing);
    double capacity =
        sheet
            .step("group", "Allowable load of all piles", "Pg = {n} × {E} × ({Qs} + {Qb}) / {F}")
            .with("n", "piles", Amount.count(layout.piles()))
            .with("E", "group factor", Amount.ratio(design.groupFactor()))
            .with("Qs", "side of one pile", Amount.force(design.sideKilonewtons()))
            .with("Qb", "base of one pile", Amount.force(design.baseKilonewtons()))
            .with("F", "factor of safety", Amount.ratio(site.safetyFactor()))
            .gives(
                Amount.force(
                    layout.piles()
                        * design.groupFactor()
                        * design.ultimateKilonewtons()
                        / site.safetyFactor()));
    Optional<Double> block =
        Designer.blockAllowable(site, layout, design.pieces(), design.unitBaseKilopascals());
    block.ifPresent(this::block);
    sheet.check(
        "group-capacity",
        "Load of the group against its allowable load",
        Amount.force(site.totalLoad()),
        Amount.force(Math.min(capacity, block.orElse(capacity))),
        Sources.GROUP,
        block.isPresent() ? "The less of the sum of the piles and of the block." : "");
    inGroup();
  }

  /** The pile loaded most, off-centre load and all, with the factor of the group. */
  private void inGroup() {
    double allowable =
        sheet
            .step(
                "pile-in-group-allowable",
                "Allowable load of one pile in the group by the ground",
                "Qe = {E} × ({Qs} + {Qb}) / {F}")
            .with("E", "group factor", Amount.ratio(design.groupFactor()))
            .with("Qs", "side", Amount.force(design.sideKilonewtons()))
            .with("Qb", "base", Amount.force(design.baseKilonewtons()))
            .with("F", "factor of safety by what is tested", Amount.ratio(site.safetyFactor()))
            .from(Sources.GROUP)
            .gives(
                Amount.force(
                    design.groupFactor() * design.ultimateKilonewtons() / site.safetyFactor()));
    sheet.check(
        "pile-in-group",
        "Load of the pile loaded most against its allowable load in the group",
        Amount.force(layout.pileKilonewtons()),
        Amount.force(allowable),
        Sources.GROUP,
        "The whole group may hold while one pile of it does not.");
  }

  private void factor(Amount spacing) {
    Amount value = Amount.ratio(design.groupFactor());
    boolean clay = Designer.meets(design.pieces(), Kind.CLAY);
    boolean soil = clay || Designer.meets(design.pieces(), Kind.SAND);
    String title = "Factor of closely spaced piles";
    if (!soil || site.is(PileChoices.GROUP, "none")) {
      sheet
          .step("group-factor", title, "E = 1")
          .from(Source.judgement())
          .note(soil ? "None, as set." : "None in rock.")
          .gives(value);
    } else if (layout.leastSpacingMetres() < GroupEfficiency.CLOSEST * site.diameter()) {
      sheet
          .step("group-factor", title, "E = 0.65")
          .from(Source.judgement())
          .note("Closer than 2.5 diameters: no factor is given; the least one stands in.")
          .gives(value);
    } else {
      sheet
          .step(
              "group-factor",
              title,
              "E = min(0.65 + 0.35 × ({s} / {D} - 2.5) / " + (clay ? "3.5" : "1.5") + ", 1)")
          .with("s", "least spacing", spacing)
          .with("D", "diameter", Amount.thickness(site.diameter()))
          .from(Sources.GROUP)
          .note(clay ? "Clay, cap clear of the ground." : "Sand, older edition.")
          .gives(value);
    }
  }

  private void block(double allowable) {
    sheet
        .step(
            "block",
            "Allowable load of the piles and the soil between them as one block",
            "Pk = (2 × ({B} + {W}) × {L} × {f} + {B} × {W} × {g}) / {F}")
        .with("B", "block along", Amount.length(Designer.blockAlong(site, layout)))
        .with("W", "block across", Amount.length(Designer.blockAcross(site, layout)))
        .with("L", "length that counts", Amount.length(Designer.blockDepth(design.pieces())))
        .with("f", "mean unit side resistance", Amount.pressure(Designer.meanSide(design.pieces())))
        .with("g", "unit base resistance", Amount.pressure(design.unitBaseKilopascals()))
        .with("F", "factor of safety", Amount.ratio(site.safetyFactor()))
        .from(Sources.BLOCK)
        .gives(Amount.force(allowable));
  }

  private void lost() {
    switch (site.kind()) {
      case COLUMN -> lostUnderCap();
      case WALL ->
          lostUnderStructure(
              GroupNumbers.LOSS_WALL,
              "At an end the whole load of the needle lost falls on its neighbour, by the lever; a needle is lost with either of its piles.");
      default ->
          lostUnderStructure(
              GroupNumbers.LOSS_SLAB,
              "The slab must carry over the place of the pile lost: not checked here.");
    }
    double section = Math.min(design.structuralKilonewtons(), design.baredKilonewtons());
    double capacity =
        sheet
            .step(
                "loss-capacity",
                "What a pile may take when another is lost",
                "Rl = min((1 + {o}) × {Ps}, {E} × {Qu} / {F})")
            .with("o", "overstress allowed", site.amount(GroupNumbers.OVERSTRESS))
            .with("Ps", "the less of the held and the bared section", Amount.force(section))
            .with("E", "group factor", Amount.ratio(design.groupFactor()))
            .with(
                "Qu",
                "ultimate resistance by the ground",
                Amount.force(design.ultimateKilonewtons()))
            .with("F", "factor of safety for this case", site.amount(GroupNumbers.LOSS_FACTOR))
            .from(Source.judgement())
            .gives(
                Amount.force(
                    Math.min(
                        (1 + site.get(GroupNumbers.OVERSTRESS)) * section,
                        design.groupFactor()
                            * design.ultimateKilonewtons()
                            / site.get(GroupNumbers.LOSS_FACTOR))));
    sheet.check(
        "group-loss",
        "Pile loaded most when any one is lost",
        Amount.force(layout.lossKilonewtons()),
        Amount.force(capacity),
        Source.judgement(),
        "The worst of all single losses, a corner or an end as a rule. Those left stand as close as before: the group factor counts here too.");
  }

  private void lostUnderStructure(underhold.sizing.Setting share, String note) {
    sheet
        .step("loss", "Load of a pile beside one that is lost", "Pl = {P1} × (1 + {k})")
        .with("P1", "pile loaded most", Amount.force(layout.pileKilonewtons()))
        .with("k", "share that falls on one neighbour", site.amount(share))
        .from(share.source())
        .note(note)
        .gives(Amount.force(layout.lossKilonewtons()));
  }

  private void lostUnderCap() {
    double off = site.get(GroupNumbers.ECCENTRICITY);
    RigidCap cap = layout.cap();
    Loss loss = cap.worstLoss(site.totalLoad(), new Position(off, off)).orThrow();
    Remaining left = Remaining.of(cap, loss, off);
    sheet
        .step(
            "loss",
            "Load of the pile loaded most when any one is lost",
            "Pl = {P} × (1 / {m} + (({ex} × {Ixx} - {ey} × {Ixy}) × {x} + ({ey} × {Iyy} - {ex} × {Ixy}) × {y}) / ({Ixx} × {Iyy} - {Ixy}^2))")
        .with("P", "load on all piles", Amount.force(site.totalLoad()))
        .with("m", "piles left", Amount.count(layout.piles() - 1))
        .with("ex", "load from the centre of those left, along", Amount.length(left.ex()))
        .with("ey", "the same across", Amount.length(left.ey()))
        .with("x", "pile loaded most from that centre, along", Amount.length(left.x()))
        .with("y", "the same across", Amount.length(left.y()))
        .with("Ixx", "sum of squares across", Amount.area(left.ixx()))
        .with("Iyy", "sum of squares along", Amount.area(left.iyy()))
        .with("Ixy", "sum of products", Amount.area(left.ixy()))
        .note(
            Phrase.of(
                "Every pile was tried; pile {k} of {n} is the worst to lose. Rigid cap, whole tensor of inertia.",
                "k",
                Amount.count(loss.lost() + 1),
                "n",
                Amount.count(layout.piles())))
        .gives(Amount.force(layout.lossKilonewtons()));
  }
}
