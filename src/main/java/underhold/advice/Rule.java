package underhold.advice;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import underhold.site.FactDictionary;
import underhold.site.FactView;

/**
 * A rule as read from its file.
 *
 * @param id unique in the pack
 * @param sentence its name: the rule in one sentence
 * @param phase when it is asked
 * @param basis what it rests on
 * @param citations the places it cites, in the order of its header
 * @param because the reason, with {@code {fact}} and {@code {limit:name}} to be filled in
 * @param cause the cause it speaks of; one cause counts once for each option
 * @param hold whether the option waits while the rule is open
 * @param conditions all must hold
 * @param action what it states
 * @param file the file it stands in
 * @param line the line of its name
 */
public record Rule(
    String id,
    String sentence,
    Phase phase,
    Basis basis,
    List<Citation> citations,
    String because,
    String cause,
    Hold hold,
    List<Condition> conditions,
    Action action,
    String file,
    int line) {
  public Rule {
    citations = List.copyOf(citations);
    conditions = List.copyOf(conditions);
  }

  /** When a rule is asked. */
  public enum Phase {
    /** Facts that follow from others. */
    DERIVE,
    /** What speaks for and against the options. */
    SCREEN,
    /** What the quick sizing of the options says. */
    CONFIRM,
    /** What follows once it is known which options are left. */
    SETTLE,
    /** What two zones of a site do to each other, once a method is chosen for each. */
    SCHEME;

    /** The word in a rule's agenda-group. */
    String word() {
      return name().toLowerCase(Locale.ROOT);
    }

    /** Refuses a view of one zone where two are read, and the other way round. */
    void mustRead(FactView view) {
      if ((view.dictionary() == FactDictionary.pairs()) != (this == SCHEME)) {
        throw new IllegalArgumentException("the phase " + word() + " does not read such a view");
      }
    }
  }

  /** Whether an option waits while a rule that would rule it out is still open. */
  public enum Hold {
    NEVER,
    /** While at least one condition is known to hold and none is known to fail. */
    PARTLY,
    /** While no condition is known to fail. */
    ALWAYS
  }

  /** A source and the place in it. */
  public record Citation(String key, String place) {}

  /**
   * What a rule states.
   *
   * @param effect the kind of finding
   * @param options the options it concerns; empty where it concerns whichever is chosen, or a fact
   * @param strength how much it counts; null for rule-outs and derived facts
   * @param fact the fact derived; null unless it derives one
   * @param value the value derived, or the order that a rule between zones asks for; else null
   */
  public record Action(
      Effect effect,
      List<SupportOption> options,
      @Nullable Strength strength,
      @Nullable String fact,
      @Nullable String value) {
    public Action {
      options = List.copyOf(options);
    }
  }

  public Effect effect() {
    return action.effect();
  }

  /** Whether it concerns the option: named, or any option at all. */
  public boolean concerns(SupportOption option) {
    return action.options().isEmpty() || action.options().contains(option);
  }

  /** The same rule with other conditions. */
  Rule with(List<Condition> others) {
    return new Rule(
        id, sentence, phase, basis, citations, because, cause, hold, others, action, file, line);
  }

  /** The facts its conditions read. */
  public Set<String> facts() {
    Set<String> facts = new LinkedHashSet<>();
    conditions.forEach(condition -> facts.add(condition.fact()));
    return facts;
  }

  /** Whether all conditions hold, one fails, or it is open. */
  public Truth holds(FactView view) {
    Truth truth = Truth.TRUE;
    for (Condition condition : conditions) {
      switch (condition.holds(view)) {
        case FALSE -> {
          return Truth.FALSE;
        }
        case OPEN -> truth = Truth.OPEN;
        case TRUE -> {}
      }
    }
    return truth;
  }
}
