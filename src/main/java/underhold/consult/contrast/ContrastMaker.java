package underhold.consult.contrast;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import underhold.advice.Criterion;
import underhold.advice.Effect;
import underhold.advice.Finding;
import underhold.advice.Hold;
import underhold.advice.OptionAdvice;
import underhold.advice.RulePack;
import underhold.advice.SupportOption;
import underhold.consult.Bearing;
import underhold.consult.ZoneAdvice;

/** Makes the contrast of two options of one zone. */
final class ContrastMaker {
  private final ZoneAdvice zone;
  private final RulePack pack;
  private final OptionAdvice first;
  private final OptionAdvice second;
  private final SheetAsides sheets;

  ContrastMaker(ZoneAdvice zone, RulePack pack, SupportOption one, SupportOption other) {
    this.zone = zone;
    this.pack = pack;
    this.first = zone.ranking().of(one);
    this.second = zone.ranking().of(other);
    this.sheets = new SheetAsides(zone, one, other);
  }

  Contrast make() {
    return new Contrast(
        zone.name(),
        new Side(first),
        new Side(second),
        pack.weights().tie(),
        Arrays.stream(Criterion.values()).map(this::criterion).toList());
  }

  private CriterionContrast criterion(Criterion criterion) {
    return new CriterionContrast(
        criterion,
        pack.criteria().meaning(criterion),
        arguments(criterion),
        holds(criterion),
        asides(criterion));
  }

  /** What rules out comes first, what counts before what does not, what is only assumed last. */
  private List<Argument> arguments(Criterion criterion) {
    Set<Finding> findings = new LinkedHashSet<>(first.findings());
    findings.addAll(second.findings());
    zone.screening().assumed().stream()
        .filter(one -> one.effect().scores() || one.effect() == Effect.RULE_OUT)
        .filter(one -> concerns(first, one) || concerns(second, one))
        .forEach(findings::add);
    return findings.stream()
        .filter(finding -> pack.criteria().of(finding.rule()) == criterion)
        .map(this::argument)
        .sorted(Comparator.comparing(one -> strongest(one)))
        .toList();
  }

  private static Bearing strongest(Argument argument) {
    return argument.first().compareTo(argument.second()) < 0 ? argument.first() : argument.second();
  }

  private Argument argument(Finding finding) {
    int points = finding.strength().map(pack.weights()::of).orElse(0);
    Bearing one = Bearing.of(finding, first);
    Bearing other = Bearing.of(finding, second);
    boolean counts = one == Bearing.COUNTS || other == Bearing.COUNTS;
    return new Argument(
        finding, one, other, !counts ? 0 : finding.effect() == Effect.AGAINST ? -points : points);
  }

  private static boolean concerns(OptionAdvice advice, Finding finding) {
    return finding.rule().concerns(advice.option());
  }

  private List<HeldBy> holds(Criterion criterion) {
    Set<Hold> holds = new LinkedHashSet<>(first.holds());
    holds.addAll(second.holds());
    return holds.stream()
        .filter(hold -> pack.criteria().of(hold.rule()) == criterion)
        .map(hold -> new HeldBy(hold, first.holds().contains(hold), second.holds().contains(hold)))
        .toList();
  }

  private List<Aside> asides(Criterion criterion) {
    return switch (criterion) {
      case MOVEMENT -> sheets.movement();
      case TIME -> sheets.time();
      case COST -> cost();
      case SAFETY -> cautions();
      case GROUND, WATER, LOAD, ACCESS, STRUCTURE -> List.of();
    };
  }

  /** Nothing where one of them is a referral, whose cost nobody can say. */
  private List<Aside> cost() {
    List<SupportOption> order = pack.weights().costOrder();
    int one = order.indexOf(first.option());
    int other = order.indexOf(second.option());
    if (one < 0 || other < 0) {
      return List.of();
    }
    return List.of(
        one < other
            ? new Aside.UsualCost(first.option(), second.option())
            : new Aside.UsualCost(second.option(), first.option()));
  }

  private List<Aside> cautions() {
    List<Aside> cautions = new ArrayList<>();
    Stream.concat(zone.screening().findings().stream(), zone.screening().assumed().stream())
        .filter(finding -> finding.effect() == Effect.CAUTION)
        .filter(finding -> concerns(first, finding) != concerns(second, finding))
        .forEach(
            finding ->
                cautions.add(
                    new Aside.CautionOfOne(
                        concerns(first, finding) ? first.option() : second.option(), finding)));
    return cautions;
  }
}
