package underhold.consult;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import underhold.advice.FactRoots;
import underhold.advice.Hold;
import underhold.advice.OptionAdvice;
import underhold.advice.Ranking;
import underhold.advice.Rule;
import underhold.advice.Screener;
import underhold.advice.Screening;
import underhold.advice.Standing;
import underhold.advice.SupportOption;
import underhold.advice.Truth;
import underhold.advice.Wording;
import underhold.site.Fact;
import underhold.site.FactDefinition;
import underhold.site.FactDictionary;
import underhold.site.FactValue;
import underhold.site.FactView;
import underhold.site.Origin;
import underhold.site.Site;
import underhold.site.StatedFact;
import underhold.site.Zone;
import underhold.site.ZoneViews;

/**
 * Finds the open questions of a zone: each unknown fact that an open rule could still read is given
 * every value worth trying, and the zone is ranked again.
 */
final class QuestionFinder {
  private final Screener screener;
  private final FactDictionary dictionary;
  private final FactRoots roots;
  private final TrialValues values;

  QuestionFinder(Screener screener, FactDictionary dictionary) {
    this.screener = screener;
    this.dictionary = dictionary;
    this.roots = new FactRoots(screener.pack());
    this.values = new TrialValues(screener.pack());
  }

  OpenQuestions find(
      Site site,
      Zone zone,
      Screening screening,
      Ranking ranking,
      Wording wording,
      QuickDesk quick) {
    List<OpenQuestion> questions = new ArrayList<>();
    int trials = 0;
    int kept = 0;
    Map<String, List<String>> frees = frees(screening);
    for (String name : candidates(screening.view())) {
      FactDefinition definition = dictionary.require(name);
      OpenQuestion question =
          ask(
              site,
              zone,
              definition,
              screening,
              ranking,
              wording,
              quick,
              frees.getOrDefault(name, List.of()));
      trials += question.answers().size();
      kept += question.answers().size() - question.leaderChanges();
      if (question.weight() > 0) {
        questions.add(question);
      }
    }
    questions.sort(
        Comparator.comparing((OpenQuestion q) -> -q.weight()).thenComparing(q -> q.fact().index()));
    return new OpenQuestions(questions, trials, kept);
  }

  /** The unknown facts that some rule, not yet decided, could still read. */
  private Set<String> candidates(FactView view) {
    Set<String> open = new LinkedHashSet<>();
    for (Rule rule : screener.pack().rules()) {
      if (rule.phase() != Rule.Phase.DERIVE && rule.holds(view) == Truth.OPEN) {
        open.addAll(rule.facts());
      }
    }
    return new LinkedHashSet<>(roots.ask(List.copyOf(open), view));
  }

  private static Map<String, List<String>> frees(Screening screening) {
    Map<String, List<String>> frees = new HashMap<>();
    for (SupportOption option : SupportOption.values()) {
      Set<String> names = new LinkedHashSet<>();
      for (Hold hold : screening.holdsOn(option)) {
        names.addAll(hold.ask());
      }
      names.forEach(name -> frees.computeIfAbsent(name, k -> new ArrayList<>()).add(option.id()));
    }
    return frees;
  }

  private OpenQuestion ask(
      Site site,
      Zone zone,
      FactDefinition definition,
      Screening screening,
      Ranking ranking,
      Wording wording,
      QuickDesk quick,
      List<String> frees) {
    List<OpenQuestion.Answer> answers = new ArrayList<>();
    Set<SupportOption> moved = new LinkedHashSet<>();
    String leader = leader(ranking);
    int leaderChanges = 0;
    int scoreMoved = 0;
    for (FactValue value : values.of(definition)) {
      Zone trial = with(zone, definition.name(), value);
      FactView facts = ZoneViews.known(site, trial, dictionary);
      Screening tried = screener.score(facts, wording, quick);
      Ranking after = Ranking.of(tried, screener.pack(), wording);
      String newLeader = leader(after);
      answers.add(new OpenQuestion.Answer(value.text(), newLeader));
      if (!newLeader.equals(leader)) {
        leaderChanges++;
      }
      for (SupportOption option : SupportOption.values()) {
        OptionAdvice was = ranking.of(option);
        OptionAdvice is = after.of(option);
        if (usable(was) != usable(is) && (contends(was) || contends(is))) {
          moved.add(option);
        }
        if (was.standing() != Standing.RULED_OUT && is.standing() != Standing.RULED_OUT) {
          scoreMoved = Math.max(scoreMoved, Math.abs(is.score() - was.score()));
        }
      }
    }
    Fact fact = screening.view().fact(definition.name());
    Origin origin = assumable(fact) ? Origin.ASSUMED : Origin.UNKNOWN;
    return new OpenQuestion(
        definition, origin, answers, leaderChanges, moved.size(), scoreMoved, frees);
  }

  /** Whether something speaks for it and more than speaks against it. */
  private static boolean contends(OptionAdvice advice) {
    return advice.spokenFor() && advice.score() > 0;
  }

  private static boolean usable(OptionAdvice advice) {
    return advice.standing() != Standing.RULED_OUT;
  }

  private static boolean assumable(Fact fact) {
    return fact.definition().unknown() != null
        && fact.definition().unknown().treatment() == underhold.site.Unknown.Treatment.ASSUME;
  }

  private static String leader(Ranking ranking) {
    return ranking.leader().map(advice -> advice.option().id()).orElse("");
  }

  private static Zone with(Zone zone, String name, FactValue value) {
    Map<String, StatedFact> facts = new LinkedHashMap<>(zone.facts());
    facts.put(name, new StatedFact(value, ""));
    return new Zone(zone.name(), facts, zone.ground(), zone.note());
  }
}
