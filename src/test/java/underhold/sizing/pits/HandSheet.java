package underhold.sizing.pits;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.LinkedHashMap;
import java.util.Map;
import underhold.sizing.Sheet;
import underhold.sizing.Verdict;

/** What a sheet must say, worked apart; every step and check in order, none left out. */
final class HandSheet {
  /** Constants are typed with seven figures or more. */
  private static final double RELATIVE = 2e-6;

  private final Map<String, Double> steps = new LinkedHashMap<>();
  private final Map<String, Row> checks = new LinkedHashMap<>();

  private record Row(double demand, double capacity, Verdict verdict) {}

  HandSheet step(String id, double value) {
    steps.put(id, value);
    return this;
  }

  HandSheet passes(String id, double demand, double capacity) {
    checks.put(id, new Row(demand, capacity, Verdict.PASSES));
    return this;
  }

  HandSheet refers(String id, double demand, double capacity) {
    checks.put(id, new Row(demand, capacity, Verdict.REFER));
    return this;
  }

  HandSheet fails(String id, double demand, double capacity) {
    checks.put(id, new Row(demand, capacity, Verdict.FAILS));
    return this;
  }

  /** All steps of the sheet are these, in this order. */
  void hasTheStepsOf(Sheet sheet) {
    assertThat(sheet.steps().stream().map(step -> step.id()))
        .containsExactlyElementsOf(steps.keySet());
    hasStepsOf(sheet);
  }

  /** The sheet has these steps among others. */
  void hasStepsOf(Sheet sheet) {
    steps.forEach((id, value) -> close(id, sheet.step(id).orElseThrow().result().si(), value));
  }

  /** All checks of the sheet are these, in this order. */
  void hasTheChecksOf(Sheet sheet) {
    assertThat(sheet.checks().stream().map(check -> check.id()))
        .containsExactlyElementsOf(checks.keySet());
    hasChecksOf(sheet);
  }

  /** The sheet has these checks among others. */
  void hasChecksOf(Sheet sheet) {
    checks.forEach(
        (id, row) -> {
          var check = sheet.check(id).orElseThrow();
          close(id + ", demand", check.demand().si(), row.demand());
          close(id + ", capacity", check.capacity().si(), row.capacity());
          assertThat(check.verdict()).as(id).isEqualTo(row.verdict());
        });
  }

  private static void close(String what, double found, double expected) {
    assertThat(found).as(what).isCloseTo(expected, within(RELATIVE * Math.abs(expected) + 1e-12));
  }
}
