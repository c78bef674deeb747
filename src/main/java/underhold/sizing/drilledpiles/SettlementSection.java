package underhold.sizing.drilledpiles;

import static underhold.sizing.drilledpiles.PileInputs.LIMIT;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import underhold.mechanics.pile.settlement.LoadSettlement;
import underhold.mechanics.pile.settlement.LoadSettlement.State;
import underhold.mechanics.pile.settlement.LoadSettlement.Stretch;
import underhold.mechanics.pile.settlement.MobilisationCurve;
import underhold.sizing.Amount;
import underhold.sizing.Phrase;
import underhold.sizing.SheetBuilder;
import underhold.sizing.Verdict;
import underhold.sizing.drilledpiles.BondLayer.Kind;

/** Settlement of a pile head, and the curve of load and settlement. */
final class SettlementSection {
  /** Loads of the curve, percent of the working load. */
  private static final int[] PERCENT = {25, 50, 75, 100, 150, 200};

  private final PileCase site;
  private final PileDesign design;
  private final SheetBuilder sheet;

  private SettlementSection(PileCase site, PileDesign design, SheetBuilder sheet) {
    this.site = site;
    this.design = design;
    this.sheet = sheet;
  }

  static void write(PileCase site, PileDesign design, SheetBuilder sheet) {
    new SettlementSection(site, design, sheet).write();
  }

  /** The curve of load and settlement, which no check reads. */
  static void writeCurve(PileCase site, PileDesign design, SheetBuilder sheet) {
    new SettlementSection(site, design, sheet).curve();
  }

  /** Length from the cap to where side resistance begins, m. */
  static double freeLength(PileCase site, PileDesign design) {
    return design.casingBottomMetres() - site.capLevel();
  }

  private void curve() {
    double working = design.layout().pileKilonewtons();
    Optional<LoadSettlement> bond = bond();
    for (int percent : PERCENT) {
      double load = working * percent / 100;
      bond.flatMap(pile -> pile.under(load).value())
          .ifPresent(state -> point(percent, load, state));
    }
  }

  private void write() {
    double working = design.layout().pileKilonewtons();
    Optional<LoadSettlement> bond = bond();
    Optional<Double> head =
        bond.flatMap(pile -> pile.under(working).value()).map(state -> head(working, state));
    Amount limit = site.amount(LIMIT);
    if (head.isEmpty()) {
      double least = bond.map(this::all).orElse(limit.si());
      sheet.verdict(
          "head-settlement",
          "Settlement of a pile head under its working load",
          Amount.thickness(Math.max(least, limit.si())),
          limit,
          Verdict.FAILS,
          Sources.CURVES,
          Phrase.of(
              "The working load exceeds all that the ground holds: the settlement is more than this, without end."));
      return;
    }
    sheet
        .step("settlement-felt", "Settlement that the structure feels", "sf = {k} × {s}")
        .with("k", "share felt", site.amount(ColumnNumbers.SETTLEMENT_FELT))
        .with("s", "settlement of the head at the working load", Amount.thickness(head.get()))
        .gives(Amount.thickness(felt(head.get())));
    sheet.check(
        "head-settlement",
        "Settlement of a pile head under its working load",
        Amount.thickness(felt(head.get())),
        limit,
        site.otherwise(LIMIT),
        Sources.CURVES,
        Phrase.of(
            "Without credit for jacking unless set. A single pile: for the group see the next check; beams and caps bend, creep is not counted."));
    group(felt(head.get()), limit);
  }

  /** The group, which settles more than one pile. */
  private void group(double single, Amount limit) {
    if (design.layout().piles() < 2) {
      return;
    }
    double width =
        Math.max(
            Math.min(
                Designer.blockAlong(site, design.layout()),
                Designer.blockAcross(site, design.layout())),
            site.diameter());
    double whole =
        sheet
            .step(
                "group-settlement", "Settlement of the group, about", "sg = {sf} × sqrt({B} / {D})")
            .with("sf", "settlement of one pile that is felt", Amount.thickness(single))
            .with("B", "narrower side of the group", Amount.length(width))
            .with("D", "diameter", Amount.thickness(site.diameter()))
            .from(Sources.GROUP_SETTLEMENT)
            .note(
                "A rule for sand, rough for any ground: where it matters reckon an equivalent raft, with soft layers below the toes.")
            .gives(Amount.thickness(single * Math.sqrt(width / site.diameter())));
    sheet.check(
        "group-settlement",
        "Settlement of the group, about",
        Amount.thickness(whole),
        limit,
        Verdict.REFER,
        Sources.GROUP_SETTLEMENT,
        Phrase.of("Beyond the limit an engineer reckons the group and what jacking takes out."));
  }

  /** Settlement of the head when all is called up, m. */
  private double all(LoadSettlement pile) {
    State state = pile.atBaseMovement(site.diameter() * site.get(ColumnNumbers.BASE_FULL_SAND));
    return head(state.headLoadKilonewtons(), state);
  }

  private double felt(double head) {
    return site.get(ColumnNumbers.SETTLEMENT_FELT) * head;
  }

  private void point(int percent, double load, State state) {
    double shortening = load * freeLength(site, design) / site.casedStiffness();
    sheet
        .step(
            "settlement-" + percent,
            "Settlement of the head at " + percent + " % of the working load",
            "s" + percent + " = {P} × {L} / {EA} + {sb}")
        .with("P", "load", Amount.force(load))
        .with(
            "L",
            "free length, cap to where the ground counts",
            Amount.length(freeLength(site, design)))
        .with("EA", "axial stiffness of casing, fill and bars", Amount.force(site.casedStiffness()))
        .with(
            "sb",
            "movement there, by summing side and base curves up the shaft in short pieces",
            Amount.thickness(state.headSettlementMetres()))
        .from(Sources.CURVES)
        .note(
            Phrase.of(
                "The toe moves {toe}; {base} reaches the base.",
                "toe",
                Amount.thickness(state.baseSettlementMetres()),
                "base",
                Amount.force(state.baseLoadKilonewtons())))
        .gives(Amount.thickness(shortening + state.headSettlementMetres()));
  }

  private double head(double load, State state) {
    return load * freeLength(site, design) / site.casedStiffness() + state.headSettlementMetres();
  }

  /** The pile below its free length; empty where no ground holds it. */
  private Optional<LoadSettlement> bond() {
    List<Stretch> stretches = new ArrayList<>();
    double at = design.casingBottomMetres();
    for (SidePiece piece : design.pieces()) {
      gap(stretches, at, piece.topMetres());
      boolean rock = piece.layer().kind() == Kind.ROCK;
      stretches.add(
          new Stretch(
              piece.lengthMetres(),
              piece.resistanceKilonewtons(),
              MobilisationCurve.straight(
                  site.get(rock ? ColumnNumbers.SOCKET_FULL : ColumnNumbers.SIDE_FULL)),
              site.uncasedStiffness(piece.diameterMetres())));
      at = piece.bottomMetres();
    }
    gap(stretches, at, design.toeMetres());
    if (stretches.isEmpty() || design.ultimateKilonewtons() <= 0) {
      return Optional.empty();
    }
    boolean sand = new Ground(site).at(design.toeMetres()).kind() == Kind.SAND;
    return Optional.of(
        new LoadSettlement(
            site.diameter(),
            stretches,
            design.baseKilonewtons(),
            MobilisationCurve.straight(
                site.get(sand ? ColumnNumbers.BASE_FULL_SAND : ColumnNumbers.BASE_FULL_CLAY))));
  }

  private void gap(List<Stretch> stretches, double from, double to) {
    if (to - from > 1e-6) {
      stretches.add(
          new Stretch(
              to - from,
              0,
              MobilisationCurve.straight(site.get(ColumnNumbers.SIDE_FULL)),
              site.uncasedStiffness(site.socketDiameter())));
    }
  }
}
