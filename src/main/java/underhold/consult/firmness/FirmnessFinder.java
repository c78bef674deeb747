package underhold.consult.firmness;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.SplittableRandom;
import java.util.function.Predicate;
import underhold.advice.PlainRules;
import underhold.advice.Points;
import underhold.advice.SupportOption;
import underhold.consult.trial.Trials;
import underhold.site.FactValue;
import underhold.site.FactView;
import underhold.site.Zone;
import underhold.threads.AllProcessors;

/** Finds how firm the first place of a zone is. */
public final class FirmnessFinder {
  /** Draws inside an advice: enough for five in a hundred either way. */
  public static final int USUAL_DRAWS = 100;

  /** The seed unless another is asked for. */
  public static final long USUAL_SEED = 20261127;

  private final Trials trials;
  private final Zone zone;
  private final FactDraws facts;
  private final PackDraws pack;
  private final Points weights;

  /** A finder for one zone of the site of the trials. */
  public FirmnessFinder(Trials trials, Zone zone) {
    this.trials = trials;
    this.zone = zone;
    this.facts = new FactDraws(trials, zone, trials.rules());
    this.pack = new PackDraws(trials.rules().pack());
    this.weights = Points.of(trials.rules().pack().weights());
  }

  /**
   * Draws and counts, with all threads; the outcome does not depend on how many there are.
   *
   * @param draws how many, at least 1
   * @param seed the same seed gives the same draws
   */
  public Firmness find(int draws, long seed) {
    Base base = base();
    List<Judged> judged = AllProcessors.each(seeds(draws, seed), one -> judged(base, draw(one)));
    Map<SupportOption, Integer> firsts = new EnumMap<>(SupportOption.class);
    judged.forEach(one -> one.first.ifPresent(option -> firsts.merge(option, 1, Integer::sum)));
    return new Firmness(
        base.leader.orElse(null),
        draws,
        seed,
        firsts,
        count(judged, Judged::byWeights),
        count(judged, Judged::byFacts),
        count(judged, Judged::byLimits),
        facts.unknown().size(),
        pack.uncertain().size(),
        Drivers.of(facts.unknown(), judged.stream().map(Judged::drawn).toList()));
  }

  /**
   * In how many draws the answer stays what it is. The draws are the first ones of {@link #find}
   * for that seed, and each is judged as there; only what drives the doubt is not looked for.
   *
   * @param draws how many, at least 1
   * @param seed the same seed gives the same draws
   */
  public int stayed(int draws, long seed) {
    Base base = base();
    int stayed = 0;
    for (long one : seeds(draws, seed)) {
      Draw draw = draw(one);
      Trials drawn = trials.by(draw.rules, draw.weights);
      stayed += stays(base.leader, drawn, draw.rules.complete(draw.view)) ? 1 : 0;
    }
    return stayed;
  }

  /** The answer as it is: the facts, with what follows from them, and who leads. */
  private record Base(FactView known, FactView whole, Optional<SupportOption> leader) {}

  private Base base() {
    FactView known = trials.known(zone);
    FactView whole = trials.rules().complete(known);
    return new Base(known, whole, trials.leading(whole).leader());
  }

  /** A seed for each draw, so that each can be drawn by itself. */
  private static List<Long> seeds(int draws, long seed) {
    return new SplittableRandom(seed).longs(draws).boxed().toList();
  }

  /** Weights, rules with other limits, facts that were open, and the zone with them. */
  private record Draw(
      Points weights, PlainRules rules, Map<String, FactValue> facts, FactView view) {}

  private Draw draw(long seed) {
    Random random = new Random(seed);
    Points weights = pack.weights(random);
    PlainRules rules = trials.rules().with(pack.limits(random));
    Map<String, FactValue> drawn = facts.draw(random);
    return new Draw(weights, rules, drawn, trials.known(facts.zone(drawn)));
  }

  /** Who comes first in a draw, and whether the answer stays by each kind of change alone. */
  private record Judged(
      Drawn drawn,
      Optional<SupportOption> first,
      boolean byWeights,
      boolean byFacts,
      boolean byLimits) {}

  private Judged judged(Base base, Draw draw) {
    Trials usual = trials.by(trials.rules(), weights);
    Optional<SupportOption> first =
        trials.by(draw.rules, draw.weights).leading(draw.rules.complete(draw.view)).leader();
    return new Judged(
        new Drawn(draw.facts, first.equals(base.leader)),
        first,
        stays(base.leader, trials.by(trials.rules(), draw.weights), base.whole),
        stays(base.leader, usual, trials.rules().complete(draw.view)),
        stays(base.leader, trials.by(draw.rules, weights), draw.rules.complete(base.known)));
  }

  private static int count(List<Judged> judged, Predicate<Judged> which) {
    return (int) judged.stream().filter(which).count();
  }

  private static boolean stays(Optional<SupportOption> leader, Trials drawn, FactView view) {
    return leader
        .map(option -> drawn.leads(view, option))
        .orElseGet(() -> drawn.leading(view).leader().isEmpty());
  }
}
