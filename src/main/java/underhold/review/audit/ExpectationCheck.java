package underhold.review.audit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import underhold.site.FactValue;
import underhold.site.Site;

/**
 * What engineers expect when one fact gets worse, held against the rules: proved cause by cause
 * where that can be, else tried on a covering array of the facts that matter and on sites. Only
 * what the rules of the screening say is looked at, not what sheets find.
 */
final class ExpectationCheck implements Analysis {
  static final String NAME = "expectations";
  private static final int SHARE = 20;

  @Override
  public String name() {
    return NAME;
  }

  @Override
  public Section run(Bench bench) {
    Section.Gathering found =
        new Section.Gathering(
            NAME, "Does anything gain by getting worse, against what engineers expect?");
    for (String problem : bench.notes().problems()) {
      found.defect(Defect.proved(NAME, List.of(), problem));
    }
    List<String> proved = new ArrayList<>();
    List<String> tried = new ArrayList<>();
    for (Tendency tendency : bench.notes().tendencies()) {
      Ladder ladder = new Ladder(bench, tendency);
      TendencyProof proof = new TendencyProof(bench, ladder, tendency);
      boolean holds = proof.holds();
      found.tried(proof.combinations());
      if (holds) {
        found.result(Method.EXHAUSTIVE);
        proved.add(tendency.id());
        continue;
      }
      Method by = proof.covering() ? Method.COVERING : Method.SAMPLED;
      found.result(by);
      Optional<Ladder.Rise> rise = search(bench, ladder, proof, found);
      if (rise.isPresent()) {
        found.defect(
            Defect.shown(
                NAME,
                List.of(tendency.id()),
                tendency.id() + " fails (" + tendency.sentence() + "): " + rise.get().text() + ".",
                by,
                rise.get().to()));
      } else {
        tried.add(tendency.id());
      }
    }
    found.note("Proved cause by cause over every combination: " + list(proved) + ".");
    found.note("Not proved, and no contrary site found: " + list(tried) + ".");
    return found.done();
  }

  private static String list(List<String> names) {
    return names.isEmpty() ? "none" : String.join(", ", names);
  }

  private static Optional<Ladder.Rise> search(
      Bench bench, Ladder ladder, TendencyProof proof, Section.Gathering found) {
    Map<String, FactSet> given = ladder.given();
    for (Map<String, FactValue> values : proof.contrary()) {
      Optional<Ladder.Rise> rise = direct(bench, ladder, values, given);
      found.tried(1);
      if (rise.isPresent()) {
        return rise;
      }
    }
    RandomSites sites = bench.randomSites(8);
    int count = Math.max(1, bench.effort().tries() / SHARE);
    for (int i = 0; i < count; i++) {
      Optional<Ladder.Rise> rise = ladder.rise(sites.next(given));
      found.tried(1);
      if (rise.isPresent()) {
        return rise;
      }
    }
    return Optional.empty();
  }

  /** The combination itself as a site, as far as it can be stated. */
  private static Optional<Ladder.Rise> direct(
      Bench bench, Ladder ladder, Map<String, FactValue> values, Map<String, FactSet> given) {
    Map<String, FactValue> stated = new LinkedHashMap<>();
    stated.put("loadPattern", new FactValue.Choice("continuous"));
    stated.put("excavationPosition", new FactValue.Choice("beside"));
    Random random = new Random(bench.effort().seed());
    given.forEach(
        (name, set) ->
            bench
                .trying()
                .draw(bench.dictionary().require(name), set, random)
                .ifPresent(value -> stated.put(name, value)));
    values.forEach(
        (name, value) -> {
          if (!bench.dictionary().require(name).derived()) {
            stated.put(name, value);
          }
        });
    Site site = Trying.site("contrary site", stated);
    return ladder.rise(site);
  }
}
