package underhold.consult.trial;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import underhold.advice.Confirmation;
import underhold.advice.OptionRules;
import underhold.advice.PlainRules;
import underhold.advice.Points;
import underhold.advice.Rule;
import underhold.advice.SupportOption;
import underhold.consult.trial.Outcome.Placing;
import underhold.consult.trial.Outcome.State;
import underhold.site.Fact;
import underhold.site.FactDictionary;
import underhold.site.FactValue;
import underhold.site.FactView;
import underhold.site.Origin;
import underhold.site.Site;
import underhold.site.Zone;

/**
 * Ranks one zone of a site again and again. The leader, and those tied with it, are those of the
 * whole consultation: an option is sized when it stands first, and since sizing only takes points
 * away the search ends as soon as the first one is sized. Several threads may ask at once if the
 * desk bears it.
 */
public final class Trials {
  private static final String ORDINARY_LEFT = "ordinaryOptionsLeft";

  private final Site site;
  private final FactDictionary dictionary = FactDictionary.standard();
  private final Confirmation desk;
  private final PlainRules rules;
  private final Points points;
  private final double tie;
  private final Known known;
  private final List<SupportOption> order = new ArrayList<>();

  /**
   * Trials on a site.
   *
   * @param rules the rules
   * @param site the site
   * @param desk sizes the options of the zone tried
   */
  public Trials(PlainRules rules, Site site, Confirmation desk) {
    this(
        rules,
        new Known(site, FactDictionary.standard()),
        site,
        desk,
        Points.of(rules.pack().weights()),
        rules.pack().weights().tie());
  }

  private Trials(
      PlainRules rules, Known known, Site site, Confirmation desk, Points points, double tie) {
    this.rules = rules;
    this.known = known;
    this.site = site;
    this.desk = desk;
    this.points = points;
    this.tie = tie;
    order.add(SupportOption.REFER); // of equal scores a referral that is spoken for comes first
    order.addAll(rules.pack().weights().costOrder());
  }

  /** The same trials by other rules and weights, in which only equal scores are a tie. */
  public Trials by(PlainRules other, Points weights) {
    return new Trials(other, known, site, desk, weights, 0);
  }

  /**
   * The same trials without any sizing, where only what the rules of the screening say is asked.
   */
  public Trials unsized() {
    return new Trials(rules, known, site, Confirmation.NONE, points, tie);
  }

  public PlainRules rules() {
    return rules;
  }

  public Site site() {
    return site;
  }

  /** All that is known of a zone of the site, with what the rules derive from it. */
  public FactView view(Zone zone) {
    return rules.complete(known(zone));
  }

  /** All that is known of a zone of the site, without what the rules derive from it. */
  public FactView known(Zone zone) {
    return known.of(zone);
  }

  /** Changes of a zone of the site. */
  public Changes changes(Zone zone) {
    return new Changes(site, zone, known);
  }

  /** How a zone stands. */
  public Outcome of(Zone zone) {
    return of(view(zone), Set.of());
  }

  /**
   * How a zone stands.
   *
   * @param view all that is known of it, with what the rules derive
   * @param also options to size in any case, if they are not ruled out
   */
  public Outcome of(FactView view, Set<SupportOption> also) {
    return new Run(view).run(also);
  }

  /** How a zone stands as to who leads; of the rest see {@link #leading(FactView)}. */
  public Outcome leading(Zone zone) {
    return leading(view(zone));
  }

  /**
   * How a zone stands as to who leads and what is ruled out: the leader is that of {@link #of}, but
   * no more is sized than it takes to tell, so that ties, and the scores of the others, are not
   * settled.
   *
   * @param view all that is known of it, with what the rules derive
   */
  public Outcome leading(FactView view) {
    return new Run(view).lead();
  }

  /** Whether an option leads a zone; the same as asking {@link #of(Zone)} for its leader. */
  public boolean leads(Zone zone, SupportOption option) {
    return leads(view(zone), option);
  }

  /**
   * Whether an option leads, with no more sized than it takes to tell: often the rules of the
   * screening rule it out, or put another so far ahead that no sheet brings it back.
   *
   * @param view all that is known of the zone, with what the rules derive
   */
  public boolean leads(FactView view, SupportOption option) {
    return new Run(view)
        .leads(option)
        .orElseGet(() -> leading(view).leader().filter(option::equals).isPresent());
  }

  /** One trial under way. */
  private final class Run {
    private final FactView screened;
    private final BitSet fired = new BitSet();
    private final BitSet holding;
    private final Set<SupportOption> left = EnumSet.noneOf(SupportOption.class);
    private final Set<SupportOption> sized = EnumSet.noneOf(SupportOption.class);
    private FactView view;

    /** Whether a sheet moved an option that is not its own. */
    private boolean entangled;

    Run(FactView view) {
      this.screened = view;
      this.view = view;
      rules.fire(view, Rule.Phase.SCREEN, fired);
      this.holding = rules.holding(view);
      for (SupportOption option : SupportOption.values()) {
        if (!rules.of(option).ruledOut(fired)) {
          left.add(option);
        }
      }
    }

    Outcome run(Set<SupportOption> also) {
      Set<SupportOption> first = EnumSet.noneOf(SupportOption.class);
      first.addAll(rules.sizingOnlyTakes() ? also : left);
      first.retainAll(left);
      first.forEach(this::size);
      settle();
      List<SupportOption> ranked = ranked();
      while (!ranked.isEmpty() && unsizedContender(ranked)) {
        ranked = ranked();
      }
      return new Outcome(view, fired, holding, placings(), leaders(ranked), sized);
    }

    Outcome lead() {
      if (!rules.sizingOnlyTakes()) {
        return run(Set.of());
      }
      settle();
      List<SupportOption> ranked = ranked();
      while (!leadsWhateverTheSheets(ranked) && unsizedContender(ranked)) {
        ranked = ranked();
      }
      List<SupportOption> leaders = leaders(ranked);
      return new Outcome(
          view, fired, holding, placings(), leaders.subList(0, Math.min(1, leaders.size())), sized);
    }

    /** Whether an option leads; empty where that cannot be told by asking for it alone. */
    Optional<Boolean> leads(SupportOption option) {
      if (!rules.sheetsSpeakApart()) {
        return Optional.empty();
      }
      settle();
      List<SupportOption> ranked = ranked();
      while (mayLead(option, ranked)) {
        if (!sized.contains(option)) {
          size(option);
        } else if (ranked.get(0) == option) {
          return Optional.of(leaders(ranked).contains(option));
        } else if (sized.contains(ranked.get(0))) {
          return Optional.of(false); // both have their sheet, and the other stays ahead
        } else {
          size(ranked.get(0));
        }
        if (entangled) {
          return Optional.empty();
        }
        ranked = ranked();
      }
      return Optional.of(false);
    }

    /** Whether it may still come first, since what is in rank can only lose points. */
    private boolean mayLead(SupportOption option, List<SupportOption> ranked) {
      if (!ranked.contains(option) || unwantedReferral(option)) {
        return false;
      }
      double most = score(option);
      return most > 0
          && ranked.stream()
              .filter(other -> other != option && !unwantedReferral(other))
              .noneMatch(other -> rules.leastScore(other, fired, points) > most);
    }

    /** Whether the first one leads even if every sheet took all that it could. */
    private boolean leadsWhateverTheSheets(List<SupportOption> ranked) {
      if (ranked.isEmpty()) {
        return true;
      }
      double least = rules.leastScore(ranked.get(0), fired, points);
      return least > 0 && ranked.stream().skip(1).allMatch(option -> score(option) < least);
    }

    /** Sizes the first option that may lead or tie and has no sheet yet; whether there was one. */
    private boolean unsizedContender(List<SupportOption> ranked) {
      double best = Double.NEGATIVE_INFINITY;
      for (SupportOption option : ranked) {
        double score = score(option);
        if (score <= 0 || score < best - tie) {
          return false;
        }
        if (!sized.contains(option)) {
          size(option);
          return true;
        }
        best = Math.max(best, score);
      }
      return false;
    }

    private void size(SupportOption option) {
      sized.add(option);
      List<Fact> facts = desk.facts(screened, EnumSet.of(option));
      if (!facts.isEmpty()) {
        view = view.with(facts);
        BitSet before = (BitSet) fired.clone();
        rules.fire(view, Rule.Phase.CONFIRM, fired);
        BitSet gained = (BitSet) fired.clone();
        gained.andNot(before);
        entangled |= gained.stream().mapToObj(rules::rule).anyMatch(rule -> !rule.concerns(option));
      }
    }

    private void settle() {
      boolean ordinary =
          rules.pack().weights().costOrder().stream()
              .anyMatch(option -> !rules.of(option).ruledOut(fired));
      FactValue value = new FactValue.Choice(ordinary ? "yes" : "no");
      view = view.with(new Fact(dictionary.require(ORDINARY_LEFT), Origin.DERIVED, value, ""));
      rules.fire(view, Rule.Phase.SETTLE, fired);
    }

    /** The options in rank, best first: unwanted referral last, equal scores by cost. */
    private List<SupportOption> ranked() {
      List<SupportOption> ranked = new ArrayList<>();
      for (SupportOption option : order) {
        if (state(option) == State.IN_RANK) {
          ranked.add(option);
        }
      }
      ranked.sort(
          Comparator.comparing((SupportOption option) -> unwantedReferral(option))
              .thenComparing(option -> -score(option)));
      return ranked;
    }

    private boolean unwantedReferral(SupportOption option) {
      return option == SupportOption.REFER && !rules.of(option).spokenFor(fired);
    }

    private double score(SupportOption option) {
      return rules.of(option).score(fired, points);
    }

    private State state(SupportOption option) {
      OptionRules about = rules.of(option);
      return about.ruledOut(fired)
          ? State.RULED_OUT
          : about.held(holding) ? State.HELD : State.IN_RANK;
    }

    private List<SupportOption> leaders(List<SupportOption> ranked) {
      List<SupportOption> leaders = new ArrayList<>();
      double best = ranked.isEmpty() ? 0 : score(ranked.get(0));
      if (ranked.isEmpty() || !rules.of(ranked.get(0)).spokenFor(fired) || best <= 0) {
        return leaders;
      }
      for (SupportOption option : ranked) {
        boolean near = rules.of(option).spokenFor(fired) && score(option) > 0;
        if (leaders.isEmpty() || (near && best - score(option) <= tie)) {
          leaders.add(option);
        }
      }
      return leaders;
    }

    private Map<SupportOption, Placing> placings() {
      Map<SupportOption, Placing> placings = new EnumMap<>(SupportOption.class);
      BitSet plain = rules.withoutSizing(fired);
      for (SupportOption option : SupportOption.values()) {
        placings.put(
            option,
            new Placing(
                state(option),
                rules.of(option).spokenFor(fired),
                score(option),
                rules.of(option).score(plain, points)));
      }
      return placings;
    }
  }
}
