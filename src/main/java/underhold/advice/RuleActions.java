package underhold.advice;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import underhold.site.FactDefinition;
import underhold.site.FactDictionary;

/** Reads what a rule states: the verb, and the options, strength or value it is given. */
final class RuleActions {
  private static final String ANY = "any";
  private static final String PAIR = "pair";

  private RuleActions() {}

  static Rule.Action read(
      RuleDraft draft, Rule.Phase phase, FactDictionary dictionary, List<String> wrong) {
    Effect effect = effect(draft.verb(), wrong);
    if ((effect == Effect.DERIVE) != (phase == Rule.Phase.DERIVE)) {
      wrong.add("rules of the phase derive derive facts, and no others do");
    }
    int wanted = effect == Effect.RULE_OUT || effect == Effect.REFER ? 1 : 2;
    List<String> arguments = draft.arguments();
    if (arguments.size() != wanted) {
      wrong.add(
          "findings." + effect.verb() + " takes " + wanted + " texts, not " + arguments.size());
      return new Rule.Action(effect, List.of(), null, null, null);
    }
    if (phase == Rule.Phase.SCHEME) {
      return between(effect, arguments, wrong);
    }
    return switch (effect) {
      case DERIVE -> derive(arguments.get(0), arguments.get(1), dictionary, wrong);
      case RULE_OUT ->
          new Rule.Action(effect, options(arguments.get(0), false, wrong), null, null, null);
      case REFER ->
          new Rule.Action(
              effect, List.of(SupportOption.REFER), strength(arguments.get(0), wrong), null, null);
      case FOR, AGAINST, REQUIRE, CAUTION ->
          new Rule.Action(
              effect,
              options(arguments.get(0), !effect.scores(), wrong),
              strength(arguments.get(1), wrong),
              null,
              null);
    };
  }

  /** A rule between zones speaks of the pair, or of the order in which their stages come. */
  private static Rule.Action between(Effect effect, List<String> arguments, List<String> wrong) {
    String subject = arguments.get(0);
    boolean scored = effect != Effect.RULE_OUT;
    if (effect == Effect.REFER) {
      wrong.add("a rule between zones does not refer: it rules out, speaks, requires or cautions");
      return new Rule.Action(effect, List.of(), null, null, null);
    }
    if (effect == Effect.REQUIRE) {
      if (PairOrder.find(subject).isEmpty()) {
        wrong.add(
            "a rule between zones requires an order ("
                + String.join(", ", PairOrder.words())
                + "), not "
                + Texts.shorten(subject));
      }
      return new Rule.Action(effect, List.of(), strength(arguments.get(1), wrong), null, subject);
    }
    if (!subject.equals(PAIR)) {
      wrong.add("a rule between zones speaks of the \"pair\", not " + Texts.shorten(subject));
    }
    return new Rule.Action(
        effect, List.of(), scored ? strength(arguments.get(1), wrong) : null, null, null);
  }

  private static Effect effect(String verb, List<String> wrong) {
    for (Effect effect : Effect.values()) {
      if (effect.verb().equals(verb)) {
        return effect;
      }
    }
    wrong.add("there is no action findings." + Texts.shorten(verb));
    return Effect.CAUTION;
  }

  private static Rule.Action derive(
      String fact, String value, FactDictionary dictionary, List<String> wrong) {
    Optional<FactDefinition> definition = dictionary.find(fact);
    if (definition.isEmpty()) {
      wrong.add("there is no fact " + Texts.shorten(fact) + " to derive");
    } else if (definition.get().kind().isNumber()) {
      wrong.add(fact + " is an amount; rules derive words only");
    } else if (ProgramFacts.makes(definition.get())) {
      wrong.add(fact + " is made by the program; no rule derives it");
    } else if (definition.get().allowed(value).isEmpty()) {
      wrong.add(fact + " has no value " + Texts.shorten(value));
    }
    return new Rule.Action(Effect.DERIVE, List.of(), null, fact, value);
  }

  private static List<SupportOption> options(String text, boolean anyAllowed, List<String> wrong) {
    if (text.equals(ANY)) {
      if (!anyAllowed) {
        wrong.add("only a require or a caution may concern any option");
      }
      return List.of();
    }
    List<SupportOption> options = new ArrayList<>();
    for (String part : text.split(",", -1)) {
      Optional<SupportOption> option = SupportOption.find(part.strip());
      if (option.isEmpty()) {
        wrong.add(
            "there is no option "
                + Texts.shorten(part.strip())
                + "; options are "
                + String.join(", ", SupportOption.ids()));
      } else if (options.contains(option.get())) {
        wrong.add("names the option " + option.get().id() + " twice");
      } else {
        options.add(option.get());
      }
    }
    return options;
  }

  private static Strength strength(String word, List<String> wrong) {
    Optional<Strength> strength = Strength.find(word);
    if (strength.isEmpty()) {
      wrong.add("a strength is decisive, major, moderate or minor, not " + Texts.shorten(word));
    }
    return strength.orElse(Strength.MINOR);
  }
}
