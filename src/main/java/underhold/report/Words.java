package underhold.report;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import underhold.advice.Basis;
import underhold.advice.Effect;
import underhold.advice.Finding;
import underhold.advice.OptionAdvice;
import underhold.advice.Rule;
import underhold.advice.Standing;
import underhold.advice.SupportOption;
import underhold.consult.ZoneAdvice;
import underhold.site.FactDefinition;
import underhold.site.FactView;
import underhold.site.Origin;

/** Small phrases that the views share. */
public final class Words {
  private Words() {}

  /** With a capital first. */
  public static String sentence(String text) {
    return text.isEmpty() ? text : Character.toUpperCase(text.charAt(0)) + text.substring(1);
  }

  /** {@code a, b and c}. */
  public static String list(List<String> items) {
    if (items.size() < 2) {
      return String.join("", items);
    }
    int last = items.size() - 1;
    return String.join(", ", items.subList(0, last)) + " and " + items.get(last);
  }

  /** {@code a, b or c}. */
  public static String either(List<String> items) {
    if (items.size() < 2) {
      return String.join("", items);
    }
    int last = items.size() - 1;
    return String.join(", ", items.subList(0, last)) + " or " + items.get(last);
  }

  /** {@code 1 check} or {@code 3 checks}. */
  public static String count(int number, String singular, String plural) {
    return number + " " + (number == 1 ? singular : plural);
  }

  /** Points with their sign. */
  public static String score(int points) {
    return points > 0 ? "+" + points : String.valueOf(points);
  }

  /** Strength, basis and rule of a finding, in brackets. */
  public static String tag(Finding finding, boolean counted) {
    Stream.Builder<String> parts = Stream.builder();
    finding.strength().ifPresent(strength -> parts.add(strength.word()));
    Basis basis = finding.rule().basis();
    parts.add(basis.notice());
    boolean recalledLimit =
        finding.limits().stream().anyMatch(limit -> limit.basis() == Basis.FROM_MEMORY);
    if (recalledLimit && basis != Basis.FROM_MEMORY) {
      parts.add("its limit " + Basis.FROM_MEMORY.notice());
    }
    if (finding.limits().stream().anyMatch(limit -> limit.basis() == Basis.ON_TRIAL)) {
      parts.add("its limit " + Basis.ON_TRIAL.notice());
    }
    parts.add(finding.rule().id());
    if (!counted) {
      parts.add("not counted: a stronger one speaks of the same cause");
    }
    return "[" + String.join(", ", parts.build().toList()) + "]";
  }

  /** The assumed facts that a finding rests on; empty where it rests on none. */
  public static String assumptions(Finding finding) {
    List<String> assumed =
        finding.facts().stream()
            .filter(fact -> fact.origin() == Origin.ASSUMED)
            .map(fact -> fact.label() + " " + fact.value())
            .toList();
    if (assumed.isEmpty()) {
      return finding.assumed() ? "rests on assumed facts" : "";
    }
    return "assuming " + list(assumed);
  }

  /** Whether a finding counts in the score of an option. */
  public static boolean counted(OptionAdvice advice, Finding finding) {
    return finding.effect().scores() && !finding.assumed() && !advice.uncounted().contains(finding);
  }

  /** What an effect means for an option, in one word or two. */
  public static String verb(Effect effect) {
    return switch (effect) {
      case RULE_OUT -> "rules out";
      case AGAINST -> "against";
      case FOR, REFER -> "for";
      case REQUIRE -> "requires";
      case CAUTION -> "caution";
      case DERIVE -> "derives";
    };
  }

  static Tint tint(Effect effect) {
    return switch (effect) {
      case RULE_OUT, AGAINST -> Tint.BAD;
      case FOR, REFER -> Tint.GOOD;
      case REQUIRE, CAUTION -> Tint.OPEN;
      case DERIVE -> Tint.NONE;
    };
  }

  static Tint tint(Standing standing) {
    return switch (standing) {
      case LEADS -> Tint.GOOD;
      case WORKS, WORKS_IF -> Tint.NONE;
      case HELD -> Tint.OPEN;
      case RULED_OUT -> Tint.BAD;
    };
  }

  /** The options a finding concerns, in words. */
  public static String concerns(Finding finding, List<SupportOption> inPlay) {
    return finding.rule().action().options().isEmpty()
        ? "whichever option is chosen"
        : list(inPlay.stream().map(SupportOption::label).toList());
  }

  /** The questions of the facts named. */
  public static List<String> questions(List<String> names, FactView view) {
    List<String> questions = new ArrayList<>();
    for (String name : names) {
      FactDefinition definition = view.dictionary().require(name);
      questions.add(definition.question());
    }
    return questions;
  }

  /** What a rule speaks about: options, a fact, or whichever option is chosen. */
  public static String about(Rule rule) {
    if (rule.action().fact() != null) {
      return " " + rule.action().fact() + " " + rule.action().value();
    }
    if (rule.phase() == Rule.Phase.SCHEME) {
      String order = rule.action().value();
      return " " + (order == null ? "the two methods together" : "the order " + order);
    }
    List<String> ids = rule.action().options().stream().map(SupportOption::id).toList();
    return " " + (ids.isEmpty() ? "any option" : list(ids));
  }

  /** What would speak of an option if assumed facts were true. */
  public static List<Finding> assumed(ZoneAdvice zone, SupportOption option) {
    return zone.screening().assumed().stream()
        .filter(finding -> finding.rule().concerns(option))
        .filter(f -> f.effect().scores() || f.effect() == Effect.RULE_OUT)
        .toList();
  }

  /** The way back of an option ruled out, without the rule's name, which stands beside it. */
  public static String wayBack(String text) {
    int colon = text.indexOf(": ");
    return sentence(colon < 0 ? text : text.substring(colon + 2));
  }
}
