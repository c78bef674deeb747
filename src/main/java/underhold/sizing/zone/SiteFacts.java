package underhold.sizing.zone;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import underhold.site.Fact;
import underhold.site.FactValue;
import underhold.site.FactView;
import underhold.site.ZoneViews;
import underhold.sizing.Basis;
import underhold.sizing.Given;
import underhold.sizing.Origin;
import underhold.sizing.Source;

/** The facts of a zone as given values: known ones, and assumed ones where they are asked for. */
public final class SiteFacts {
  private final FactView known;
  private @Nullable FactView cautious;

  public SiteFacts(FactView known) {
    this.known = known;
  }

  /** The fact with the worse value assumed; the view notes that it was looked at. */
  private Fact assumed(String name) {
    if (cautious == null) {
      cautious = ZoneViews.cautious(known.quiet());
    }
    Fact fact = cautious.fact(name);
    known.reads().ifPresent(reads -> reads.noteAssumed(fact));
    return fact;
  }

  /** The number of a fact that is known, inside unit. */
  public Optional<Given<Double>> number(String name) {
    return number(known.fact(name)).filter(given -> given.origin() != Origin.ASSUMED);
  }

  /** The same, or the value that is assumed meanwhile. */
  public Optional<Given<Double>> numberOrAssumed(String name) {
    return number(name).or(() -> number(assumed(name)));
  }

  /** The word of a fact that is known. */
  public Optional<Given<String>> word(String name) {
    return word(known.fact(name)).filter(given -> given.origin() != Origin.ASSUMED);
  }

  /** The same, or the word that is assumed meanwhile. */
  public Optional<Given<String>> wordOrAssumed(String name) {
    return word(name).or(() -> word(assumed(name)));
  }

  /** How the sheet asks for a fact. */
  public String question(String name) {
    return known.fact(name).definition().question();
  }

  private static Optional<Given<Double>> number(Fact fact) {
    return fact.value() instanceof FactValue.Amount amount
        ? Optional.of(given(fact, amount.quantity().si()))
        : Optional.empty();
  }

  private static Optional<Given<String>> word(Fact fact) {
    return fact.value() instanceof FactValue.Choice choice
        ? Optional.of(given(fact, choice.text()))
        : Optional.empty();
  }

  private static <T> Given<T> given(Fact fact, T value) {
    return switch (fact.origin()) {
      case STATED -> new Given<>(value, Origin.STATED, new Source(fact.how(), Basis.SITE_FACT));
      case DERIVED -> new Given<>(value, Origin.DERIVED, derivation(fact));
      case ASSUMED, UNKNOWN ->
          new Given<>(value, Origin.ASSUMED, new Source(fact.how(), Basis.JUDGEMENT));
    };
  }

  /** A number follows by arithmetic, a word by a rule or a choice among layers. */
  private static Source derivation(Fact fact) {
    boolean arithmetic = fact.value() instanceof FactValue.Amount;
    return new Source(fact.how(), arithmetic ? Basis.STATICS : Basis.JUDGEMENT);
  }

  /** The same value worded otherwise, with its origin. */
  public static <T, R> Given<R> as(Given<T> given, R value) {
    return new Given<>(value, given.origin(), given.source());
  }
}
