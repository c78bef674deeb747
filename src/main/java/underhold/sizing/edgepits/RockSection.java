package underhold.sizing.edgepits;

import static underhold.sizing.edgepits.EdgeInputs.*;

import underhold.mechanics.soil.edgewall.JointWedge;
import underhold.mechanics.soil.edgewall.ToeDowel;
import underhold.sizing.Amount;
import underhold.sizing.Phrase;
import underhold.sizing.SheetBuilder;
import underhold.sizing.Source;
import underhold.sizing.Verdict;
import underhold.sizing.pits.PitsSetting;

/** A wall that stands on rock: dowels, and the wedge below its toe. */
final class RockSection {
  /** Least distance between dowels, diameters (judgement). */
  private static final double SPACING_DIAMETERS = 8;

  private final EdgeCase site;
  private final SheetBuilder sheet;
  private final PropSection.Held held;
  private final double factor;

  private RockSection(EdgeCase site, SheetBuilder sheet, PropSection.Held held) {
    this.site = site;
    this.sheet = sheet;
    this.held = held;
    this.factor = site.get(EdgeSetting.STABILITY_FACTOR);
  }

  /** Writes the section; returns the number of dowels in a pit, 0 where the wall stands on soil. */
  static int write(EdgeCase site, SheetBuilder sheet, PropSection.Held held) {
    if (!site.geometry.onRock()) {
      return 0;
    }
    RockSection section = new RockSection(site, sheet, held);
    int dowels = section.dowels();
    if (site.geometry.rockFace() > 0) {
      section.wedge();
    }
    return dowels;
  }

  private int dowels() {
    double weaker =
        Math.min(site.get(PitsSetting.PIER_STRENGTH), site.get(EdgeSetting.ROCK_STRENGTH));
    ToeDowel bar =
        new ToeDowel(
            site.get(EdgeSetting.DOWEL_DIAMETER), site.get(EdgeSetting.DOWEL_YIELD), weaker);
    double steel =
        sheet
            .step(
                "dowel-steel",
                "Shear of one dowel by its steel",
                "Vs = 0.6 × {fy} × 3.14159 × {d}^2 / 4 / 1.67")
            .with("fy", "yield strength", site.amount(EdgeSetting.DOWEL_YIELD))
            .with("d", "diameter", site.amount(EdgeSetting.DOWEL_DIAMETER))
            .from(Sources.DOWEL)
            .gives(Amount.force(bar.bySteel()));
    double action =
        sheet
            .step(
                "dowel-action",
                "Shear of one dowel by crushing beside it",
                "Vd = 1.3 × {d}^2 × sqrt(min({fc}, {fr}) × {fy}) / 2")
            .with("d", "diameter", site.amount(EdgeSetting.DOWEL_DIAMETER))
            .with("fc", "concrete strength", site.amount(PitsSetting.PIER_STRENGTH))
            .with("fr", "rock strength", site.amount(EdgeSetting.ROCK_STRENGTH))
            .with("fy", "yield strength", site.amount(EdgeSetting.DOWEL_YIELD))
            .from(Sources.DOWEL)
            .gives(Amount.force(bar.byDowelAction()));
    double width = site.get(EdgeSetting.PIT_WIDTH);
    double demand =
        sheet
            .step("dowel-demand", "Shear on the dowels of one pit", "Vp = {F} × {T} × {b}")
            .with("F", "factor on sliding", site.amount(EdgeSetting.STABILITY_FACTOR))
            .with("T", "force left to the toe", Amount.lineLoad(held.toe()))
            .with("b", "width of a pit", site.amount(EdgeSetting.PIT_WIDTH))
            .note("Friction on the rock is not added: it and the dowels do not peak together.")
            .gives(Amount.force(factor * held.toe() * width));
    double room = SPACING_DIAMETERS * site.get(EdgeSetting.DOWEL_DIAMETER);
    int most =
        (int)
            (Math.max(1, Math.floor(width / room))
                * Math.max(1, Math.floor(site.thickness() / room)));
    int number = Math.min(most, bar.number(demand));
    double capacity =
        sheet
            .step("dowel-capacity", "Shear of the dowels of one pit", "V = {n} × min({Vs}, {Vd})")
            .with("n", "dowels in a pit", Amount.count(number))
            .with("Vs", "by steel", Amount.force(steel))
            .with("Vd", "by crushing", Amount.force(action))
            .gives(Amount.force(number * bar.allowable()));
    sheet.check(
        "toe-dowels",
        "Dowels of one pit into rock",
        Amount.force(demand),
        Amount.force(capacity),
        Verdict.REFER,
        Sources.DOWEL,
        Phrase.of(
            "{n} dowels in each pit, no closer than eight diameters; rock strength is a setting until cores are tested.",
            "n",
            Amount.count(number)));
    double friction =
        BaseSteps.resistance(
            site,
            sheet,
            "toe-resistance",
            "braced wall on rock, its own weight",
            site.wall().weight(),
            site.wall().uplift(),
            site.thickness());
    double perLength = capacity / width;
    sheet.check(
        "sliding-supported",
        "Braced wall on rock, sliding of the toe",
        Amount.lineLoad(factor * held.toe()),
        Amount.lineLoad(Math.max(friction, perLength)),
        site.otherwise(FACE_FRICTION, FACE_WEIGHT),
        Sources.NYC_1817,
        Phrase.of(
            "The larger of the dowels, {d}, and friction on the sloping rock, {f}.",
            "d",
            Amount.lineLoad(perLength),
            "f",
            Amount.lineLoad(friction)));
    return number;
  }

  private void wedge() {
    if (site.says(JOINTS, "favourable")) {
      sheet.verdict(
          "rock-wedge",
          "Rock below the toe, joints said to be favourable",
          Amount.lineLoad(0),
          Amount.lineLoad(0),
          Verdict.REFER,
          Source.practice(),
          Phrase.of(
              "A geologist maps the face as it opens and confirms it before each pit's rock is cut below."));
      return;
    }
    double vertical = site.wall().weight() + site.designShare() * site.structureOnWall();
    JointWedge wedge =
        new JointWedge(
            site.geometry.rockFace(),
            site.get(EdgeSetting.JOINT_DIP),
            site.get(EdgeSetting.ROCK_WEIGHT),
            vertical,
            held.toe(),
            site.get(EdgeSetting.JOINT_COHESION),
            site.get(EdgeSetting.JOINT_FRICTION));
    Amount dip = site.amount(EdgeSetting.JOINT_DIP);
    double weight =
        sheet
            .step(
                "wedge-weight", "Weight of rock on the joint", "Wr = {g} × {h}^2 / (2 × tan({d}))")
            .with("g", "unit weight of rock", site.amount(EdgeSetting.ROCK_WEIGHT))
            .with("h", "rock face below the toe", Amount.length(site.geometry.rockFace()))
            .with("d", "dip of the joint", dip)
            .from(Sources.HOEK_BRAY)
            .gives(Amount.lineLoad(wedge.weight()));
    double drive =
        sheet
            .step(
                "wedge-drive",
                "Force down the joint",
                "S = ({Wr} + {V}) × sin({d}) + {T} × cos({d})")
            .with("Wr", "rock", Amount.lineLoad(weight))
            .with("V", "wall and the larger share of the structure", Amount.lineLoad(vertical))
            .with("T", "force of the toe", Amount.lineLoad(held.toe()))
            .with("d", "dip", dip)
            .from(Sources.HOEK_BRAY)
            .gives(Amount.lineLoad(wedge.sliding().demand()));
    double hold =
        sheet
            .step(
                "wedge-hold",
                "What holds it",
                "R = max(0, {c} × {h} / sin({d}) + (({Wr} + {V}) × cos({d}) - {T} × sin({d})) × tan({f}))")
            .with("c", "cohesion of the joint", site.amount(EdgeSetting.JOINT_COHESION))
            .with("h", "rock face", Amount.length(site.geometry.rockFace()))
            .with("d", "dip", dip)
            .with("Wr", "rock", Amount.lineLoad(weight))
            .with("V", "wall and structure", Amount.lineLoad(vertical))
            .with("T", "force of the toe", Amount.lineLoad(held.toe()))
            .with("f", "friction angle of the joint", site.amount(EdgeSetting.JOINT_FRICTION))
            .from(Sources.HOEK_BRAY)
            .gives(Amount.lineLoad(wedge.sliding().resistance()));
    double bolts = bolts(wedge, weight, vertical, dip);
    sheet.verdict(
        "rock-wedge",
        "Rock below the toe sliding on a joint, without bolts",
        Amount.lineLoad(factor * drive),
        Amount.lineLoad(hold),
        Verdict.REFER,
        Sources.HOEK_BRAY,
        Phrase.of(
            (site.says(JOINTS, "adverse")
                    ? "The joints are adverse"
                    : "Nobody has said how the joints lie")
                + ": a geologist measures them first; a dip of {j} is taken meanwhile. Level bolts of {B} would reach the factor.",
            "j",
            dip,
            "B",
            Amount.lineLoad(bolts)));
  }

  private double bolts(JointWedge wedge, double weight, double vertical, Amount dip) {
    return sheet
        .step(
            "wedge-bolts",
            "Level bolt force that reaches the factor",
            "B = max(0, ({F} × ({Wr} + {V}) × sin({d}) - {c} × {h} / sin({d}) - ({Wr} + {V}) × cos({d}) × tan({f})) / ({F} × cos({d}) + sin({d}) × tan({f})) + {T})")
        .with("F", "factor", site.amount(EdgeSetting.STABILITY_FACTOR))
        .with("Wr", "rock", Amount.lineLoad(weight))
        .with("V", "wall and structure", Amount.lineLoad(vertical))
        .with("d", "dip", dip)
        .with("c", "cohesion of the joint", site.amount(EdgeSetting.JOINT_COHESION))
        .with("h", "rock face", Amount.length(site.geometry.rockFace()))
        .with("f", "friction angle of the joint", site.amount(EdgeSetting.JOINT_FRICTION))
        .with("T", "force of the toe", Amount.lineLoad(held.toe()))
        .from(Sources.HOEK_BRAY)
        .gives(Amount.lineLoad(wedge.boltForce(factor)));
  }
}
