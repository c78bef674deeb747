package underhold.sizing;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * A calculation sheet. Where essential inputs are missing it holds the inputs known and the
 * questions, and no step.
 *
 * @param title title
 * @param methodId support option
 * @param inputs inputs and settings with their origin
 * @param missing what must be known first
 * @param steps steps in order
 * @param checks checks in order
 * @param quantities bill of quantities
 * @param time durations and calendar
 * @param stages order of work
 * @param cautions hazards
 * @param notCovered what it does not cover
 */
public record Sheet(
    String title,
    String methodId,
    List<SheetInput> inputs,
    List<MissingInput> missing,
    List<Step> steps,
    List<Check> checks,
    List<BillItem> quantities,
    List<BillItem> time,
    List<Stage> stages,
    List<Caution> cautions,
    List<String> notCovered) {

  public Sheet {
    inputs = List.copyOf(inputs);
    missing = List.copyOf(missing);
    steps = List.copyOf(steps);
    checks = List.copyOf(checks);
    quantities = List.copyOf(quantities);
    time = List.copyOf(time);
    stages = List.copyOf(stages);
    cautions = List.copyOf(cautions);
    notCovered = List.copyOf(notCovered);
    Set<String> ids = new LinkedHashSet<>();
    steps.forEach(step -> refuseDouble(ids, "step " + step.id()));
    checks.forEach(check -> refuseDouble(ids, "check " + check.id()));
  }

  private static void refuseDouble(Set<String> ids, String id) {
    if (!ids.add(id)) {
      throw new IllegalArgumentException(id + " occurs twice");
    }
  }

  /** Whether every essential input was there. */
  public boolean complete() {
    return missing.isEmpty();
  }

  /** Fails if any check fails; else refer if any does or if inputs are missing; else passes. */
  public Verdict verdict() {
    if (checks.stream().anyMatch(check -> check.verdict() == Verdict.FAILS)) {
      return Verdict.FAILS;
    }
    boolean refer =
        !complete() || checks.stream().anyMatch(check -> check.verdict() == Verdict.REFER);
    return refer ? Verdict.REFER : Verdict.PASSES;
  }

  /** The same sheet with other checks. */
  public Sheet withChecks(List<Check> others) {
    return new Sheet(
        title,
        methodId,
        inputs,
        missing,
        steps,
        others,
        quantities,
        time,
        stages,
        cautions,
        notCovered);
  }

  /** The same sheet with other questions. */
  public Sheet withMissing(List<MissingInput> others) {
    return new Sheet(
        title,
        methodId,
        inputs,
        others,
        steps,
        checks,
        quantities,
        time,
        stages,
        cautions,
        notCovered);
  }

  /** The same sheet with a caution before all others. */
  public Sheet withFirst(Caution caution) {
    List<Caution> more = new ArrayList<>(cautions);
    more.add(0, caution);
    return new Sheet(
        title,
        methodId,
        inputs,
        missing,
        steps,
        checks,
        quantities,
        time,
        stages,
        more,
        notCovered);
  }

  /** The step of that id. */
  public Optional<Step> step(String id) {
    return steps.stream().filter(step -> step.id().equals(id)).findFirst();
  }

  /** The check of that id. */
  public Optional<Check> check(String id) {
    return checks.stream().filter(check -> check.id().equals(id)).findFirst();
  }

  /** The input of that name. */
  public Optional<SheetInput> input(String name) {
    return inputs.stream().filter(input -> input.name().equals(name)).findFirst();
  }
}
