package underhold.sizing.zone;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import underhold.quantity.UnitSystem;
import underhold.sizing.Amount;
import underhold.sizing.Given;
import underhold.sizing.MissingInput;
import underhold.sizing.Origin;
import underhold.sizing.SheetBuilder;
import underhold.sizing.Source;

/**
 * The inputs of a sizing: numbers within their ranges and words, each with its origin. Immutable.
 * Essential ones that are not known, and numbers beyond the range for which a sheet holds, stand in
 * {@link #missing}: then the sheet asks and holds no number.
 */
public final class Inputs {
  private final Map<NumberInput, Given<Double>> numbers;
  private final Map<WordInput, Given<String>> words;
  private final List<MissingInput> missing;

  private Inputs(
      Map<NumberInput, Given<Double>> numbers,
      Map<WordInput, Given<String>> words,
      List<MissingInput> missing) {
    this.numbers = numbers;
    this.words = words;
    this.missing = List.copyOf(missing);
  }

  /** Nothing known yet. */
  public static Builder from(SiteFacts facts) {
    return new Builder(facts);
  }

  /** Collects inputs. */
  public static final class Builder {
    private final SiteFacts facts;
    private final Map<NumberInput, Given<Double>> numbers = new LinkedHashMap<>();
    private final Map<WordInput, Given<String>> words = new LinkedHashMap<>();
    private final List<MissingInput> missing = new ArrayList<>();

    private Builder(SiteFacts facts) {
      this.facts = facts;
    }

    /** Takes a number as given; one out of range is asked for instead. */
    public Builder put(NumberInput input, Given<Double> given) {
      if (input.accepts(given.value())) {
        numbers.put(input, given);
      } else {
        String value = both(input.amount(finite(given.value())));
        missing.add(
            new MissingInput(
                name(input),
                question(input.fact(), input.question(), input.label()),
                "the %s is %s, and this sheet holds from %s to %s"
                    .formatted(
                        input.label(),
                        value,
                        both(input.amount(input.least())),
                        both(input.amount(input.most())))));
      }
      return this;
    }

    /** Takes a word as given. */
    public Builder put(WordInput input, Given<String> given) {
      words.put(input, given);
      return this;
    }

    /** Takes the number of its fact where known. */
    public Builder known(NumberInput input) {
      facts.number(input.fact()).ifPresent(given -> put(input, given));
      return this;
    }

    /** Takes the word of its fact where known. */
    public Builder known(WordInput input) {
      facts.word(input.fact()).ifPresent(given -> put(input, given));
      return this;
    }

    /** Takes the number of its fact where known, else the value that the dictionary assumes. */
    public Builder knownOrAssumed(NumberInput input) {
      facts.numberOrAssumed(input.fact()).ifPresent(given -> put(input, given));
      return this;
    }

    /** Takes the word of its fact where known, else the word that the dictionary assumes. */
    public Builder knownOrAssumed(WordInput input) {
      facts.wordOrAssumed(input.fact()).ifPresent(given -> put(input, given));
      return this;
    }

    /** Assumes a number where there is none yet. */
    public Builder orAssume(NumberInput input, double si, Source why) {
      if (!numbers.containsKey(input)) {
        put(input, Given.assumed(si, why));
      }
      return this;
    }

    /** Assumes a word where there is none yet. */
    public Builder orAssume(WordInput input, String word, Source why) {
      words.putIfAbsent(input, Given.assumed(word, why));
      return this;
    }

    /** Asks for a number that the sheet cannot do without, unless it is there. */
    public Builder need(NumberInput input, String why) {
      if (!numbers.containsKey(input)
          && missing.stream().noneMatch(m -> m.name().equals(name(input)))) {
        ask(name(input), question(input.fact(), input.question(), input.label()), why);
      }
      return this;
    }

    /** Asks for a word that the sheet cannot do without, unless it is there. */
    public Builder need(WordInput input, String why) {
      if (!words.containsKey(input)) {
        String name = input.fact().isEmpty() ? input.name() : input.fact();
        ask(name, question(input.fact(), input.question(), input.label()), why);
      }
      return this;
    }

    /** Asks for, or objects to, a fact of the dictionary. */
    public Builder object(String fact, String why) {
      return ask(fact, facts.question(fact), why);
    }

    /** Asks for something else. */
    public Builder ask(String name, String question, String why) {
      missing.add(new MissingInput(name, question, why));
      return this;
    }

    /** Whether there is such a number. */
    public boolean has(NumberInput input) {
      return numbers.containsKey(input);
    }

    /** The inputs. */
    public Inputs build() {
      return new Inputs(new LinkedHashMap<>(numbers), new LinkedHashMap<>(words), missing);
    }

    private String question(String fact, String question, String label) {
      if (!question.isEmpty()) {
        return question;
      }
      return fact.isEmpty() ? "What is the " + label + "?" : facts.question(fact);
    }

    private static String name(NumberInput input) {
      return input.fact().isEmpty() ? input.name() : input.fact();
    }

    private static double finite(double value) {
      return Double.isFinite(value) ? value : 0;
    }

    private static String both(Amount amount) {
      String si = amount.in(UnitSystem.SI);
      String us = amount.in(UnitSystem.US);
      return si.equals(us) ? si : si + " (" + us + ")";
    }
  }

  /** What must be answered before anything can be sized; empty where all is there. */
  public List<MissingInput> missing() {
    return missing;
  }

  /** Whether there is such a number. */
  public boolean has(NumberInput input) {
    return numbers.containsKey(input);
  }

  /** The number with its origin, if any. */
  public Optional<Given<Double>> find(NumberInput input) {
    return Optional.ofNullable(numbers.get(input));
  }

  /** The word with its origin, if any. */
  public Optional<Given<String>> find(WordInput input) {
    return Optional.ofNullable(words.get(input));
  }

  /**
   * The number, inside unit.
   *
   * @throws IllegalStateException if there is none
   */
  public double get(NumberInput input) {
    return value(numbers.get(input), input.name());
  }

  private static <T> T value(@Nullable Given<T> given, String name) {
    if (given == null) {
      throw new IllegalStateException("no value for " + name);
    }
    return given.value();
  }

  /** The number as an amount. */
  public Amount amount(NumberInput input) {
    return input.amount(get(input));
  }

  /**
   * The word.
   *
   * @throws IllegalStateException if there is none
   */
  public String get(WordInput input) {
    return value(words.get(input), input.name());
  }

  /** The numbers, in order. */
  public List<NumberInput> numbers() {
    return List.copyOf(numbers.keySet());
  }

  /** The words, in order. */
  public List<WordInput> words() {
    return List.copyOf(words.keySet());
  }

  /** The same with another number. */
  public Inputs with(NumberInput input, Given<Double> given) {
    Map<NumberInput, Given<Double>> more = new LinkedHashMap<>(numbers);
    more.put(input, given);
    return new Inputs(more, words, missing);
  }

  /** The same with another word. */
  public Inputs with(WordInput input, Given<String> given) {
    Map<WordInput, Given<String>> more = new LinkedHashMap<>(words);
    more.put(input, given);
    return new Inputs(numbers, more, missing);
  }

  /** Writes all of them on a sheet with their origin. */
  public void write(SheetBuilder sheet) {
    if (!sheet.whole()) {
      return;
    }
    numbers.forEach(
        (input, given) ->
            sheet.input(
                input.name(),
                input.label(),
                input.amount(given.value()),
                given.origin(),
                given.source()));
    words.forEach(
        (input, given) ->
            sheet.input(
                input.name(), input.label(), given.value(), given.origin(), given.source()));
  }

  /** The inputs that nobody stated and that could stand otherwise. */
  List<NumberInput> guessedNumbers() {
    return numbers.entrySet().stream()
        .filter(entry -> entry.getValue().origin() == Origin.ASSUMED)
        .map(Map.Entry::getKey)
        .filter(input -> input.trial() != NumberInput.Trial.NONE)
        .toList();
  }

  /** The words that nobody stated and that could stand otherwise. */
  List<WordInput> guessedWords() {
    return words.entrySet().stream()
        .filter(entry -> entry.getValue().origin() == Origin.ASSUMED && !entry.getKey().careful())
        .map(Map.Entry::getKey)
        .toList();
  }
}
