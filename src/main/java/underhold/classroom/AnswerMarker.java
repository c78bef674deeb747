package underhold.classroom;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import underhold.advice.Effect;
import underhold.advice.Finding;
import underhold.advice.Hold;
import underhold.advice.OptionAdvice;
import underhold.advice.Standing;
import underhold.site.FactDictionary;

/** Marks one answer by the key of what its student knew. */
final class AnswerMarker {
  private static final int FAIR = 2;
  private static final double HALF = 0.5;

  private final Answer answer;
  private final Key key;
  private final List<String> choiceWords = new ArrayList<>();
  private final List<String> dangerWords = new ArrayList<>();
  private final List<String> conditionWords = new ArrayList<>();
  private final List<String> factWords = new ArrayList<>();

  private AnswerMarker(Answer answer, Key key) {
    this.answer = answer;
    this.key = key;
  }

  /**
   * The mark.
   *
   * @param before the student's last answer at an earlier stage, if any
   * @param fresh the facts of the zone that the student has come to know since
   */
  static Mark mark(Answer answer, Key key, Optional<Answer> before, Set<String> fresh) {
    return new AnswerMarker(answer, key).mark(before, fresh);
  }

  /** What naming a method is worth by itself, no other part of an answer being given. */
  static MarkLine choice(Key key, String method) {
    List<String> none = List.of();
    Answer bare = new Answer("", "", 0, 0, key.advice().name(), method, none, none, none, none);
    return new AnswerMarker(bare, key).choice();
  }

  private Mark mark(Optional<Answer> before, Set<String> fresh) {
    List<MarkLine> lines = new ArrayList<>();
    MarkLine choice = choice();
    lines.add(choice);
    why();
    lines.add(facts());
    lines.add(checks());
    lines.add(
        told(
            "conditions",
            answer.condition(),
            key.conditions(answer.method()),
            Rubric.CONDITIONS,
            conditionWords));
    lines.add(
        told(
            "dangers", answer.danger(), key.dangers(answer.method()), Rubric.DANGERS, dangerWords));
    before.flatMap(last -> changed(last, fresh, choice.points())).ifPresent(lines::add);
    return new Mark(
        answer.student(), answer.of(), answer.stage(), answer.zone(), lines, feedback());
  }

  /**
   * What leads and how the choice stands to it; then what was left out and matters most: a danger,
   * a condition, a fact. Of the others each part names one.
   */
  private List<String> feedback() {
    return Stream.of(choiceWords, dangerWords, conditionWords, factWords)
        .flatMap(List::stream)
        .limit(choiceWords.size() + 1L)
        .toList();
  }

  private MarkLine choice() {
    if (answer.method().equals(Expected.NO_METHOD)) {
      return key.leader().isEmpty()
          ? choice(Rubric.CHOICE, "nothing leads on what was known, and you said so")
          : outranks()
              ? choice(FAIR, "a method leads, but one that is held could pass it: waiting is fair")
              : choice(1, "careful, but the facts you had carry a choice");
    }
    OptionAdvice option = key.of(answer.method()).orElseThrow();
    if (key.leads(answer.method())) {
      return choice(Rubric.CHOICE, option.tied() ? "it ties for the first place" : "it leads");
    }
    return switch (option.standing()) {
      case RULED_OUT -> choice(0, "it is ruled out on what was known");
      case HELD -> held(option);
      default ->
          option.spokenFor() && option.score() > 0
              ? choice(FAIR, "it works, and another has more for it")
              : choice(1, "it is not ruled out, and no more speaks for it than against it");
    };
  }

  /** A held method is a fair answer for who says what it waits for; else it is a guess. */
  private MarkLine held(OptionAdvice option) {
    List<String> waits = option.holds().stream().map(Hold::ask).flatMap(List::stream).toList();
    boolean contender = key.waiting().contains(option);
    boolean asked = named(answer.check()).stream().anyMatch(waits::contains);
    if (contender && asked) {
      return choice(FAIR, "it could lead, and you named what it waits for");
    }
    return choice(
        1,
        contender
            ? "it could lead, but it is held and you do not ask for what it waits for"
            : "it is held until safety questions are answered");
  }

  private boolean outranks() {
    return !key.waiting().isEmpty();
  }

  private static MarkLine choice(double points, String why) {
    return new MarkLine("method", points, Rubric.CHOICE, why);
  }

  /** What leads and why, and why what was named does not. */
  private void why() {
    Optional<OptionAdvice> leader = key.leader();
    Optional<OptionAdvice> waiting = key.waiting().stream().findFirst();
    choiceWords.add(
        leader
            .map(found -> "First: " + found.option().label() + ". " + strongest(found, Effect.FOR))
            .or(() -> waiting.map(held -> "No method leads yet. " + waits(held)))
            .orElse("No method leads: nothing speaks enough for any."));
    key.of(answer.method())
        .filter(named -> !key.leads(answer.method()))
        .filter(named -> leader.isPresent() || !waiting.equals(Optional.of(named)))
        .map(this::against)
        .filter(text -> !text.isBlank())
        .ifPresent(choiceWords::add);
  }

  private String waits(OptionAdvice held) {
    return Words.first(held.option().label()) + " could, but wait. " + hold(held);
  }

  private String against(OptionAdvice named) {
    String label = "Your choice, " + named.option().label() + ": ";
    if (named.standing() == Standing.RULED_OUT) {
      return label + strongest(named, Effect.RULE_OUT);
    }
    if (named.standing() == Standing.HELD) {
      return label + "held. " + hold(named);
    }
    String reason = strongest(named, Effect.AGAINST);
    return label + (reason.isEmpty() ? "nothing speaks for it here." : reason);
  }

  private String hold(OptionAdvice held) {
    return held.holds().stream()
        .findFirst()
        .map(hold -> hold.explanation() + " " + key.cited(hold.rule()))
        .orElse("");
  }

  /** The finding that counts most, with its rule and source. */
  private static String strongest(OptionAdvice option, Effect effect) {
    return Cited.strongest(option, effect)
        .or(() -> option.findings(Effect.REFER).stream().findFirst())
        .map(Cited::words)
        .orElse("");
  }

  private MarkLine facts() {
    List<String> named = named(answer.because());
    List<String> unknown =
        named.stream().filter(fact -> key.advice().view().fact(fact).value() == null).toList();
    List<String> turning = named.stream().filter(key.turning()::containsKey).toList();
    List<String> speaking =
        named.stream()
            .filter(fact -> !turning.contains(fact) && key.speaking().containsKey(fact))
            .toList();
    Set<String> all = new HashSet<>(key.turning().keySet());
    boolean open = key.reasonsDecide();
    if (open) {
      all.addAll(key.speaking().keySet()); // then the reasons weigh like what turns it
    }
    int needed = Math.min(Rubric.FACTS, all.size());
    int full = turning.size() + (open ? speaking.size() : 0);
    double points =
        needed == 0
            ? Rubric.FACTS
            : (double) Rubric.FACTS * full / needed + (open ? 0 : HALF * speaking.size());
    Optional<String> missed = missedFact(turning, full < needed);
    String why =
        turning.size()
            + " of those named "
            + (turning.size() == 1 ? "turns" : "turn")
            + " the answer, "
            + speaking.size()
            + " more "
            + (speaking.size() == 1 ? "stands" : "stand")
            + " in its reasons; "
            + needed
            + (open ? " of either " : " that " + (needed == 1 ? "turns it " : "turn it "))
            + give(needed)
            + " full points"
            + such(missed.map(AnswerMarker::label))
            + (unknown.isEmpty() ? "" : "; not known to you then: " + String.join(", ", unknown));
    return line("deciding facts", points, Rubric.FACTS, why);
  }

  private Optional<String> missedFact(List<String> turning, boolean missed) {
    Optional<Map.Entry<String, String>> first =
        key.turning().entrySet().stream()
            .filter(entry -> missed && !turning.contains(entry.getKey()))
            .min(
                Comparator.comparing(
                    (Map.Entry<String, String> entry) ->
                        !key.speaking().containsKey(entry.getKey())));
    first.ifPresent(
        entry ->
            factWords.add("Not named: " + label(entry.getKey()) + "; " + entry.getValue() + "."));
    return first.map(Map.Entry::getKey);
  }

  /** What was left out, by one example. */
  private static String such(Optional<String> missed) {
    return missed.map(word -> "; left out: " + word).orElse("");
  }

  private MarkLine checks() {
    List<String> named = named(answer.check());
    List<String> good = named.stream().filter(key.open()::containsKey).toList();
    if (key.open().isEmpty()) {
      return named.isEmpty()
          ? line("to check first", Rubric.CHECKS, Rubric.CHECKS, "nothing open could turn it")
          : line(
              "to check first",
              1,
              Rubric.CHECKS,
              "nothing open could turn it, so nothing need wait");
    }
    int needed = Math.min(Rubric.CHECKS, key.open().size());
    Optional<Map.Entry<String, String>> missed =
        key.open().entrySet().stream()
            .filter(entry -> good.size() < needed && !good.contains(entry.getKey()))
            .findFirst();
    missed.ifPresent(
        entry ->
            factWords.add("To check: " + label(entry.getKey()) + "; " + entry.getValue() + "."));
    return line(
        "to check first",
        (double) Rubric.CHECKS * good.size() / needed,
        Rubric.CHECKS,
        good.size()
            + " of those named could turn the answer or free a method; "
            + needed
            + " "
            + give(needed)
            + " full points"
            + such(missed.map(entry -> label(entry.getKey()))));
  }

  private static String give(int needed) {
    return needed == 1 ? "gives" : "give";
  }

  /** Conditions or dangers: each of those named that the rules tell with the method. */
  private MarkLine told(
      String part, List<String> typed, Map<String, Finding> all, int most, List<String> missed) {
    List<String> good = named(typed).stream().filter(all::containsKey).toList();
    int needed = Math.min(most, all.size());
    if (needed == 0) {
      return line(part, most, most, "the rules tell of none");
    }
    Optional<Map.Entry<String, Finding>> other =
        all.entrySet().stream()
            .filter(entry -> good.size() < needed && !good.contains(entry.getKey()))
            .findFirst();
    other.ifPresent(
        entry -> missed.add("Not named: " + entry.getKey() + ". " + Cited.words(entry.getValue())));
    return line(
        part,
        (double) most * good.size() / needed,
        most,
        good.size()
            + " named of the "
            + all.size()
            + " of which the rules tell here"
            + such(other.map(Map.Entry::getKey))
            + idle(typed, all));
  }

  /** What was named and is not told of, so that a student sees what gave nothing. */
  private static String idle(List<String> typed, Map<String, Finding> all) {
    List<String> idle = named(typed).stream().filter(word -> !all.containsKey(word)).toList();
    return idle.isEmpty() ? "" : "; not of this method here: " + String.join(", ", idle);
  }

  private Optional<MarkLine> changed(Answer last, Set<String> fresh, double choice) {
    if (last.method().equals(answer.method())) {
      return Optional.empty();
    }
    Optional<String> reason =
        named(answer.because()).stream()
            .filter(fresh::contains)
            .filter(fact -> key.turning().containsKey(fact) || key.speaking().containsKey(fact))
            .findFirst();
    boolean good = reason.isPresent() && choice >= FAIR;
    return Optional.of(
        new MarkLine(
            "changed mind",
            good ? Rubric.CHANGED : 0,
            0,
            good
                ? "from " + last.method() + ", because of " + label(reason.get())
                : "from "
                    + last.method()
                    + (reason.isPresent()
                        ? ", with a new fact, but to a method that it does not carry"
                        : ", without naming a new fact that carries it")));
  }

  private static MarkLine line(String part, double points, double of, String why) {
    double halves = Math.floor(2 * Math.min(points, of) + 1e-9) / 2;
    return new MarkLine(part, halves, of, why);
  }

  /** The first ones, each once. */
  private static List<String> named(List<String> words) {
    return words.stream().distinct().limit(Rubric.MOST_NAMED).toList();
  }

  private static String label(String fact) {
    return FactDictionary.standard().require(fact).label();
  }
}
