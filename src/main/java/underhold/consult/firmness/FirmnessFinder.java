package underhold.consult.firmness;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.SplittableRandom;
import underhold.advice.PlainRules;
import underhold.advice.Points;
import underhold.advice.SupportOption;
import underhold.consult.trial.Trials;
import underhold.site.FactValue;
import underhold.site.FactView;
import underhold.site.Zone;

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
  private final Points usual;

  /** A finder for one zone of the site of the trials. */
  public FirmnessFinder(Trials trials, Zone zone) {
    this.trials = trials;
    this.zone = zone;
    this.facts = new FactDraws(trials, zone, trials.rules());
    this.pack = new PackDraws(trials.rules().pack());
    this.usual = Points.of(trials.rules().pack().weights());
  }

  /**
   * Draws and counts.
   *
   * @param draws how many, at least 1
   * @param seed the same seed gives the same draws
   */
  public Firmness find(int draws, long seed) {
    FactView known = trials.known(zone);
    FactView whole = trials.rules().complete(known);
    Optional<SupportOption> leader = trials.leading(whole).leader();
    Map<SupportOption, Integer> firsts = new EnumMap<>(SupportOption.class);
    List<Drawn> sample = new ArrayList<>();
    int byWeights = 0;
    int byFacts = 0;
    int byLimits = 0;
    SplittableRandom seeds = new SplittableRandom(seed);
    for (int i = 0; i < draws; i++) {
      Random random = new Random(seeds.nextLong());
      Points weights = pack.weights(random);
      Map<String, Double> limits = pack.limits(random);
      Map<String, FactValue> drawn = facts.draw(random);
      FactView changed = trials.known(facts.zone(drawn));
      PlainRules moved = trials.rules().with(limits);
      Optional<SupportOption> first =
          trials.by(moved, weights).leading(moved.complete(changed)).leader();
      first.ifPresent(option -> firsts.merge(option, 1, Integer::sum));
      byWeights += stays(leader, trials.by(trials.rules(), weights), whole);
      byLimits += stays(leader, trials.by(moved, usual), moved.complete(known));
      FactView is = trials.rules().complete(changed);
      byFacts += stays(leader, trials.by(trials.rules(), usual), is);
      sample.add(new Drawn(drawn, first.equals(leader)));
    }
    return new Firmness(
        leader.orElse(null),
        draws,
        seed,
        firsts,
        byWeights,
        byFacts,
        byLimits,
        facts.unknown().size(),
        pack.uncertain().size(),
        Drivers.of(facts.unknown(), sample));
  }

  /**
   * In how many draws the answer stays what it is. The draws are the first ones of {@link #find}
   * for that seed, and each is judged as there; only what drives the doubt is not looked for.
   *
   * @param draws how many, at least 1
   * @param seed the same seed gives the same draws
   */
  public int stayed(int draws, long seed) {
    FactView whole = trials.rules().complete(trials.known(zone));
    Optional<SupportOption> leader = trials.leading(whole).leader();
    SplittableRandom seeds = new SplittableRandom(seed);
    int stayed = 0;
    for (int i = 0; i < draws; i++) {
      Random random = new Random(seeds.nextLong());
      Points weights = pack.weights(random);
      PlainRules moved = trials.rules().with(pack.limits(random));
      FactView changed = trials.known(facts.zone(facts.draw(random)));
      stayed += stays(leader, trials.by(moved, weights), moved.complete(changed));
    }
    return stayed;
  }

  private static int stays(Optional<SupportOption> leader, Trials drawn, FactView view) {
    boolean stays =
        leader
            .map(option -> drawn.leads(view, option))
            .orElseGet(() -> drawn.leading(view).leader().isEmpty());
    return stays ? 1 : 0;
  }
}
