package underhold.sizing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** Writes a sheet from top to bottom, so that a calculator reads like the calculation. */
public final class SheetBuilder {
  private final String title;
  private final String methodId;
  private final boolean whole;
  private final List<SheetInput> inputs = new ArrayList<>();
  private final List<MissingInput> missing = new ArrayList<>();
  private final List<Step> steps = new ArrayList<>();
  private final List<Check> checks = new ArrayList<>();
  private final List<BillItem> quantities = new ArrayList<>();
  private final List<BillItem> time = new ArrayList<>();
  private final List<Stage> stages = new ArrayList<>();
  private final List<Caution> cautions = new ArrayList<>();
  private final List<String> notCovered = new ArrayList<>();

  private SheetBuilder(String title, String methodId, boolean whole) {
    this.title = title;
    this.methodId = methodId;
    this.whole = whole;
  }

  /** Begins a sheet. */
  public static SheetBuilder titled(String title, String methodId) {
    return new SheetBuilder(title, methodId, true);
  }

  /**
   * Begins a sheet that keeps its checks and drops the rest of what is written on it: for trials of
   * many sites, which ask only what the checks say.
   */
  public static SheetBuilder ofChecks(String title, String methodId) {
    return new SheetBuilder(title, methodId, false);
  }

  /** Whether all that is written is kept, or the checks alone. */
  public boolean whole() {
    return whole;
  }

  /** Notes an amount that goes in. */
  public SheetBuilder input(
      String name, String label, Amount amount, Origin origin, Source source) {
    if (whole) {
      inputs.add(new SheetInput(name, label, Optional.of(amount), "", origin, source));
    }
    return this;
  }

  /** Notes a choice that goes in. */
  public SheetBuilder input(String name, String label, String words, Origin origin, Source source) {
    if (whole) {
      inputs.add(new SheetInput(name, label, Optional.empty(), words, origin, source));
    }
    return this;
  }

  /** Notes what is missing. */
  public SheetBuilder missing(List<MissingInput> inputsMissing) {
    missing.addAll(inputsMissing);
    return this;
  }

  /** Begins a step: "M = {p} × {L}^2 / 8". It is added by {@link StepBuilder#gives}. */
  public StepBuilder step(String id, String stepTitle, String formula) {
    return new StepBuilder(this, id, stepTitle, formula, formula);
  }

  /** Begins a step whose coefficients have units, with the metric and the US text. */
  public StepBuilder step(String id, String stepTitle, String siFormula, String usFormula) {
    return new StepBuilder(this, id, stepTitle, siFormula, usFormula);
  }

  void add(Step step) {
    steps.add(step);
  }

  /** Checks that the demand is at most the capacity; otherwise fails. */
  public boolean check(
      String id, String what, Amount demand, Amount capacity, Source source, String note) {
    return check(id, what, demand, capacity, Verdict.FAILS, source, Phrase.of(note));
  }

  /** Checks that the demand is at most the capacity; otherwise the verdict given. */
  public boolean check(
      String id,
      String what,
      Amount demand,
      Amount capacity,
      Verdict otherwise,
      Source source,
      Phrase note) {
    boolean passes = Check.covers(demand.si(), capacity.si());
    checks.add(
        new Check(id, what, demand, capacity, passes ? Verdict.PASSES : otherwise, source, note));
    return passes;
  }

  /** Adds a check whose verdict is settled elsewhere. */
  public SheetBuilder verdict(
      String id,
      String what,
      Amount demand,
      Amount capacity,
      Verdict verdict,
      Source source,
      Phrase note) {
    checks.add(new Check(id, what, demand, capacity, verdict, source, note));
    return this;
  }

  /** Adds a line to the bill. */
  public SheetBuilder quantity(String name, Amount amount, String note) {
    if (whole) {
      quantities.add(new BillItem(name, amount, Phrase.of(note)));
    }
    return this;
  }

  /** Adds a line to the time plan. */
  public SheetBuilder time(String name, Amount amount, Phrase note) {
    if (whole) {
      time.add(new BillItem(name, amount, note));
    }
    return this;
  }

  /** Adds a stage. */
  public SheetBuilder stage(Stage stage) {
    if (whole) {
      stages.add(stage);
    }
    return this;
  }

  /** Adds a caution. */
  public SheetBuilder caution(String hazard, Phrase advice, String decidedBy, Source source) {
    if (whole) {
      cautions.add(new Caution(hazard, advice, decidedBy, source));
    }
    return this;
  }

  /** Says what the sheet leaves out. */
  public SheetBuilder notCovered(String what) {
    if (whole) {
      notCovered.add(what);
    }
    return this;
  }

  /** The checks so far that do not pass, of those whose id begins with one of the words. */
  public List<Check> unsettled(String... beginnings) {
    return checks.stream()
        .filter(check -> check.verdict() != Verdict.PASSES)
        .filter(check -> Arrays.stream(beginnings).anyMatch(check.id()::startsWith))
        .toList();
  }

  /** Whether every check so far passes. */
  public boolean allPass() {
    return checks.stream().allMatch(check -> check.verdict() == Verdict.PASSES);
  }

  /** The finished sheet. */
  public Sheet build() {
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
        cautions,
        notCovered);
  }
}
