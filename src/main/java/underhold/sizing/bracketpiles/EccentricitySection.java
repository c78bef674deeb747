package underhold.sizing.bracketpiles;

import static underhold.sizing.bracketpiles.BracketInputs.*;

import underhold.sizing.Amount;
import underhold.sizing.Phrase;
import underhold.sizing.SheetBuilder;
import underhold.sizing.Source;
import underhold.sizing.StepBuilder;
import underhold.sizing.Verdict;

/** The eccentricity of the bracket, its moment, and who carries it. */
final class EccentricitySection {
  private static final String QUESTION =
      "Decide what carries P e (moment-path: pile-head, couple, paired or tied). Nobody has: the weakest path, pile head bending with a free bracket, is shown.";

  private EccentricitySection() {}

  static void write(BracketCase site, PileTrial pile, SheetBuilder sheet) {
    eccentricity(site, pile, sheet);
    Amount load = Amount.force(site.load());
    Amount e = Amount.thickness(pile.eccentricity());
    sheet
        .step("eccentric-moment", "Moment of the eccentricity", "M = {P} × {e}")
        .with("P", "load of one bracket", load)
        .with("e", "eccentricity", e)
        .note(
            Phrase.of(
                "Path: " + site.path().label() + "." + (site.pathDecided() ? "" : " " + QUESTION)))
        .gives(Amount.moment(pile.bracket().moment()));
    path(site, pile, sheet);
    sheet.check(
        "bracket-eccentricity",
        "Eccentricity against the largest that the path carries",
        e,
        Amount.thickness(pile.largestEccentricity()),
        otherwise(site, pile),
        Source.judgement(),
        Phrase.of(largest(site) + (site.pathDecided() ? "" : " " + QUESTION)));
    if (doubtful(site)) {
      sheet.verdict(
          "head-ground",
          "Soft ground at the head beside an eccentric load",
          e,
          Amount.thickness(0),
          Verdict.REFER,
          Source.judgement(),
          Phrase.of(
              "Soft clay, silt, fill or peat near the head creeps under a lasting moment: choose a couple, a pair or a stiffer head, or improve the ground."));
    }
  }

  /** Soft ground at the head must not carry a lasting moment on springs alone. */
  static boolean doubtful(BracketCase site) {
    return site.softHead()
        && (site.path() == MomentPath.PILE_HEAD || site.path() == MomentPath.TIED)
        && site.load() > 0;
  }

  /** Beyond strength it fails; beyond the limit of judgement, or undecided, an engineer decides. */
  private static Verdict otherwise(BracketCase site, PileTrial pile) {
    boolean strong = pile.eccentricity() <= pile.largestByStrength();
    return site.pathDecided() && !strong ? Verdict.FAILS : Verdict.REFER;
  }

  private static String largest(BracketCase site) {
    return switch (site.path()) {
      case PILE_HEAD ->
          "Largest e: the limit of a free bracket, and the allowed share of the casing's moment beside the load.";
      case COUPLE -> "Largest e: the allowable pull of the anchors times the arm.";
      case PAIRED ->
          "Largest e: the allowable pull of the far pile's bar times the distance apart.";
      case TIED -> "Largest e: the casing's moment beside the load.";
    };
  }

  private static void eccentricity(BracketCase site, PileTrial pile, SheetBuilder sheet) {
    boolean stated = site.inputs().has(LOAD_OFFSET);
    StepBuilder step =
        sheet.step(
            "eccentricity",
            "Eccentricity of the seat's resultant from the pile",
            stated ? "e = {o} + {sh} + {m}" : "e = {OD} / 2 + {g} + {B} / 2 + {sh} + {m}");
    if (stated) {
      step.with("o", "from pile line to the line of the load, as stated", site.amount(LOAD_OFFSET));
    } else {
      step.with("OD", "outside diameter of the casing", Amounts.outside(pile.gross()))
          .with("g", "gap", site.amount(BracketSetting.PILE_GAP))
          .with("B", "depth of the seat", site.amount(BracketSetting.SEAT_DEPTH));
    }
    step.with("sh", "shims tight at the inner end", site.amount(BracketSetting.SHIM_SHIFT))
        .with("m", "mislocation not yet surveyed", Amount.thickness(site.mislocation()))
        .from(Source.practice())
        .note(
            "The seat's inner end drops and the pile head leans towards the structure. Where the wall's own load line lies further in than the seat, the edge itself must carry that moment.")
        .gives(Amount.thickness(pile.eccentricity()));
  }

  private static void path(BracketCase site, PileTrial pile, SheetBuilder sheet) {
    Amount moment = Amount.moment(pile.bracket().moment());
    switch (site.path()) {
      case PILE_HEAD -> {}
      case COUPLE -> {
        sheet
            .step("couple", "Pull and push of the couple", "T = {M} / {h}")
            .with("M", "moment of the eccentricity", moment)
            .with("h", "arm", site.amount(BracketSetting.COUPLE_ARM))
            .note("The top of the face plate pushes with the same force.")
            .gives(Amount.force(pile.bracket().couple(site.get(BracketSetting.COUPLE_ARM))));
        if (!site.onColumn()) {
          sheet
              .step("twist", "Twist that the edge must carry", "m = {M} / {s}")
              .with("M", "moment of the eccentricity", moment)
              .with("s", "spacing", Amount.length(site.spacing()))
              .note("By slab, floor or cross walls: the engineer of record confirms it.")
              .gives(Amount.momentPerLength(pile.bracket().twistPerMetre(site.spacing())));
        }
        sheet
            .step("pile-share", "Moment that the pile is checked for", "Mp = {r} × {M}")
            .with(
                "r",
                "share of the pile, kp / (kp + ks)",
                site.amount(BracketSetting.COUPLE_PILE_SHARE))
            .with("M", "moment of the eccentricity", moment)
            .from(Source.judgement())
            .note(
                Phrase.of(
                    "The anchors are checked for all of M. The pile head's own stiffness kp is {kp} per radian.",
                    "kp",
                    Amount.moment(pile.springs(1).headRotationStiffness())))
            .gives(Amount.moment(pile.headMoment()));
      }
      case PAIRED -> {
        Amount load = Amount.force(site.load());
        Amount e = Amount.thickness(pile.eccentricity());
        Amount apart = site.amount(BracketSetting.PAIR_APART);
        sheet
            .step("near-pile", "Compression of the near pile", "N = {P} × (1 + {e} / {L})")
            .with("P", "load of one bracket", load)
            .with("e", "from the near pile to the load", e)
            .with("L", "distance of the piles", apart)
            .from(Sources.TOMLINSON)
            .note("The pile next to the edge is the one in compression (by statics).")
            .gives(Amount.force(pile.axial()));
        sheet
            .step("far-pile", "Pull of the far pile", "T = {P} × {e} / {L}")
            .with("P", "load of one bracket", load)
            .with("e", "from the near pile to the load", e)
            .with("L", "distance of the piles", apart)
            .gives(Amount.force(pile.pull()));
      }
      case TIED -> {
        if (pile.heldByEdge()) {
          sheet
              .step("head-thrust", "Force between pile head and edge", "H = {M} / {lc}")
              .with("M", "moment of the eccentricity", moment)
              .with(
                  "lc",
                  "characteristic length 1/lambda of the pile in its ground, stiff case",
                  Amount.length(pile.springs(PileTrial.STIFF).characteristicLength()))
              .from(Sources.HETENYI)
              .note("The edge must take it at the level of the head.")
              .gives(
                  Amount.force(
                      pile.springs(PileTrial.STIFF)
                          .momentOnHeldHead(pile.headMoment())
                          .headForceKilonewtons()));
        }
      }
    }
  }
}
