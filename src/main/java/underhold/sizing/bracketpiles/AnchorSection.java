package underhold.sizing.bracketpiles;

import underhold.mechanics.bracket.AnchorSteel;
import underhold.mechanics.bracket.Prying;
import underhold.mechanics.bracket.TensionBreakout;
import underhold.sizing.Amount;
import underhold.sizing.Phrase;
import underhold.sizing.SheetBuilder;
import underhold.sizing.Source;
import underhold.sizing.Verdict;

/** Anchors of the couple: steel, breakout of concrete, or plates behind through-bolts. */
final class AnchorSection {
  private static final double ANCHOR_DIAMETERS_TO_WELD = 1.5;

  private AnchorSection() {}

  /** Brick and rubble are always bolted through. */
  static boolean through(BracketCase site) {
    return site.masonryEdge() || site.settings().throughBolts();
  }

  private static AnchorSteel steel(BracketCase site) {
    return new AnchorSteel(
        (int) Math.floor(site.get(BracketSetting.ANCHOR_COUNT)),
        site.get(BracketSetting.ANCHOR_AREA),
        site.get(BracketSetting.ANCHOR_ULTIMATE),
        site.get(BracketSetting.ANCHOR_YIELD));
  }

  private static TensionBreakout breakout(BracketCase site) {
    return new TensionBreakout(
        TensionBreakout.POST_INSTALLED,
        site.get(BracketSetting.CONCRETE_STRENGTH),
        site.get(BracketSetting.ANCHOR_EMBEDMENT));
  }

  private static double area(BracketCase site) {
    TensionBreakout one = breakout(site);
    double row =
        one.rowArea(site.get(BracketSetting.ANCHOR_SPREAD), site.get(BracketSetting.ANCHOR_EDGE));
    return Math.min(row, steel(site).count() * one.fullArea());
  }

  private static double designBreakout(BracketCase site) {
    return TensionBreakout.PHI_POST_INSTALLED
        * breakout(site).group(area(site), site.get(BracketSetting.ANCHOR_EDGE), 0);
  }

  /** Allowable pull of the plates behind through-bolts, kN. */
  private static double plates(BracketCase site) {
    double side = site.get(BracketSetting.BOLT_PLATE);
    double bearing = bearing(site);
    return steel(site).count() * side * side * bearing;
  }

  private static double bearing(BracketCase site) {
    return site.masonryEdge()
        ? site.get(BracketSetting.MASONRY_BEARING)
        : SeatSection.allowable(site);
  }

  private static double factor(BracketCase site) {
    return site.get(BracketSetting.EDGE_LOAD_FACTOR);
  }

  /** Allowable pull of all anchors of a bracket, kN. */
  static double allowablePull(BracketCase site) {
    double steel = steel(site).designTension() / factor(site);
    return Math.min(steel, through(site) ? plates(site) : designBreakout(site) / factor(site));
  }

  static void write(BracketCase site, PileTrial pile, SheetBuilder sheet) {
    if (site.path() != MomentPath.COUPLE) {
      return;
    }
    AnchorSteel steel = steel(site);
    sheet
        .step(
            "anchor-steel",
            "Allowable pull of the anchors' steel",
            "Ts = 0.75 × {n} × {A} × {fu} / {LF}")
        .with("n", "anchors", Amount.count(steel.count()))
        .with("A", "stress area of one", site.amount(BracketSetting.ANCHOR_AREA))
        .with("fu", "ultimate strength that counts", Amount.stress(steel.strength()))
        .with("LF", "load factor", site.amount(BracketSetting.EDGE_LOAD_FACTOR))
        .from(Sources.ACI_ANCHOR_MEMORY)
        .gives(Amount.force(steel.designTension() / factor(site)));
    if (through(site)) {
      throughBolts(site, steel, sheet);
    } else {
      concrete(site, sheet);
    }
    prying(site, pile, steel, sheet);
    double pull = pile.bracket().couple(site.get(BracketSetting.COUPLE_ARM));
    sheet.check(
        "bracket-anchors",
        "Pull of the couple against the anchors",
        Amount.force(pull),
        Amount.force(allowablePull(site)),
        Verdict.FAILS,
        Sources.ACI_ANCHOR,
        Phrase.of(
            (through(site)
                    ? "Least of steel and bearing of the plates behind. "
                    : "Least of steel and breakout of cracked concrete; pull-out and adhesive bond (0.55 of it under lasting pull) by the product's report. ")
                + "Shear goes into the seat, none into the anchors. The edge must take twist and push: engineer of record."));
  }

  private static void concrete(BracketCase site, SheetBuilder sheet) {
    TensionBreakout one = breakout(site);
    Amount embedment = site.amount(BracketSetting.ANCHOR_EMBEDMENT);
    sheet
        .step(
            "breakout-basic",
            "Basic breakout of one anchor, post-installed",
            "Nb = 17 × sqrt({fc} × 145.04) × ({h} / 25.4)^1.5 × 0.0044482",
            "Nb = 17 × sqrt({fc}) × {h}^1.5 / 1000")
        .with("fc", "strength of the concrete", site.amount(BracketSetting.CONCRETE_STRENGTH))
        .with("h", "embedment", embedment)
        .from(Sources.ACI_ANCHOR)
        .note(
            "The coefficient 17 belongs to pounds, psi and inches; the metric text converts MPa and mm.")
        .gives(Amount.force(one.basic()));
    double edge = site.get(BracketSetting.ANCHOR_EDGE);
    sheet
        .step("breakout-edge", "Edge factor", "ke = min(1, 0.7 + 0.3 × {c} / (1.5 × {h}))")
        .with("c", "edge distance", site.amount(BracketSetting.ANCHOR_EDGE))
        .with("h", "embedment", embedment)
        .from(Sources.ACI_ANCHOR)
        .gives(Amount.ratio(one.edgeFactor(edge)));
    sheet
        .step(
            "breakout-area",
            "Breakout area of the row over that of one anchor",
            "ra = min({n}, (min({c}, 1.5 × {h}) + 1.5 × {h}) × (3 × {h} + {s}) / (9 × {h}^2))")
        .with("n", "anchors", Amount.count(steel(site).count()))
        .with("c", "edge distance", site.amount(BracketSetting.ANCHOR_EDGE))
        .with("h", "embedment", embedment)
        .with("s", "distance between the outer anchors", site.amount(BracketSetting.ANCHOR_SPREAD))
        .from(Sources.ACI_ANCHOR)
        .gives(Amount.ratio(area(site) / one.fullArea()));
    sheet
        .step(
            "breakout",
            "Allowable pull by breakout, cracked concrete",
            "Tb = 0.65 × {ra} × {ke} × {Nb} / {LF}")
        .with("ra", "area ratio", Amount.ratio(area(site) / one.fullArea()))
        .with("ke", "edge factor", Amount.ratio(one.edgeFactor(edge)))
        .with("Nb", "basic breakout", Amount.force(one.basic()))
        .with("LF", "load factor", site.amount(BracketSetting.EDGE_LOAD_FACTOR))
        .from(Sources.ACI_ANCHOR)
        .gives(Amount.force(designBreakout(site) / factor(site)));
  }

  private static void throughBolts(BracketCase site, AnchorSteel steel, SheetBuilder sheet) {
    sheet
        .step("bolt-plates", "Allowable pull of the plates behind", "Tp = {n} × {b}^2 × {q}")
        .with("n", "bolts", Amount.count(steel.count()))
        .with("b", "side of a plate", site.amount(BracketSetting.BOLT_PLATE))
        .with("q", "allowable bearing", Amount.stress(bearing(site)))
        .from(Source.practice())
        .note("Old brick and rubble have no breakout formula: bolts go through to plates.")
        .gives(Amount.force(plates(site)));
  }

  private static void prying(
      BracketCase site, PileTrial pile, AnchorSteel steel, SheetBuilder sheet) {
    double diameter = Math.sqrt(4 * site.get(BracketSetting.ANCHOR_AREA) / Math.PI);
    double lever = ANCHOR_DIAMETERS_TO_WELD * diameter;
    double each = pile.bracket().couple(site.get(BracketSetting.COUPLE_ARM)) / steel.count();
    double tributary = 2 * lever;
    sheet
        .step(
            "prying",
            "Face plate thick enough to neglect prying",
            "t = sqrt(6.66 × {T} × {b} / ({p} × {Fu}))")
        .with("T", "pull of one anchor", Amount.force(each))
        .with(
            "b",
            "from the anchor to the plate's line of bending, 1.5 diameters",
            Amount.thickness(lever))
        .with("p", "length of plate of one anchor", Amount.thickness(tributary))
        .with("Fu", "ultimate strength of the plate", site.amount(BracketSetting.PLATE_ULTIMATE))
        .from(Sources.AISC_PRYING)
        .gives(
            Amount.thickness(
                new Prying(lever, tributary, site.get(BracketSetting.PLATE_ULTIMATE))
                    .thickness(each)));
  }
}
