package underhold.consult;

import java.util.List;
import java.util.Optional;
import underhold.advice.BuiltInPack;
import underhold.advice.Confirmation;
import underhold.advice.OptionAdvice;
import underhold.advice.PlainRules;
import underhold.advice.Ranking;
import underhold.advice.RuleEngine;
import underhold.advice.RulePack;
import underhold.advice.Screener;
import underhold.advice.Screening;
import underhold.advice.Wording;
import underhold.consult.firmness.Firmness;
import underhold.consult.firmness.FirmnessFinder;
import underhold.consult.trial.OpenFacts;
import underhold.consult.trial.Trials;
import underhold.consult.turning.TurningFinder;
import underhold.quantity.UnitSystem;
import underhold.site.FactDictionary;
import underhold.site.FactView;
import underhold.site.Site;
import underhold.site.Zone;
import underhold.site.ZoneViews;
import underhold.sizing.Guesses;
import underhold.threads.AllProcessors;

/**
 * Answers sites. May be asked by several threads at once, and uses those at hand; the answer does
 * not depend on how many there are.
 */
public final class Consultant {
  private final RuleEngine engine;
  private final FactDictionary dictionary;
  private final Screener screener;
  private final PlainRules rules;
  private final SizingDesk desk = new SizingDesk();
  private final QuestionFinder finder;
  private final OpenFacts open;
  private final Wording metric;
  private final Wording customary;

  /** Answers by the rules of the engine. */
  public Consultant(RuleEngine engine) {
    this.engine = engine;
    this.dictionary = FactDictionary.standard();
    this.screener = new Screener(engine);
    this.rules = new PlainRules(screener.pack(), dictionary);
    this.finder = new QuestionFinder(rules, dictionary);
    this.open = new OpenFacts(rules);
    this.metric = new Wording(screener.pack(), UnitSystem.SI);
    this.customary = new Wording(screener.pack(), UnitSystem.US);
  }

  /** Answers by the rules built in. */
  public static Consultant standard() {
    return of(BuiltInPack.pack());
  }

  /** Answers by the rules of a pack. */
  public static Consultant of(RulePack pack) {
    return new Consultant(RuleEngine.of(pack));
  }

  /** Answers by the rules of a pack as another engine fires them: to check an answer by. */
  public static Consultant toCheckBy(RulePack pack) {
    return new Consultant(RuleEngine.toCheckBy(pack));
  }

  private Wording wording(Site site) {
    return site.units() == UnitSystem.SI ? metric : customary;
  }

  /** The engine that judges, for what judges beside it. */
  public RuleEngine engine() {
    return engine;
  }

  public RulePack pack() {
    return screener.pack();
  }

  /** The whole answer, with how firm it is. */
  public Consultation advise(Site site) {
    List<ZoneAdvice> zones = AllProcessors.each(site.zones(), zone -> firm(site, zone));
    return new Consultation(site, screener.pack(), zones);
  }

  /** The answer to one zone of a site. */
  public ZoneAdvice advise(Site site, Zone zone) {
    return advise(site, zone, trials(site, zone));
  }

  private ZoneAdvice advise(Site site, Zone zone, Trials trials) {
    ZoneAdvice reasons = reasons(site, zone);
    return reasons.asking(finder.find(zone, reasons.screening(), trials));
  }

  /**
   * The answer to one zone of a site, its open questions left out: for whoever shows reasons alone.
   */
  public ZoneAdvice reasons(Site site, Zone zone) {
    Wording wording = wording(site);
    FactView facts = ZoneViews.known(site, zone, dictionary);
    QuickDesk quick = new QuickDesk(desk, site, zone.name());
    Screening screening = screener.screen(facts, wording, quick);
    Ranking ranking = Ranking.of(screening, screener.pack(), wording);
    return new ZoneAdvice(
        zone.name(), screening, ranking, OpenQuestions.NONE, quick.sizings(), Optional.empty());
  }

  /**
   * The answer to one zone among many: that of {@link #reasons}, but of the sheets only the one of
   * the leader is made whole. Of the others only what fails is found, for no more counts.
   */
  public ZoneAdvice screened(Site site, Zone zone) {
    if (!rules.sizingSpeaksOfFailuresOnly()) {
      return reasons(site, zone);
    }
    Wording wording = wording(site);
    FactView facts = ZoneViews.known(site, zone, dictionary);
    QuickDesk quick = new QuickDesk(desk, site, zone.name(), Guesses.TAKEN);
    Screening screening = screener.screen(facts, wording, quick);
    Ranking ranking = Ranking.of(screening, screener.pack(), wording);
    List<QuickSizing> sizings =
        ranking.leader().map(OptionAdvice::option).stream()
            .flatMap(
                leader ->
                    desk.quick(site, zone.name(), screening.view(), leader).stream()
                        .map(sheet -> new QuickSizing(leader, sheet)))
            .toList();
    return new ZoneAdvice(
        zone.name(), screening, ranking, OpenQuestions.NONE, sizings, Optional.empty());
  }

  /**
   * The answer to one zone with how firm its first place is.
   *
   * @param draws how many draws, at least 1
   * @param seed the same seed gives the same draws
   */
  public ZoneAdvice firm(Site site, Zone zone, int draws, long seed) {
    return firm(site, zone, trials(site, zone), draws, seed);
  }

  private ZoneAdvice firm(Site site, Zone zone, Trials trials, int draws, long seed) {
    return AllProcessors.inPool(
        () -> {
          AllProcessors.Begun<Firmness> firmness =
              AllProcessors.begin(() -> new FirmnessFinder(trials, zone).find(draws, seed));
          return advise(site, zone, trials).firm(firmness.result());
        });
  }

  /** The answer to one zone with how firm its first place is, by the usual draws. */
  public ZoneAdvice firm(Site site, Zone zone) {
    return firm(site, zone, trials(site, zone));
  }

  /**
   * The answer to one zone with how firm its first place is, by the usual draws.
   *
   * @param trials of that zone, which keep the sheets they make for whoever asks next
   */
  public ZoneAdvice firm(Site site, Zone zone, Trials trials) {
    return firm(site, zone, trials, FirmnessFinder.USUAL_DRAWS, FirmnessFinder.USUAL_SEED);
  }

  /**
   * In how many of some draws the answer to one zone stays what it is, without what drives the
   * doubt: for tables.
   *
   * @param draws how many draws, at least 1
   * @param seed the same seed gives the same draws
   */
  public int stayed(Site site, Zone zone, int draws, long seed) {
    return new FirmnessFinder(trials(site, zone), zone).stayed(draws, seed);
  }

  /** The unknown facts that a rule, not yet decided, could still read in an answer. */
  public List<String> open(ZoneAdvice advice) {
    return open.of(advice.view());
  }

  /** Finds what would turn the answer to one zone. */
  public TurningFinder turning(Site site, Zone zone) {
    return new TurningFinder(trials(site, zone), zone);
  }

  /** The ranking of one zone with the options sized, without open questions. */
  public Ranking ranking(Site site, Zone zone) {
    Wording wording = wording(site);
    FactView facts = ZoneViews.known(site, zone, dictionary);
    QuickDesk quick = new QuickDesk(desk, site, zone.name());
    return Ranking.of(screener.score(facts, wording, quick), screener.pack(), wording);
  }

  /** Many trials of one zone of a site. */
  public Trials trials(Site site, Zone zone) {
    Guesses guesses = rules.sizingSpeaksOfFailuresOnly() ? Guesses.TAKEN : Guesses.TRIED;
    return new Trials(rules, site, new QuickDesk(desk, site, zone.name(), guesses));
  }

  /** The answer to one zone without its open questions, which take the longest: for tables. */
  public Weighed weigh(Site site, Zone zone) {
    Wording wording = wording(site);
    QuickDesk quick = new QuickDesk(desk, site, zone.name());
    Screening screening = screener.screen(ZoneViews.known(site, zone, dictionary), wording, quick);
    return new Weighed(zone.name(), screening, Ranking.of(screening, screener.pack(), wording));
  }

  /** What the rules say of one zone, without sizing, ranking or questions. */
  public Screening screen(Site site, Zone zone) {
    Wording wording = wording(site);
    return screener.screen(ZoneViews.known(site, zone, dictionary), wording);
  }

  /** The ranking of one zone by the rules alone, without sizing or open questions: for sweeps. */
  public Ranking rank(Site site, Zone zone) {
    Wording wording = wording(site);
    Screening screening =
        screener.score(ZoneViews.known(site, zone, dictionary), wording, Confirmation.NONE);
    return Ranking.of(screening, screener.pack(), wording);
  }
}
