package underhold.advice;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.openjdk.jmh.infra.Blackhole;
import underhold.consult.ZoneTables;
import underhold.quantity.UnitSystem;
import underhold.site.FactDictionary;
import underhold.site.FactView;
import underhold.site.Site;
import underhold.site.ZoneViews;

/**
 * What the rules cost: run by {@code src/bench/rules.sh}. {@link HandWrittenRulesTest} shows first
 * that both sides fire the same rules.
 */
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(1)
@Warmup(iterations = 4, time = 1)
@Measurement(iterations = 5, time = 1)
public class RulesBenchmark {
  private static final int VIEWS = 100;

  /** Zones of which everything to little is known, one after the other. */
  @State(Scope.Thread)
  public static class Zones {
    /** How many zones one call screens. */
    @Param({"1", "10", "100"})
    public int zones;

    final RulePack pack = BuiltInPack.pack();
    final List<FactView> known = new ArrayList<>();
    final List<FactView> whole = new ArrayList<>();
    final List<PlainZone> plain = new ArrayList<>();
    final HandWrittenRules byHand = new HandWrittenRules(pack.limits());
    final Wording wording = new Wording(pack, UnitSystem.SI);
    private int at;

    /** Makes the zones. */
    @Setup
    public void make() {
      PlainRules rules = new PlainRules(pack, FactDictionary.standard());
      for (Site site : ZoneTables.of(VIEWS, 7).sites()) {
        FactView view = ZoneViews.known(site, site.zones().get(0), FactDictionary.standard());
        known.add(view);
        whole.add(rules.complete(view));
        plain.add(new PlainZone(rules.complete(view)));
      }
    }

    int next() {
      at = (at + 1) % VIEWS;
      return at;
    }

    /** A view as a zone just read has it, of which nothing is kept yet. */
    FactView fresh() {
      FactView view = known.get(next());
      return view.with(view.all().get(0));
    }
  }

  /** The rules, of one size or another. */
  @State(Scope.Benchmark)
  public static class Rules {
    /** How often each rule stands in the pack, under another id each time. */
    @Param({"1", "2", "4"})
    public int copies;

    PlainEngine same;
    PlainEngine all;

    /** Makes the packs. */
    @Setup
    public void make() {
      RulePack pack = BuiltInPack.pack();
      all = new PlainEngine(copied(pack, pack.rules(), copies));
      same =
          new PlainEngine(
              copied(
                  pack,
                  pack.rules().stream()
                      .filter(rule -> HandWrittenRules.IDS.contains(rule.id()))
                      .toList(),
                  copies));
    }

    private static RulePack copied(RulePack pack, List<Rule> rules, int copies) {
      List<Rule> all = new ArrayList<>();
      for (int i = 0; i < copies; i++) {
        for (Rule rule : rules) {
          all.add(i == 0 ? rule : copy(rule, i));
        }
      }
      return new RulePack(
          pack.name(),
          pack.version(),
          pack.fingerprint(),
          all,
          List.of(),
          pack.limits(),
          pack.sources(),
          pack.weights(),
          pack.criteria(),
          pack.origin());
    }

    private static Rule copy(Rule rule, int number) {
      return new Rule(
          rule.id() + "-copy" + number,
          rule.sentence() + " (copy " + number + ")",
          rule.phase(),
          rule.basis(),
          rule.citations(),
          rule.because(),
          rule.cause(),
          rule.hold(),
          rule.conditions(),
          rule.action(),
          rule.file(),
          rule.line());
    }
  }

  /** The engines that share their rules between threads. */
  @State(Scope.Benchmark)
  public static class Engines {
    final RuleEngine compiled = BuiltInPack.compiledEngine();
    final Screener byCompiled = new Screener(compiled);
    final Screener byPlain = new Screener(new PlainEngine(BuiltInPack.pack()));
  }

  /** 48 rules as plain Java. */
  @Benchmark
  public void ruleByHand(Zones zones, Blackhole hole) {
    for (int i = 0; i < zones.zones; i++) {
      List<String> fired = new ArrayList<>();
      zones.byHand.fire(zones.plain.get(zones.next()), fired);
      hole.consume(fired);
    }
  }

  /** The same 48 rules, read condition by condition. */
  @Benchmark
  public void ruleSame48(Zones zones, Rules rules, Blackhole hole) {
    for (int i = 0; i < zones.zones; i++) {
      hole.consume(rules.same.fire(zones.whole.get(zones.next()), Rule.Phase.SCREEN));
    }
  }

  /** All rules of the phase that screens, read condition by condition. */
  @Benchmark
  public void ruleAllRead(Zones zones, Rules rules, Blackhole hole) {
    for (int i = 0; i < zones.zones; i++) {
      hole.consume(rules.all.fire(zones.whole.get(zones.next()), Rule.Phase.SCREEN));
    }
  }

  /** All rules of the phase that screens, by the rule engine. */
  @Benchmark
  public void ruleAllCompiled(Zones zones, Engines engines, Blackhole hole) {
    for (int i = 0; i < zones.zones; i++) {
      hole.consume(engines.compiled.fire(zones.whole.get(zones.next()), Rule.Phase.SCREEN));
    }
  }

  /** What counts in a ranking: derived facts, rules that fired, holds; without reasons. */
  @Benchmark
  public void zoneFindings(Zones zones, Engines engines, Blackhole hole) {
    for (int i = 0; i < zones.zones; i++) {
      hole.consume(engines.byPlain.score(zones.fresh(), zones.wording, Confirmation.NONE));
    }
  }

  /** Findings with their reasons, on known and on assumed facts, holds and near misses in words. */
  @Benchmark
  public void zoneWhole(Zones zones, Engines engines, Blackhole hole) {
    for (int i = 0; i < zones.zones; i++) {
      hole.consume(engines.byPlain.screen(zones.fresh(), zones.wording));
    }
  }

  /** The same by the rule engine. */
  @Benchmark
  public void zoneWholeCompiled(Zones zones, Engines engines, Blackhole hole) {
    for (int i = 0; i < zones.zones; i++) {
      hole.consume(engines.byCompiled.screen(zones.fresh(), zones.wording));
    }
  }
}
