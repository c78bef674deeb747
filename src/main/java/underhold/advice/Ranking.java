package underhold.advice;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * The options of one zone in rank order: those in rank first, then those held, then those ruled
 * out.
 *
 * @param options every option once
 */
public record Ranking(List<OptionAdvice> options) {
  public Ranking {
    options = List.copyOf(options);
  }

  /** Ranks all options by what a screening found. */
  public static Ranking of(Screening screening, RulePack pack, Wording wording) {
    return new Ranker(screening, pack, wording).rank();
  }

  /** The option that leads; none where nothing speaks for any. */
  public Optional<OptionAdvice> leader() {
    return options.stream().filter(option -> option.standing() == Standing.LEADS).findFirst();
  }

  /** What is advised of an option. */
  public OptionAdvice of(SupportOption option) {
    return options.stream()
        .filter(advice -> advice.option() == option)
        .findFirst()
        .orElseThrow(() -> new IllegalStateException(option.id() + " was not ranked"));
  }

  /** The options tied with the leader, without it. */
  public List<OptionAdvice> tiedWithLeader() {
    return options.stream()
        .filter(option -> option.tied() && option.standing() != Standing.LEADS)
        .toList();
  }

  /** Options that are held and would lead, or tie, if the safety questions were answered well. */
  public List<OptionAdvice> heldContenders() {
    int best = leader().map(OptionAdvice::score).orElse(0);
    return options.stream()
        .filter(o -> o.standing() == Standing.HELD && o.spokenFor() && o.score() > 0)
        .filter(o -> o.score() >= best)
        .toList();
  }

  /** Makes a ranking. */
  private static final class Ranker {
    private final Screening screening;
    private final RulePack pack;
    private final Wording wording;

    Ranker(Screening screening, RulePack pack, Wording wording) {
      this.screening = screening;
      this.pack = pack;
      this.wording = wording;
    }

    Ranking rank() {
      List<OptionAdvice> inRank = new ArrayList<>();
      List<OptionAdvice> held = new ArrayList<>();
      List<OptionAdvice> out = new ArrayList<>();
      for (SupportOption option : order()) {
        OptionAdvice advice = advice(option);
        switch (advice.standing()) {
          case HELD -> held.add(advice);
          case RULED_OUT -> out.add(advice);
          default -> inRank.add(advice);
        }
      }
      inRank.sort(
          Comparator.comparing((OptionAdvice advice) -> unwantedReferral(advice))
              .thenComparing(advice -> -advice.score()));
      List<OptionAdvice> all = new ArrayList<>(withLeader(inRank));
      held.sort(Comparator.comparing(advice -> -advice.score()));
      all.addAll(held);
      all.addAll(out);
      return new Ranking(all);
    }

    /** Equal scores keep this order: a referral that a rule asked for, then by cost. */
    private List<SupportOption> order() {
      List<SupportOption> order = new ArrayList<>();
      order.add(SupportOption.REFER);
      order.addAll(pack.weights().costOrder());
      return order;
    }

    private static boolean unwantedReferral(OptionAdvice advice) {
      return advice.option() == SupportOption.REFER && !advice.spokenFor();
    }

    private OptionAdvice advice(SupportOption option) {
      Score score = Score.of(option, screening.findings(), pack.weights());
      List<Finding> ruleOuts = about(option, Effect.RULE_OUT);
      List<Finding> conditions = about(option, Effect.REQUIRE);
      List<Hold> holds = screening.holdsOn(option);
      List<Finding> findings = new ArrayList<>(ruleOuts);
      findings.addAll(score.counted());
      findings.addAll(score.uncounted());
      Standing standing =
          !ruleOuts.isEmpty()
              ? Standing.RULED_OUT
              : !holds.isEmpty()
                  ? Standing.HELD
                  : conditions.stream().anyMatch(Ranker::mustComeFirst)
                      ? Standing.WORKS_IF
                      : Standing.WORKS;
      return new OptionAdvice(
          option,
          standing,
          score.points(),
          false,
          findings,
          score.uncounted(),
          standing == Standing.RULED_OUT ? List.of() : conditions,
          holds,
          ruleOuts.stream().map(this::wayBack).toList());
    }

    /** A decisive requirement of this very option; duties of every option do not count here. */
    private static boolean mustComeFirst(Finding finding) {
      return finding.strength().filter(Strength.DECISIVE::equals).isPresent()
          && !finding.rule().action().options().isEmpty();
    }

    private List<Finding> about(SupportOption option, Effect effect) {
      return screening.findings().stream()
          .filter(finding -> finding.effect() == effect && finding.rule().concerns(option))
          .toList();
    }

    private String wayBack(Finding ruleOut) {
      List<String> ways =
          ruleOut.rule().conditions().stream()
              .map(condition -> wording.otherwise(condition, screening.view()))
              .toList();
      return ruleOut.rule().id() + ": it would come back if " + String.join(", or if ", ways) + ".";
    }

    private List<OptionAdvice> withLeader(List<OptionAdvice> sorted) {
      if (sorted.isEmpty() || !sorted.get(0).spokenFor() || sorted.get(0).score() <= 0) {
        return sorted;
      }
      int best = sorted.get(0).score();
      List<OptionAdvice> marked = new ArrayList<>();
      boolean anyTie = false;
      for (int i = 1; i < sorted.size(); i++) {
        OptionAdvice advice = sorted.get(i);
        boolean tied =
            advice.spokenFor()
                && advice.score() > 0
                && best - advice.score() <= pack.weights().tie();
        anyTie |= tied;
        marked.add(with(advice, advice.standing(), tied));
      }
      marked.add(0, with(sorted.get(0), Standing.LEADS, anyTie));
      return marked;
    }

    private static OptionAdvice with(OptionAdvice a, Standing standing, boolean tied) {
      return new OptionAdvice(
          a.option(),
          standing,
          a.score(),
          tied,
          a.findings(),
          a.uncounted(),
          a.conditions(),
          a.holds(),
          a.wayBack());
    }
  }
}
