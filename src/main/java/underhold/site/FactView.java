package underhold.site;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;
import underhold.quantity.Quantity;

/**
 * All facts of one zone, flat and immutable: every fact of the dictionary, each with its origin.
 */
public final class FactView {
  private final FactDictionary dictionary;
  private final Fact[] facts;
  private final @Nullable FactReads reads;
  private final Cautious cautious;

  private FactView(FactDictionary dictionary, Fact[] facts) {
    this(dictionary, facts, null, new Cautious());
  }

  private FactView(
      FactDictionary dictionary, Fact[] facts, @Nullable FactReads reads, Cautious cautious) {
    this.dictionary = dictionary;
    this.facts = facts;
    this.reads = reads;
    this.cautious = cautious;
  }

  /** The same facts with the worse values assumed, once that was made. */
  private static final class Cautious {
    private volatile @Nullable FactView made;
  }

  /** The view with the worse values assumed: made once for these facts, by whoever asks first. */
  FactView cautious(UnaryOperator<FactView> make) {
    FactView view = cautious.made;
    if (view == null) {
      view = make.apply(quiet());
      cautious.made = view;
    }
    return view;
  }

  /** The same facts; each one looked at from now on is noted. */
  public FactView noting(FactReads noted) {
    return new FactView(dictionary, facts, noted, cautious);
  }

  /** The same facts; none looked at is noted. */
  public FactView quiet() {
    return reads == null ? this : new FactView(dictionary, facts, null, cautious);
  }

  /** Where facts looked at are noted, if anywhere. */
  public Optional<FactReads> reads() {
    return Optional.ofNullable(reads);
  }

  private Fact read(int index) {
    Fact fact = facts[index];
    if (reads != null) {
      reads.note(fact);
    }
    return fact;
  }

  /** A view in which nothing is known but the facts given. */
  public static FactView of(FactDictionary dictionary, Map<String, Fact> known) {
    return of(dictionary, known.values());
  }

  /** The same, of facts of which the later one holds where two speak of one thing. */
  static FactView of(FactDictionary dictionary, Iterable<Fact> known) {
    Fact[] facts = dictionary.unknown();
    for (Fact fact : known) {
      facts[fact.definition().index()] = fact;
    }
    return new FactView(dictionary, facts);
  }

  /** The same view with one fact replaced. */
  public FactView with(Fact fact) {
    return with(List.of(fact));
  }

  /** The same view with some facts replaced. */
  public FactView with(List<Fact> changed) {
    if (changed.isEmpty()) {
      return this;
    }
    Fact[] copy = facts.clone();
    for (Fact fact : changed) {
      copy[fact.definition().index()] = fact;
    }
    return new FactView(dictionary, copy);
  }

  public FactDictionary dictionary() {
    return dictionary;
  }

  public Fact fact(int index) {
    return read(index);
  }

  /**
   * The fact of that name.
   *
   * @throws IllegalArgumentException if the dictionary has no such fact
   */
  public Fact fact(String name) {
    return read(dictionary.require(name).index());
  }

  /** The word that is the value of the fact at that place of the dictionary; null if unknown. */
  public @Nullable String word(int index) {
    return read(index).value() instanceof FactValue.Choice choice ? choice.text() : null;
  }

  /** The amount at that place of the dictionary, in its inside unit; null if unknown. */
  public @Nullable Double number(int index) {
    return read(index).value() instanceof FactValue.Amount amount ? amount.quantity().si() : null;
  }

  /** The amount of that name, if known. */
  public Optional<Quantity> amount(String name) {
    return fact(name).value() instanceof FactValue.Amount amount
        ? Optional.of(amount.quantity())
        : Optional.empty();
  }

  /** The word of that name, if known. */
  public Optional<String> word(String name) {
    return Optional.ofNullable(word(dictionary.require(name).index()));
  }

  /** All facts in the order of the dictionary; this notes none. */
  public List<Fact> all() {
    return List.of(facts);
  }

  /** The facts that are not unknown, in the order of the dictionary. */
  public List<Fact> present() {
    List<Fact> present = new ArrayList<>();
    for (Fact fact : facts) {
      if (fact.origin() != Origin.UNKNOWN) {
        present.add(fact);
      }
    }
    return present;
  }
}
