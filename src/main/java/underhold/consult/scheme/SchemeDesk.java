package underhold.consult.scheme;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import underhold.advice.BuiltInPack;
import underhold.advice.Rule;
import underhold.advice.RuleEngine;
import underhold.advice.RulePack;
import underhold.consult.Consultation;
import underhold.consult.ZoneAdvice;
import underhold.quantity.Quantity;
import underhold.site.FactDefinition;
import underhold.site.FactDictionary;
import underhold.site.FactView;
import underhold.site.Site;

/** Makes the scheme of a site from the advice on its zones. */
public final class SchemeDesk {
  /** The best combination and this many others are told. */
  private static final int OTHERS = 3;

  private final RuleEngine engine;

  /** Judges pairs of zones by the rules of the engine. */
  public SchemeDesk(RuleEngine engine) {
    this.engine = engine;
  }

  /** Judges by the rules of a pack; for those built in it is made once. */
  public static SchemeDesk of(RulePack pack) {
    return BuiltInPack.is(pack) ? Holder.STANDARD : new SchemeDesk(RuleEngine.of(pack));
  }

  private static final class Holder {
    private static final SchemeDesk STANDARD = new SchemeDesk(RuleEngine.of(BuiltInPack.pack()));
  }

  /** The scheme, or why there is none. */
  public SchemeOutcome scheme(Consultation consultation) {
    List<ZoneAdvice> zones = consultation.zones();
    if (zones.size() > CombinationSearch.MOST_ZONES) {
      return new SchemeOutcome.NotMade(
          "A scheme compares at most "
              + CombinationSearch.MOST_ZONES
              + " zones and this site has "
              + zones.size()
              + ": split the site where zones do not act on each other.");
    }
    PairScreen screen = new PairScreen(engine, consultation.site());
    List<List<ZoneChoice>> options = zones.stream().map(ZoneChoice::of).toList();
    CombinationSearch search = new CombinationSearch(options, screen, OTHERS + 1, true);
    List<Combination> best = search.run();
    if (best.isEmpty()) {
      return new SchemeOutcome.NotMade(
          "No combination of methods stands: every one is ruled out between zones, or asks for"
              + " orders of work that contradict each other ("
              + search.ruledOut()
              + " tried). Look at the relations of the zones and at the options held.");
    }
    Combination first = best.get(0);
    return new SchemeOutcome.Made(
        new Scheme(
            consultation.site(),
            engine.pack(),
            first,
            best.subList(1, best.size()),
            heldAbove(first, new CombinationSearch(options, screen, 1, false).run()),
            primary(first),
            questions(first)));
  }

  /**
   * What is known to hold between zones of methods that somebody names, whatever their rank.
   *
   * @param findings what the rules say, those that rule a pair out among it
   * @param stands the combination; empty where a rule rules it out or its orders contradict
   */
  public record Named(List<PairFinding> findings, Optional<Combination> stands) {
    public Named {
      findings = List.copyOf(findings);
    }
  }

  /** What the rules between zones say of methods that somebody names, one choice a zone. */
  public Named named(Site site, List<ZoneChoice> choices) {
    PairScreen screen = new PairScreen(engine, site);
    List<PairFinding> findings = new ArrayList<>();
    for (int i = 0; i < choices.size(); i++) {
      for (int j = i + 1; j < choices.size(); j++) {
        findings.addAll(screen.of(choices.get(i), choices.get(j)).findings());
      }
    }
    return new Named(findings, Combination.of(choices, screen));
  }

  /** A combination that would come first if the open rules between zones turned out well. */
  private static Optional<Combination> heldAbove(Combination first, List<Combination> most) {
    return most.stream()
        .filter(combination -> combination.held() && combination.points() > first.points())
        .findFirst();
  }

  /** The zone that carries over the greatest area; of equal ones the first of the site. */
  private static Optional<String> primary(Combination combination) {
    return combination.zones().stream()
        .filter(zone -> Part.of(zone) == Part.CARRIES)
        .max(
            Comparator.comparingDouble((ZoneChoice zone) -> area(zone.zone().view()))
                .thenComparing(zone -> -combination.zones().indexOf(zone)))
        .map(ZoneChoice::name);
  }

  private static double area(FactView view) {
    return length(view, "underminedLength") * length(view, "underminedWidth");
  }

  private static double length(FactView view, String fact) {
    return view.amount(fact).map(Quantity::si).orElse(0.0);
  }

  private static List<PairQuestion> questions(Combination combination) {
    Map<List<String>, Set<Rule>> rules = new LinkedHashMap<>();
    Set<List<String>> holding = new LinkedHashSet<>();
    for (OpenPairRule open : combination.open()) {
      for (String fact : open.unknown()) {
        List<String> key = key(combination, open, fact);
        rules.computeIfAbsent(key, k -> new LinkedHashSet<>()).add(open.rule());
        if (open.holds()) {
          holding.add(key);
        }
      }
    }
    List<PairQuestion> questions = new ArrayList<>();
    rules.forEach(
        (key, ids) -> {
          FactDefinition fact = FactDictionary.pairs().require(key.get(2));
          questions.add(
              new PairQuestion(
                  key.get(0), key.get(1), fact, List.copyOf(ids), holding.contains(key)));
        });
    questions.sort(Comparator.comparing(question -> !question.holds()));
    return questions;
  }

  /** The pair in the order of the site, with the fact. */
  private static List<String> key(Combination combination, OpenPairRule open, String fact) {
    for (ZoneChoice zone : combination.zones()) {
      if (zone.name().equals(open.first())) {
        return List.of(open.first(), open.second(), fact);
      }
      if (zone.name().equals(open.second())) {
        break;
      }
    }
    return List.of(open.second(), open.first(), fact);
  }
}
