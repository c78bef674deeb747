package underhold.review.saved;

import java.util.Arrays;
import java.util.List;
import java.util.TreeMap;
import underhold.advice.RulePack;
import underhold.advice.Strength;
import underhold.advice.SupportOption;
import underhold.review.file.Fingerprint;

/**
 * A rule pack in short.
 *
 * @param name its name
 * @param version its version
 * @param fingerprint of its files
 * @param strengths what each strength counts
 * @param tie the gap in points up to which options are tied
 * @param costOrder the order of options of equal points
 * @param sources the beginning of the fingerprint of its bibliography
 * @param criteria the same of its criteria
 * @param limits its limits
 * @param rules its rules
 */
public record PackDigest(
    String name,
    String version,
    String fingerprint,
    List<Points> strengths,
    int tie,
    List<String> costOrder,
    String sources,
    String criteria,
    List<LimitDigest> limits,
    List<RuleDigest> rules) {
  public PackDigest {
    strengths = List.copyOf(strengths);
    costOrder = List.copyOf(costOrder);
    limits = List.copyOf(limits);
    rules = List.copyOf(rules);
  }

  /** What a strength counts. */
  public record Points(String strength, int points) {}

  /** A pack in short. */
  public static PackDigest of(RulePack pack) {
    RulePack.Weights weights = pack.weights();
    return new PackDigest(
        pack.name(),
        pack.version(),
        pack.fingerprint(),
        Arrays.stream(Strength.values())
            .map(strength -> new Points(strength.word(), weights.of(strength)))
            .toList(),
        weights.tie(),
        weights.costOrder().stream().map(SupportOption::id).toList(),
        Fingerprint.brief(new TreeMap<>(pack.sources()).toString()),
        Fingerprint.brief(
            new TreeMap<>(pack.criteria().meanings()).toString()
                + new TreeMap<>(pack.criteria().byCause())),
        pack.limits().all().stream().map(LimitDigest::of).toList(),
        pack.all().stream().map(RuleDigest::of).toList());
  }

  /** Name, version and the beginning of the fingerprint. */
  public String line() {
    return name + " " + version + ", " + Fingerprint.start(fingerprint);
  }
}
