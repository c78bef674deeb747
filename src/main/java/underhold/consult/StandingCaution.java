package underhold.consult;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import underhold.advice.Effect;
import underhold.advice.OptionAdvice;
import underhold.sizing.Basis;
import underhold.sizing.Caution;
import underhold.sizing.Phrase;
import underhold.sizing.Source;

/** Warns on a sheet that the option is ruled out or held in this zone, with the rules. */
final class StandingCaution {
  private StandingCaution() {}

  static Optional<Caution> of(OptionAdvice advice) {
    return switch (advice.standing()) {
      case RULED_OUT -> Optional.of(ruledOut(advice));
      case HELD -> Optional.of(held(advice));
      case LEADS, WORKS, WORKS_IF -> Optional.empty();
    };
  }

  private static Caution ruledOut(OptionAdvice advice) {
    List<String> reasons =
        advice.findings(Effect.RULE_OUT).stream()
            .map(finding -> finding.reason() + " [" + finding.rule().id() + "]")
            .toList();
    return caution(
        "ruled out here",
        advice.option().label()
            + " are ruled out in this zone. The sheet is for study only; do not build from it. "
            + String.join(" ", reasons));
  }

  private static Caution held(OptionAdvice advice) {
    String open =
        advice.holds().stream()
            .map(hold -> hold.explanation() + " [" + hold.rule().id() + "]")
            .collect(Collectors.joining(" "));
    return caution(
        "held here",
        advice.option().label()
            + " are held in this zone until safety questions are answered; do not build from this sheet before. "
            + open);
  }

  private static Caution caution(String hazard, String words) {
    String plain = words.replace('{', '(').replace('}', ')'); // braces stand for amounts
    String sentence = Character.toUpperCase(plain.charAt(0)) + plain.substring(1);
    return new Caution(
        hazard,
        Phrase.of(sentence),
        "the engineer of record",
        new Source("the rules of this advice", Basis.JUDGEMENT));
  }
}
