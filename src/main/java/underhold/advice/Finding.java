package underhold.advice;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import underhold.site.Fact;
import underhold.site.FactView;

/**
 * What a rule stated of a zone: the rule and the facts as they were when it fired. Its words are
 * made when they are first asked for, since many zones are judged of which few are told. Two
 * findings are the same where they say the same.
 */
public final class Finding {
  /** A rule and what it fired on. */
  private record Fired(RuleWords words, FactView view) {}

  private final Rule rule;
  private final @Nullable Fired fired;
  private final boolean assumed;
  private @Nullable String reason;
  private @Nullable List<Matched> facts;

  private Finding(Rule rule, @Nullable Fired fired, boolean assumed) {
    this.rule = rule;
    this.fired = fired;
    this.assumed = assumed;
  }

  /** What a rule states of the facts of a view. */
  static Finding of(RuleWords words, FactView view, boolean assumed) {
    return new Finding(words.rule(), new Fired(words, view), assumed);
  }

  /** That a rule fired, without words: for rankings of which nothing is told. */
  static Finding wordless(Rule rule) {
    return new Finding(rule, null, false);
  }

  /** The rule. */
  public Rule rule() {
    return rule;
  }

  /** Why, with the site's own numbers. */
  public String reason() {
    String made = reason;
    if (made == null) {
      made = fired == null ? "" : Texts.sentence(fired.words.reason(fired.view));
      reason = made;
    }
    return made;
  }

  /** Its sources in words; empty where it rests on none. */
  public String source() {
    return fired == null ? "" : fired.words.source();
  }

  /** The facts it matched. */
  public List<Matched> facts() {
    List<Matched> made = facts;
    if (made == null) {
      made = fired == null ? List.of() : matched(fired);
      facts = made;
    }
    return made;
  }

  private static List<Matched> matched(Fired fired) {
    List<Matched> facts = new ArrayList<>(fired.words.read().size());
    for (int index : fired.words.read()) {
      Fact fact = fired.view.fact(index);
      facts.add(
          new Matched(
              fact.name(), fact.definition().label(), fact.text(), fact.origin(), fact.how()));
    }
    return List.copyOf(facts);
  }

  /** The limits it matched. */
  public List<MatchedLimit> limits() {
    return fired == null ? List.of() : fired.words.limits();
  }

  /** Whether it rests on an assumed fact; then it warns and asks, and never scores. */
  public boolean assumed() {
    return assumed;
  }

  /** What it does. */
  public Effect effect() {
    return rule.effect();
  }

  /** The strength, where the effect has one. */
  public Optional<Strength> strength() {
    return Optional.ofNullable(rule.action().strength());
  }

  /** Whether it counts for or against that option. */
  public boolean scoresFor(SupportOption option) {
    return !assumed && effect().scores() && rule.concerns(option);
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return this == other
        || other instanceof Finding finding
            && assumed == finding.assumed
            && rule.equals(finding.rule)
            && reason().equals(finding.reason())
            && source().equals(finding.source())
            && facts().equals(finding.facts())
            && limits().equals(finding.limits());
  }

  @Override
  public int hashCode() {
    return Objects.hash(rule.id(), assumed);
  }

  @Override
  public String toString() {
    return rule.id() + (assumed ? " (assumed): " : ": ") + reason() + " " + facts() + limits();
  }
}
