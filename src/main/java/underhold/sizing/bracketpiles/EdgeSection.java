package underhold.sizing.bracketpiles;

import static underhold.sizing.bracketpiles.BracketInputs.*;

import java.util.ArrayList;
import java.util.List;
import underhold.mechanics.bracket.EdgeBetweenBrackets;
import underhold.mechanics.micropile.CasingSection;
import underhold.mechanics.micropile.PileSpacing;
import underhold.sizing.Amount;
import underhold.sizing.Check;
import underhold.sizing.Phrase;
import underhold.sizing.SheetBuilder;
import underhold.sizing.Source;
import underhold.sizing.Verdict;

/** How far the edge reaches from bracket to bracket, and the load that each takes. */
final class EdgeSection {
  private static final double HEIGHTS = 1.5;

  private EdgeSection() {}

  /** Widest spacing that the edge allows, m. */
  static double widest(BracketCase site) {
    double widest = site.get(CLEAR_SPAN);
    if (site.masonryEdge()) {
      widest = Math.min(widest, masonry(site));
    } else if (site.inputs().get(FOOTING).equals("plain-concrete")) {
      widest = Math.min(widest, site.get(BracketSetting.PLAIN_SPACING));
    }
    return strengthKnown(site) ? Math.min(widest, byStrength(site)) : widest;
  }

  private static double masonry(BracketCase site) {
    double cap = site.get(BracketSetting.MASONRY_SPACING);
    double height = site.get(BracketSetting.SOUND_WALL_HEIGHT);
    return height > 0 ? Math.min(cap, HEIGHTS * height) : cap;
  }

  private static boolean strengthKnown(BracketCase site) {
    return site.get(BracketSetting.EDGE_MOMENT) > 0
        && site.get(BracketSetting.EDGE_SHEAR) > 0
        && !site.onColumn()
        && site.get(LINE_LOAD) > 0;
  }

  private static EdgeBetweenBrackets strength(BracketCase site) {
    return new EdgeBetweenBrackets(
        site.get(BracketSetting.EDGE_MOMENT),
        site.get(BracketSetting.EDGE_SHEAR),
        site.get(BracketSetting.EDGE_LOAD_FACTOR) * site.get(LINE_LOAD),
        0);
  }

  /** End bays count, for every row of brackets has ends. */
  private static double byStrength(BracketCase site) {
    return Math.min(strength(site).endBay(), strength(site).byShear());
  }

  static void write(BracketCase site, SheetBuilder sheet) {
    if (site.onColumn()) {
      sheet
          .step("bracket-load", "Load of one bracket", "P = {Q} / {n}")
          .with("Q", "working load of the column", site.amount(COLUMN_LOAD))
          .with("n", "brackets that share it", Amount.count(site.bracketsPerColumn()))
          .note("Equal shares need brackets on opposite sides and a stiff collar.")
          .gives(Amount.force(site.load()));
    } else {
      span(site, sheet);
      sheet
          .step("bracket-load", "Load of one bracket", "P = {w} × {s}")
          .with("w", "working line load", site.amount(LINE_LOAD))
          .with("s", "spacing of brackets", Amount.length(site.spacing()))
          .gives(Amount.force(site.load()));
    }
    sheet.check(
        "bracket-load",
        "Load of one bracket against what single brackets usually carry",
        Amount.force(site.load()),
        site.amount(BracketSetting.USUAL_LOAD),
        Verdict.REFER,
        Source.judgement(),
        Phrase.of("Above it piles stand in pairs or on both sides under a yoke."));
  }

  private static void span(BracketCase site, SheetBuilder sheet) {
    if (strengthKnown(site)) {
      EdgeBetweenBrackets edge = strength(site);
      sheet
          .step(
              "span-by-moment",
              "Spacing that the moment of the end bay allows",
              "sm = sqrt(8 × {M} / ({LF} × {w}))")
          .with("M", "design moment of the edge", site.amount(BracketSetting.EDGE_MOMENT))
          .with("LF", "load factor", site.amount(BracketSetting.EDGE_LOAD_FACTOR))
          .with("w", "working line load", site.amount(LINE_LOAD))
          .gives(Amount.length(edge.endBay()));
      sheet
          .step("span-by-shear", "Spacing that its shear allows", "sv = 2 × {V} / ({LF} × {w})")
          .with("V", "design shear of the edge", site.amount(BracketSetting.EDGE_SHEAR))
          .with("LF", "load factor", site.amount(BracketSetting.EDGE_LOAD_FACTOR))
          .with("w", "working line load", site.amount(LINE_LOAD))
          .gives(Amount.length(edge.byShear()));
    }
    boolean passes = Check.covers(site.spacing(), site.widestSpacing());
    sheet.verdict(
        "edge-span",
        "Spacing of brackets against what the edge spans",
        Amount.length(site.spacing()),
        Amount.length(site.widestSpacing()),
        passes
            ? site.weakStructure() ? Verdict.REFER : Verdict.PASSES
            : site.spanAssumed() ? Verdict.REFER : Verdict.FAILS,
        Sources.EDGE_SPAN,
        caps(site));
  }

  private static Phrase caps(BracketCase site) {
    List<String> caps = new ArrayList<>(List.of("the length it bridges"));
    if (site.masonryEdge()) {
      caps.add(
          site.get(BracketSetting.SOUND_WALL_HEIGHT) > 0
              ? "1.5 times the height of sound masonry and the cap on arching"
              : "the cap on arching (state sound-wall-height: at most 1.5 times it)");
    } else if (site.inputs().get(FOOTING).equals("plain-concrete")) {
      caps.add("the cap on unreinforced strips");
    }
    if (strengthKnown(site)) {
      caps.add("its moment and shear");
    }
    return Phrase.of(
        "Least of "
            + String.join(", ", caps)
            + ". "
            + (site.weakStructure()
                ? "The structure is in poor condition, or nobody looked: an engineer decides what it spans. "
                : "")
            + "Soil under the edge is taken away in bays no longer than this.");
  }

  /** The casing is known by now. */
  static void writePileSpacing(BracketCase site, CasingSection casing, SheetBuilder sheet) {
    boolean paired = site.path() == MomentPath.PAIRED;
    if (site.onColumn() && !paired) {
      return;
    }
    double apart = site.get(BracketSetting.PAIR_APART);
    double spacing =
        site.onColumn() ? apart : paired ? Math.min(apart, site.spacing()) : site.spacing();
    sheet.check(
        "pile-spacing",
        "Least spacing of piles, 30 in and three diameters, against theirs",
        Amount.length(PileSpacing.least(casing.outsideDiameterMetres())),
        Amount.length(spacing),
        Sources.AASHTO_SPACING,
        "No reduction for a group along a row at this spacing; the cap stands clear of the ground.");
  }
}
