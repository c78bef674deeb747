package underhold.classroom;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import underhold.advice.Finding;
import underhold.advice.OptionAdvice;
import underhold.advice.Rule;
import underhold.advice.RulePack;
import underhold.advice.SupportOption;
import underhold.consult.ZoneAdvice;

/**
 * What the rules say of a zone as one student knew it.
 *
 * @param pack the rules
 * @param advice the advice
 * @param turning the known facts whose change turns the answer, with what it would turn to
 * @param speaking the known facts that speak in the rules for, against and about the leaders
 * @param open the facts not known that turn the answer, free what is held or are asked next, with
 *     the reason
 */
public record Key(
    RulePack pack,
    ZoneAdvice advice,
    Map<String, String> turning,
    Map<String, Finding> speaking,
    Map<String, String> open) {
  public Key {
    turning = Collections.unmodifiableMap(new LinkedHashMap<>(turning));
    speaking = Collections.unmodifiableMap(new LinkedHashMap<>(speaking));
    open = Collections.unmodifiableMap(new LinkedHashMap<>(open));
  }

  /** The option that leads; none where there is no clear choice. */
  public Optional<OptionAdvice> leader() {
    return advice.ranking().leader();
  }

  /** The id of the leader, or the word for none. */
  public String leaderId() {
    return leader().map(found -> found.option().id()).orElse(Expected.NO_METHOD);
  }

  /** Whether a method leads or is tied with the one that does. */
  public boolean leads(String method) {
    return leader().map(found -> found.option().id()).filter(method::equals).isPresent()
        || advice.ranking().tiedWithLeader().stream()
            .anyMatch(tied -> tied.option().id().equals(method));
  }

  /** Whether a reason counts like a deciding fact: nothing leads, or no single fact turns it. */
  public boolean reasonsDecide() {
    return leader().isEmpty() || turning.isEmpty();
  }

  /** Held options that could lead once what holds them is answered. */
  public List<OptionAdvice> waiting() {
    return advice.ranking().heldContenders();
  }

  /** How a method stands; empty for no method. */
  public Optional<OptionAdvice> of(String method) {
    return SupportOption.find(method).map(advice.ranking()::of);
  }

  /** A rule with its source and what that is worth. */
  public String cited(Rule rule) {
    String basis = rule.basis().notice();
    String source = pack.cite(rule.citations());
    return "[" + rule.id() + ", " + (source.isEmpty() ? basis : source + ", " + basis) + "]";
  }

  /** What naming a method, or none, is worth by itself, and why. */
  public MarkLine worth(String method) {
    return AnswerMarker.choice(this, method);
  }

  /** The conditions that hold, by their words: of a method, or of whatever is in play. */
  public Map<String, Finding> conditions(String method) {
    return told(method, advice.conditions(), ConditionWords::word);
  }

  /** The cautions that hold, by the word of the danger: of a method, or of whatever is in play. */
  public Map<String, Finding> dangers(String method) {
    return told(method, advice.cautions(), rule -> DangerWords.word(rule.cause()));
  }

  private static Map<String, Finding> told(
      String method, List<Finding> findings, Function<Rule, String> word) {
    Map<String, Finding> found = new LinkedHashMap<>();
    Optional<SupportOption> option = SupportOption.find(method);
    for (Finding finding : findings) {
      if (option.map(finding.rule()::concerns).orElse(true)) {
        found.putIfAbsent(word.apply(finding.rule()), finding);
      }
    }
    return found;
  }
}
