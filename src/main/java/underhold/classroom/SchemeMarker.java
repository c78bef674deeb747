package underhold.classroom;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import underhold.advice.Effect;
import underhold.advice.OptionAdvice;
import underhold.advice.PairOrder;
import underhold.consult.scheme.Combination;
import underhold.consult.scheme.OrderWanted;
import underhold.consult.scheme.PairFinding;
import underhold.consult.scheme.SchemeDesk;

/** Marks the methods of all zones together by what the rules between zones say of them. */
final class SchemeMarker {
  private static final int FAIR = 2;
  private static final int MOST_SENTENCES = 3;

  private final SchemeAnswer answer;
  private final SchemeKey key;
  private final SchemeDesk.Named named;
  private final List<String> words = new ArrayList<>();

  private SchemeMarker(SchemeAnswer answer, SchemeKey key) {
    this.answer = answer;
    this.key = key;
    this.named = key.named(answer.methods());
  }

  static Mark mark(SchemeAnswer answer, SchemeKey key) {
    SchemeMarker marker = new SchemeMarker(answer, key);
    List<MarkLine> lines =
        key.best().isEmpty()
            ? List.of(new MarkLine("methods together", 0, 0, "not marked: " + key.whyNone()))
            : List.of(marker.methods(), marker.meeting(), marker.order());
    return new Mark(
        answer.student(),
        answer.of(),
        answer.stage(),
        SchemeAnswer.ABOUT,
        lines,
        marker.words.stream().limit(MOST_SENTENCES).toList());
  }

  private MarkLine methods() {
    Combination best = key.best().orElseThrow();
    best();
    for (Map.Entry<String, String> one : answer.methods().entrySet()) {
      Optional<OptionAdvice> option = key.of(one.getKey(), one.getValue());
      if (option.filter(SchemeKey::ruledOut).isPresent()) {
        String why = Cited.strongest(option.get(), Effect.RULE_OUT).map(Cited::words).orElse("");
        return methods(0, one.getKey() + ": " + one.getValue() + " is ruled out there. " + why);
      }
    }
    Optional<PairFinding> out =
        named.findings().stream().filter(one -> one.effect() == Effect.RULE_OUT).findFirst();
    if (out.isPresent()) {
      return methods(0, "they cannot stand side by side. " + cited(out.get()));
    }
    if (named.stands().isEmpty()) {
      return methods(0, "the orders of work that they need contradict each other");
    }
    boolean contend =
        answer.methods().entrySet().stream()
            .allMatch(
                one ->
                    key.of(one.getKey(), one.getValue()).filter(SchemeKey::contends).isPresent());
    Combination own = named.stands().get();
    if (same(own, best)) {
      return methods(Rubric.SCHEME, "they are what the rules put first together");
    }
    int gap = best.points() - own.points();
    if (contend && gap <= key.consultation().pack().weights().tie()) {
      return methods(Rubric.SCHEME, "they tie with the first, " + points(own, best));
    }
    return contend
        ? methods(FAIR, "each works in its zone, " + points(own, best))
        : methods(1, "they may stand, but not every one has more for it than against it");
  }

  private static String points(Combination own, Combination best) {
    return own.points() + " points together against " + best.points();
  }

  private static boolean same(Combination own, Combination best) {
    return own.zones().stream()
        .allMatch(zone -> best.of(zone.name()).method().equals(zone.method()));
  }

  /** What comes first and what speaks most of its pairs. */
  private void best() {
    Combination best = key.best().orElseThrow();
    words.add("First together: " + said(best) + ".");
    strongest(best.findings(), Effect.FOR).map(SchemeMarker::cited).ifPresent(words::add);
    if (named.stands().filter(own -> same(own, best)).isEmpty()) {
      Stream.of(Effect.RULE_OUT, Effect.AGAINST)
          .map(effect -> strongest(named.findings(), effect))
          .flatMap(Optional::stream)
          .findFirst()
          .ifPresent(found -> words.add("Your choice: " + cited(found)));
    }
  }

  private static Optional<PairFinding> strongest(List<PairFinding> findings, Effect effect) {
    return findings.stream()
        .filter(one -> one.effect() == effect)
        .min(Comparator.comparing(one -> one.finding().strength().map(Enum::ordinal).orElse(-1)));
  }

  /** The methods of a combination, zone by zone. */
  static String said(Combination combination) {
    return combination.zones().stream()
        .map(zone -> zone.name() + ", " + zone.method().map(one -> one.label()).orElse("none yet"))
        .collect(Collectors.joining("; "));
  }

  private MarkLine meeting() {
    Combination best = key.best().orElseThrow();
    Map<String, PairFinding> facts = new LinkedHashMap<>(SchemeKey.meeting(best.findings()));
    SchemeKey.meeting(named.findings()).forEach(facts::putIfAbsent);
    int needed = Math.min(Rubric.INTERFACE, facts.size());
    List<String> good = first(answer.because()).filter(facts::containsKey).toList();
    if (needed == 0) {
      return line(
          "where they meet", 1, Rubric.INTERFACE, "no rule between the zones rests on a fact here");
    }
    if (good.size() < needed) {
      facts.entrySet().stream()
          .filter(entry -> !good.contains(entry.getKey()))
          .findFirst()
          .ifPresent(
              entry -> words.add("Not named: " + entry.getKey() + ". " + cited(entry.getValue())));
    }
    return line(
        "where they meet",
        (double) good.size() / needed,
        Rubric.INTERFACE,
        good.size()
            + " of those named "
            + (good.size() == 1 ? "stands" : "stand")
            + " in the rules between the zones; "
            + needed
            + (needed == 1 ? " gives" : " give")
            + " full points");
  }

  private MarkLine order() {
    List<OrderWanted> wanted = orders();
    List<SchemeAnswer.Wanted> typed =
        answer.order().stream().distinct().limit(Rubric.MOST_NAMED).toList();
    for (SchemeAnswer.Wanted one : typed) {
      Optional<OrderWanted> turned =
          wanted.stream()
              .filter(rule -> is(rule, one.second(), one.order(), one.first()))
              .findFirst();
      if (turned.isPresent() && !asked(wanted, one)) {
        words.add(0, Words.first(turned.get().sentence()) + " [" + turned.get().ruleId() + "].");
        return line(
            "order between zones",
            0,
            Rubric.ORDER,
            one
                + " is the wrong way round: "
                + turned.get().sentence()
                + " ["
                + turned.get().ruleId()
                + "]");
      }
    }
    int needed =
        (int) Math.min(Rubric.ORDER, wanted.stream().filter(one -> !one.assumed()).count());
    if (needed == 0) {
      return line("order between zones", 1, Rubric.ORDER, "no rule asks for one here");
    }
    long good = typed.stream().filter(one -> asked(wanted, one)).count();
    wanted.stream()
        .filter(
            rule ->
                typed.stream().noneMatch(one -> is(rule, one.first(), one.order(), one.second())))
        .findFirst()
        .filter(rule -> good < needed)
        .ifPresent(rule -> words.add(Words.first(rule.sentence()) + " [" + rule.ruleId() + "]."));
    return line(
        "order between zones",
        (double) good / needed,
        Rubric.ORDER,
        good
            + " named of the "
            + wanted.size()
            + " for which the rules ask; "
            + needed
            + (needed == 1 ? " gives" : " give")
            + " full points");
  }

  /** The orders of the student's own methods; of the best ones where those cannot stand. */
  private List<OrderWanted> orders() {
    return named.stands().or(key::best).orElseThrow().orders().stream()
        .filter(one -> one.order() != PairOrder.NOT_OPEN_TOGETHER || !one.assumed())
        .toList();
  }

  private static boolean asked(List<OrderWanted> wanted, SchemeAnswer.Wanted one) {
    return wanted.stream()
        .anyMatch(
            rule ->
                is(rule, one.first(), one.order(), one.second())
                    || (rule.order() == PairOrder.NOT_OPEN_TOGETHER
                        && is(rule, one.second(), one.order(), one.first())));
  }

  private static boolean is(OrderWanted rule, String first, String order, String second) {
    return OrderWords.word(rule.order()).equals(order)
        && rule.first().equals(first)
        && rule.second().equals(second);
  }

  private static String cited(PairFinding finding) {
    return Cited.words(finding.finding(), finding.reason());
  }

  private static Stream<String> first(List<String> typed) {
    return typed.stream().distinct().limit(Rubric.MOST_NAMED);
  }

  private static MarkLine methods(int points, String why) {
    return new MarkLine("methods together", points, Rubric.SCHEME, why);
  }

  private static MarkLine line(String part, double share, int of, String why) {
    double halves = Math.floor(2 * Math.min(1, share) * of + 1e-9) / 2;
    return new MarkLine(part, halves, of, why);
  }
}
