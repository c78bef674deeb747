package underhold.sizing.zone;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;
import underhold.sizing.Check;
import underhold.sizing.Given;
import underhold.sizing.Guesses;
import underhold.sizing.Phrase;
import underhold.sizing.Sheet;
import underhold.sizing.Verdict;

/**
 * Sees to it that no check passes on a value that nobody stated: a check that moves when an assumed
 * input is tried at other values ({@link NumberInput.Trial}; a word: exchanged for another) refers
 * to the engineer and names the input. Judgement.
 */
public final class AssumedInputs {
  private static final double LEVEL_SHIFT_METRES = 1;

  private final Inputs inputs;
  private final Function<Inputs, Sheet> method;
  private final Sheet sheet;

  private AssumedInputs(Inputs inputs, Sheet sheet, Function<Inputs, Sheet> method) {
    this.inputs = inputs;
    this.method = method;
    this.sheet = sheet;
  }

  /** The sheet of complete inputs, its checks referred where they rest on assumed ones. */
  public static Sheet referred(Inputs inputs, Function<Inputs, Sheet> method) {
    return referred(inputs, Guesses.TRIED, method);
  }

  /**
   * The sheet of complete inputs, its checks referred where they rest on assumed ones.
   *
   * @param inputs complete inputs
   * @param guesses what is done about the assumed ones
   * @param method sizes inputs
   */
  public static Sheet referred(Inputs inputs, Guesses guesses, Function<Inputs, Sheet> method) {
    return referred(inputs, guesses, method, method);
  }

  /**
   * The same, where the checks alone come cheaper than the whole sheet.
   *
   * @param whole makes the whole sheet
   * @param checks makes a sheet with the same checks
   */
  public static Sheet referred(
      Inputs inputs,
      Guesses guesses,
      Function<Inputs, Sheet> whole,
      Function<Inputs, Sheet> checks) {
    return guesses == Guesses.TRIED
        ? new AssumedInputs(inputs, whole.apply(inputs), checks).referred()
        : checks.apply(inputs);
  }

  /** A passing check referred, with what it rests on. */
  public static Check refer(Check check, List<String> assumed) {
    if (assumed.isEmpty() || check.verdict() != Verdict.PASSES) {
      return check;
    }
    String words =
        " It would pass, but nobody stated what it rests on: " + String.join("; ", assumed) + ".";
    Phrase note = new Phrase((check.note().template() + words).strip(), check.note().amounts());
    return new Check(
        check.id(),
        check.title(),
        check.demand(),
        check.capacity(),
        Verdict.REFER,
        check.source(),
        note);
  }

  private Sheet referred() {
    Map<String, List<String>> rests = new LinkedHashMap<>();
    for (NumberInput one : inputs.guessedNumbers()) {
      note(rests, one.label(), others(one));
    }
    for (WordInput one : inputs.guessedWords()) {
      note(rests, one.label(), others(one));
    }
    return sheet.withChecks(
        sheet.checks().stream()
            .map(check -> refer(check, rests.getOrDefault(check.id(), List.of())))
            .toList());
  }

  private void note(Map<String, List<String>> rests, String label, Stream<Inputs> others) {
    for (String check : moved(others)) {
      rests.computeIfAbsent(check, id -> new ArrayList<>()).add(label);
    }
  }

  private Set<String> moved(Stream<Inputs> others) {
    Set<String> moved = new HashSet<>();
    others.forEach(
        other -> {
          Sheet after = method.apply(other);
          for (Check check : sheet.checks()) {
            Optional<Check> now = after.check(check.id());
            if (now.filter(one -> same(check, one)).isEmpty()) {
              moved.add(check.id());
            }
          }
        });
    return moved;
  }

  private static boolean same(Check one, Check other) {
    return one.demand().si() == other.demand().si()
        && one.capacity().si() == other.capacity().si()
        && one.verdict() == other.verdict();
  }

  private Stream<Inputs> others(NumberInput input) {
    double value = inputs.get(input);
    Stream<Double> values =
        switch (input.trial()) {
          case SCALE -> Stream.of(value / 2, value * 2);
          case SHIFT -> Stream.of(value - LEVEL_SHIFT_METRES, value + LEVEL_SHIFT_METRES);
          case NONE -> Stream.empty();
        };
    return values
        .map(other -> Math.min(Math.max(other, input.least()), input.most()))
        .map(other -> inputs.with(input, Given.stated(other)));
  }

  private Stream<Inputs> others(WordInput input) {
    String word = inputs.get(input);
    return input.words().stream()
        .filter(other -> !other.equals(word))
        .map(other -> inputs.with(input, Given.stated(other)));
  }
}
