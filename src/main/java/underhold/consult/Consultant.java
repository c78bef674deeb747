package underhold.consult;

import java.util.ArrayList;
import java.util.List;
import underhold.advice.BuiltInPack;
import underhold.advice.Confirmation;
import underhold.advice.Ranking;
import underhold.advice.RuleEngine;
import underhold.advice.RulePack;
import underhold.advice.Screener;
import underhold.advice.Screening;
import underhold.advice.Wording;
import underhold.site.FactDictionary;
import underhold.site.FactView;
import underhold.site.Site;
import underhold.site.Zone;
import underhold.site.ZoneViews;

/** Answers sites. */
public final class Consultant {
  private final RuleEngine engine;
  private final FactDictionary dictionary;
  private final Screener screener;
  private final SizingDesk desk = new SizingDesk();
  private final QuestionFinder finder;

  /** Answers by the rules of the engine. */
  public Consultant(RuleEngine engine) {
    this.engine = engine;
    this.dictionary = FactDictionary.standard();
    this.screener = new Screener(engine);
    this.finder = new QuestionFinder(screener, dictionary);
  }

  /** Answers by the rules built in. */
  public static Consultant standard() {
    return new Consultant(BuiltInPack.engine());
  }

  /** The engine that judges, for what judges beside it. */
  public RuleEngine engine() {
    return engine;
  }

  public RulePack pack() {
    return screener.pack();
  }

  /** The whole answer. */
  public Consultation advise(Site site) {
    List<ZoneAdvice> zones = new ArrayList<>();
    for (Zone zone : site.zones()) {
      zones.add(advise(site, zone));
    }
    return new Consultation(site, screener.pack(), zones);
  }

  /** The answer to one zone of a site. */
  public ZoneAdvice advise(Site site, Zone zone) {
    Wording wording = new Wording(screener.pack(), site.units());
    FactView facts = ZoneViews.known(site, zone, dictionary);
    QuickDesk quick = new QuickDesk(desk, site, zone.name());
    Screening screening = screener.screen(facts, wording, quick);
    Ranking ranking = Ranking.of(screening, screener.pack(), wording);
    List<QuickSizing> sizings = quick.sizings(); // before the trials of the questions
    OpenQuestions questions = finder.find(site, zone, screening, ranking, wording, quick);
    return new ZoneAdvice(zone.name(), screening, ranking, questions, sizings);
  }

  /** What the rules say of one zone, without sizing, ranking or questions. */
  public Screening screen(Site site, Zone zone) {
    Wording wording = new Wording(screener.pack(), site.units());
    return screener.screen(ZoneViews.known(site, zone, dictionary), wording);
  }

  /** The ranking of one zone by the rules alone, without sizing or open questions: for sweeps. */
  public Ranking rank(Site site, Zone zone) {
    Wording wording = new Wording(screener.pack(), site.units());
    Screening screening =
        screener.score(ZoneViews.known(site, zone, dictionary), wording, Confirmation.NONE);
    return Ranking.of(screening, screener.pack(), wording);
  }
}
