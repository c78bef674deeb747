package underhold.sizing.pits;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import underhold.mechanics.timber.SheetingSoil;
import underhold.sizing.Check;
import underhold.sizing.Given;
import underhold.sizing.Guesses;
import underhold.sizing.Origin;
import underhold.sizing.Sheet;
import underhold.sizing.SheetInput;
import underhold.sizing.zone.AssumedInputs;
import underhold.sizing.zone.SoilClass;

/**
 * Sees to it that no check passes on a value that nobody stated: a check that moves when an assumed
 * input is halved or doubled (a water level: moved by 1 m; a class: exchanged for another) refers
 * to the engineer and names the input.
 *
 * <p>Inputs that are assumed at their unfavourable end or at the least that a code asks for do not
 * count: the surcharge, free ends, a light soil below the base, poor condition, no bracing, no
 * proof of lateral stability. Judgement.
 */
final class PitsAssumptions {
  private static final Set<String> UNFAVOURABLE =
      Set.of(
          PitsFact.SURCHARGE.id(),
          PitsFact.CORNERS.id(),
          PitsFact.BASE_UNIT_WEIGHT.id(),
          "condition",
          "brace-possible",
          "lateral-stability-verified");

  private static final double LEVEL_SHIFT_METRES = 1;

  private final PitsInput input;
  private final Function<PitsInput, Sheet> method;
  private final Sheet sheet;

  private PitsAssumptions(PitsInput input, Sheet sheet, Function<PitsInput, Sheet> method) {
    this.input = input;
    this.sheet = sheet;
    this.method = method;
  }

  /** The sheet of a complete input, its checks referred where they rest on assumed ones. */
  static Sheet referred(PitsInput input, Function<PitsInput, Sheet> method) {
    return referred(input, Guesses.TRIED, method, method);
  }

  /**
   * The sheet of a complete input.
   *
   * @param input the input, as far as it was given
   * @param guesses what is done about the assumed ones
   * @param whole makes the whole sheet
   * @param checks makes a sheet with the same checks
   */
  static Sheet referred(
      PitsInput input,
      Guesses guesses,
      Function<PitsInput, Sheet> whole,
      Function<PitsInput, Sheet> checks) {
    return guesses == Guesses.TRIED
        ? new PitsAssumptions(input, whole.apply(input), checks).referred()
        : checks.apply(input);
  }

  private Sheet referred() {
    Map<String, List<String>> rests = new LinkedHashMap<>();
    for (SheetInput one : sheet.inputs()) {
      if (one.origin() == Origin.ASSUMED && !UNFAVOURABLE.contains(one.name())) {
        for (String check : moved(others(one))) {
          rests.computeIfAbsent(check, id -> new ArrayList<>()).add(one.label());
        }
      }
    }
    return sheet.withChecks(
        sheet.checks().stream()
            .map(check -> AssumedInputs.refer(check, rests.getOrDefault(check.id(), List.of())))
            .toList());
  }

  private Set<String> moved(List<PitsInput> others) {
    Set<String> moved = new HashSet<>();
    for (PitsInput other : others) {
      Sheet after = method.apply(other);
      for (Check check : sheet.checks()) {
        if (after.check(check.id()).filter(now -> same(check, now)).isEmpty()) {
          moved.add(check.id());
        }
      }
    }
    return moved;
  }

  private static boolean same(Check one, Check other) {
    return one.demand().si() == other.demand().si()
        && one.capacity().si() == other.capacity().si()
        && one.verdict() == other.verdict();
  }

  private List<PitsInput> others(SheetInput assumed) {
    return switch (assumed.name()) {
      case "face-soil" -> each(SoilClass.values(), PitsInputBuilder::faceSoil);
      case "base-soil" -> each(SoilClass.values(), PitsInputBuilder::baseSoil);
      case "faces-run" -> each(new Boolean[] {true, false}, PitsInputBuilder::facesRun);
      case "stand-up" -> each(StandUp.values(), PitsInputBuilder::standUp);
      case "osha-type" -> each(SheetingSoil.values(), PitsInputBuilder::oshaType);
      case "material" -> each(WallMaterial.values(), PitsInputBuilder::material);
      default -> numbers(assumed);
    };
  }

  private List<PitsInput> numbers(SheetInput assumed) {
    PitsFact fact =
        Arrays.stream(PitsFact.values())
            .filter(one -> one.id().equals(assumed.name()))
            .findFirst()
            .orElseThrow();
    double value = assumed.amount().orElseThrow().si();
    boolean level =
        fact == PitsFact.WATER_ABOVE_PIT_BASE || fact == PitsFact.LASTING_WATER_ABOVE_PIT_BASE;
    List<Double> values =
        level
            ? List.of(value - LEVEL_SHIFT_METRES, value + LEVEL_SHIFT_METRES)
            : List.of(value / 2, value * 2);
    return values.stream()
        .filter(fact::accepts)
        .map(
            other -> input.toBuilder().amount(fact, Given.assumed(other, assumed.source())).build())
        .toList();
  }

  /** Sets a choice. */
  private interface Choice<T> {
    PitsInputBuilder set(PitsInputBuilder builder, Given<T> given);
  }

  private <T> List<PitsInput> each(T[] values, Choice<T> choice) {
    return Arrays.stream(values)
        .map(value -> choice.set(input.toBuilder(), Given.stated(value)).build())
        .toList();
  }
}
