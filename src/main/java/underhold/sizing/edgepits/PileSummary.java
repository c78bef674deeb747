package underhold.sizing.edgepits;

import java.util.Comparator;
import java.util.Optional;
import java.util.stream.Collectors;
import underhold.sizing.Amount;
import underhold.sizing.Basis;
import underhold.sizing.Check;
import underhold.sizing.Origin;
import underhold.sizing.Phrase;
import underhold.sizing.Sheet;
import underhold.sizing.SheetBuilder;
import underhold.sizing.Source;
import underhold.sizing.Step;
import underhold.sizing.Verdict;
import underhold.sizing.drilledpiles.PrimaryPiles;

/**
 * The piles that carry the structure, by their own sheet.
 *
 * @param sheet the complete sheet of drilled piles
 * @param piles what it comes to
 */
record PileSummary(Sheet sheet, PrimaryPiles piles) {
  private static final Source OWN_SHEET =
      new Source(
          "the sheet of the drilled piles, with the site's settings of drilled-piles",
          Basis.STATICS);

  private static final Comparator<Check> WORSE =
      Comparator.<Check>comparingInt(check -> rank(check.verdict()))
          .thenComparingDouble(check -> check.utilisation().orElse(0));

  /** The check that governs: the worst verdict, and among those the fullest. */
  Optional<Check> governing() {
    return sheet.checks().stream().max(WORSE);
  }

  private static int rank(Verdict verdict) {
    return switch (verdict) {
      case FAILS -> 2;
      case REFER -> 1;
      case PASSES -> 0;
    };
  }

  /** Share of the structure's load that the piles leave on the ground after lock-off. */
  double shareOnGround() {
    return Math.min(1, Math.max(0, piles.shareOnGround()));
  }

  /** Mean share of the stated load that one pile is jacked to, where its sheet gives it. */
  Optional<Amount> jackShare() {
    return sheet.step("jack-share").map(Step::result);
  }

  void write(SheetBuilder out) {
    out.input(
        "primary-piles",
        "drilled piles that carry the structure",
        Amount.count(piles.piles()),
        Origin.DERIVED,
        OWN_SHEET);
    out.input(
        "primary-pile-load",
        "working load of the pile loaded most",
        Amount.force(piles.pileKilonewtons()),
        Origin.DERIVED,
        OWN_SHEET);
    out.input(
        "primary-pile-diameter",
        "diameter of the piles",
        Amount.thickness(piles.diameterMetres()),
        Origin.DERIVED,
        OWN_SHEET);
    out.input(
        "primary-pile-toe",
        "depth of the pile toes below ground",
        Amount.length(piles.toeMetres()),
        Origin.DERIVED,
        OWN_SHEET);
    out.input(
        "primary-share-left",
        "share of the structure's load that the piles leave on the soil after lock-off",
        Amount.ratio(shareOnGround()),
        Origin.DERIVED,
        OWN_SHEET);
    Verdict verdict = governing().map(Check::verdict).orElse(Verdict.REFER);
    double use = governing().flatMap(PileSummary::use).orElse(1.0);
    out.verdict(
        "primary-piles",
        "Drilled piles that carry the structure, governing check of their own sheet",
        Amount.ratio(use),
        Amount.ratio(1),
        verdict,
        governing().map(Check::source).orElse(Source.judgement()),
        Phrase.of(words()));
  }

  private static Optional<Double> use(Check check) {
    return check.utilisation().isPresent()
        ? Optional.of(check.utilisation().getAsDouble())
        : Optional.empty();
  }

  private String words() {
    String governs =
        governing()
            .map(
                check ->
                    "Governs: "
                        + check.title()
                        + " ["
                        + check.id()
                        + "], "
                        + check.verdict().label()
                        + ".")
            .orElse("The sheet of the piles holds no check.");
    String all =
        sheet.checks().stream()
            .map(check -> check.id() + " " + check.verdict().label())
            .collect(Collectors.joining(", "));
    return governs
        + " All checks of the piles: "
        + all
        + ". They are sized on their own sheet, drilled-piles, with the site's settings of it.";
  }
}
