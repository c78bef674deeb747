package underhold.review.saved;

import java.util.List;
import java.util.Optional;
import underhold.advice.Finding;
import underhold.advice.Strength;
import underhold.advice.SupportOption;

/**
 * What a rule stated of a zone.
 *
 * @param rule its id, unique among the findings of the zone
 * @param effect what it does
 * @param strength how much it counts; left out where the effect has none
 * @param options the options it concerns; empty where it concerns any, or a fact
 * @param because why, with the site's own numbers
 * @param source its sources in words; may be empty
 * @param basis what they are worth
 * @param facts the facts it matched
 * @param limits the limits it matched
 * @param assumed whether it rests on assumed facts; then it never scores
 * @param notCountedFor options for which a stronger finding of the same cause counts instead
 */
public record SavedFinding(
    String rule,
    String effect,
    Optional<String> strength,
    List<String> options,
    String because,
    String source,
    String basis,
    List<SavedMatch> facts,
    List<SavedMatch> limits,
    boolean assumed,
    List<String> notCountedFor) {
  public SavedFinding {
    options = List.copyOf(options);
    facts = List.copyOf(facts);
    limits = List.copyOf(limits);
    notCountedFor = List.copyOf(notCountedFor);
  }

  static SavedFinding of(Finding finding, List<String> notCountedFor) {
    return new SavedFinding(
        finding.rule().id(),
        finding.effect().word(),
        finding.strength().map(Strength::word),
        finding.rule().action().options().stream().map(SupportOption::id).toList(),
        finding.reason(),
        finding.source(),
        finding.rule().basis().word(),
        finding.facts().stream()
            .map(f -> new SavedMatch(f.name(), f.label(), f.value(), f.origin().word()))
            .toList(),
        finding.limits().stream()
            .map(l -> new SavedMatch(l.name(), l.label(), l.value(), l.basis().word()))
            .toList(),
        finding.assumed(),
        notCountedFor);
  }

  /** Effect, strength, options and reason in one line. */
  public String line() {
    return head() + ": " + because;
  }

  /** Effect, strength and options, and whether it counts. */
  public String head() {
    return effect
        + (options.isEmpty() ? "" : " " + String.join(", ", options))
        + strength.map(word -> ", " + word).orElse("")
        + (assumed ? ", only on assumed facts" : "")
        + (notCountedFor.isEmpty() ? "" : ", not counted for " + String.join(", ", notCountedFor));
  }
}
