package underhold.consult;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import underhold.advice.Hold;
import underhold.advice.PlainRules;
import underhold.advice.Screening;
import underhold.advice.SupportOption;
import underhold.consult.trial.Changes;
import underhold.consult.trial.OpenFacts;
import underhold.consult.trial.Outcome;
import underhold.consult.trial.Outcome.Placing;
import underhold.consult.trial.Outcome.State;
import underhold.consult.trial.TrialValues;
import underhold.consult.trial.Trials;
import underhold.site.Fact;
import underhold.site.FactDefinition;
import underhold.site.FactDictionary;
import underhold.site.FactValue;
import underhold.site.FactView;
import underhold.site.Origin;
import underhold.site.Unknown;
import underhold.site.Zone;
import underhold.threads.AllProcessors;

/**
 * Finds the open questions of a zone: each unknown fact that an open rule could still read is given
 * every value that can be, and the zone is ranked again.
 */
final class QuestionFinder {
  private final FactDictionary dictionary;
  private final OpenFacts open;

  QuestionFinder(PlainRules rules, FactDictionary dictionary) {
    this.dictionary = dictionary;
    this.open = new OpenFacts(rules);
  }

  OpenQuestions find(Zone zone, Screening screening, Trials trials) {
    Asking asking = new Asking(zone, trials);
    Map<String, List<String>> frees = frees(screening);
    List<OpenQuestion> all =
        AllProcessors.each(
            open.of(screening.view()),
            name -> asking.ask(screening.view().fact(name), frees.getOrDefault(name, List.of())));
    int trialled = all.stream().mapToInt(question -> question.answers().size()).sum();
    int turned = all.stream().mapToInt(OpenQuestion::leaderChanges).sum();
    List<OpenQuestion> questions =
        all.stream()
            .filter(question -> question.weight() > 0)
            .sorted(
                Comparator.comparing((OpenQuestion q) -> -q.weight())
                    .thenComparing(q -> q.fact().index()))
            .toList();
    return new OpenQuestions(questions, trialled, trialled - turned);
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

  /** The questions of one zone. */
  private final class Asking {
    private final Trials trials;
    private final Changes changes;
    private final Outcome before;
    private final TrialValues values;

    Asking(Zone zone, Trials trials) {
      this.trials = trials;
      this.changes = trials.changes(zone);
      this.before = trials.of(zone);
      this.values = new TrialValues(trials.rules().pack(), trials.site().units());
    }

    OpenQuestion ask(Fact fact, List<String> frees) {
      FactDefinition definition = dictionary.require(fact.name());
      List<OpenQuestion.Answer> answers = new ArrayList<>();
      for (FactValue value : values.of(definition)) {
        Zone changed = changes.with(definition.name(), value);
        if (changes.possible(changed)) {
          answers.add(answer(value, changed));
        }
      }
      Origin origin = assumable(definition) ? Origin.ASSUMED : Origin.UNKNOWN;
      return new OpenQuestion(definition, origin, answers, before.leaderId(), tied(before), frees);
    }

    private OpenQuestion.Answer answer(FactValue value, Zone changed) {
      FactView view = trials.view(changed);
      Outcome after = trials.of(view, Set.of());
      Outcome was = before;
      Set<SupportOption> doubtful = unsizedMovers(was, after);
      if (!doubtful.isEmpty()) {
        was = trials.of(before.view(), doubtful);
        after = trials.of(view, doubtful);
      }
      List<String> freed = new ArrayList<>();
      List<String> won = new ArrayList<>();
      List<String> lost = new ArrayList<>();
      double moved = 0;
      for (SupportOption option : SupportOption.values()) {
        Placing then = was.of(option);
        Placing now = after.of(option);
        if (moved(then, now)) {
          (now.usable() ? won : lost).add(option.id());
        }
        if (then.state() == State.HELD && now.state() == State.IN_RANK) {
          freed.add(option.id());
        }
        if (then.usable() && now.usable()) {
          moved = Math.max(moved, Math.abs(now.screened() - then.screened()));
          if (was.sized().contains(option) && after.sized().contains(option)) {
            moved = Math.max(moved, Math.abs(now.score() - then.score()));
          }
        }
      }
      return new OpenQuestion.Answer(
          value.text(), after.leaderId(), tied(after), freed, won, lost, (int) Math.round(moved));
    }

    private Set<SupportOption> unsizedMovers(Outcome was, Outcome after) {
      Set<SupportOption> doubtful = EnumSet.noneOf(SupportOption.class);
      for (SupportOption option : SupportOption.values()) {
        Outcome usable = after.of(option).usable() ? after : was;
        if (moved(was.of(option), after.of(option)) && !usable.sized().contains(option)) {
          doubtful.add(option);
        }
      }
      return doubtful;
    }

    private static boolean moved(Placing then, Placing now) {
      return then.usable() != now.usable() && (then.contends() || now.contends());
    }

    private static List<String> tied(Outcome outcome) {
      return outcome.leaders().stream().skip(1).map(SupportOption::id).toList();
    }
  }

  private static boolean assumable(FactDefinition definition) {
    return definition.unknown() != null
        && definition.unknown().treatment() == Unknown.Treatment.ASSUME;
  }
}
