package underhold.sizing.edgepits;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import underhold.sizing.Amount;
import underhold.sizing.Check;
import underhold.sizing.Phrase;
import underhold.sizing.Sheet;
import underhold.sizing.SheetBuilder;
import underhold.sizing.Source;
import underhold.sizing.Verdict;

/**
 * The piles that carry the structure, by their own sheet.
 *
 * @param sheet the complete sheet of drilled piles, with its default settings
 */
record PrimaryPiles(Sheet sheet) {

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

  void write(SheetBuilder out) {
    Verdict verdict = governing().map(Check::verdict).orElse(Verdict.REFER);
    double use = governing().flatMap(PrimaryPiles::use).orElse(1.0);
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
    List<Check> open =
        sheet.checks().stream().filter(check -> check.verdict() != Verdict.PASSES).toList();
    String governs =
        governing()
            .map(check -> "Governs: " + check.title() + " [" + check.id() + "], " + check.verdict().label() + ".")
            .orElse("The sheet of the piles holds no check.");
    String others =
        open.isEmpty()
            ? " All " + sheet.checks().size() + " checks of the piles pass."
            : " Not passed of "
                + sheet.checks().size()
                + ": "
                + open.stream()
                    .map(check -> check.id() + " (" + check.verdict().label() + ")")
                    .collect(Collectors.joining(", "))
                + ".";
    return governs
        + others
        + " The piles are sized on their own sheet, drilled-piles, with its default settings here.";
  }
}
