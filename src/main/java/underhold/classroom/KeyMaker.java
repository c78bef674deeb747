package underhold.classroom;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import underhold.advice.Finding;
import underhold.advice.Hold;
import underhold.advice.OptionAdvice;
import underhold.advice.Screening;
import underhold.consult.Consultant;
import underhold.consult.Consultation;
import underhold.consult.OpenQuestion;
import underhold.consult.ZoneAdvice;
import underhold.consult.scheme.SchemeDesk;
import underhold.consult.turning.Change;
import underhold.consult.turning.TurningPoint;
import underhold.site.Fact;
import underhold.site.Origin;
import underhold.site.Site;
import underhold.site.Zone;
import underhold.site.ZoneViews;

/** Reckons keys; equal knowledge of one zone is reckoned once. Not for several threads. */
public final class KeyMaker {
  private final Consultant consultant;
  private final Map<Asking, Key> made = new HashMap<>();
  private final Map<Asking, SchemeKey> schemes = new HashMap<>();

  /** Keys by the rules of a consultant. */
  public KeyMaker(Consultant consultant) {
    this.consultant = consultant;
  }

  private record Asking(CaseStudy study, int stage, Set<FactPlace> asked, String zone) {}

  /**
   * The key of a zone.
   *
   * @param stage the last stage known, from 0
   * @param asked facts known beside
   */
  public Key of(CaseStudy study, int stage, Set<FactPlace> asked, String zone) {
    Asking asking = new Asking(study, stage, Set.copyOf(asked), zone);
    Key known = made.get(asking);
    if (known == null) {
      known = key(study.known(stage, asked), zone);
      made.put(asking, known);
    }
    return known;
  }

  /**
   * What the rules say of all zones together.
   *
   * @param stage the last stage known, from 0
   * @param asked facts known beside
   */
  public SchemeKey together(CaseStudy study, int stage, Set<FactPlace> asked) {
    Asking asking = new Asking(study, stage, Set.copyOf(asked), "");
    SchemeKey known = schemes.get(asking);
    if (known == null) {
      Site site = study.known(stage, asked);
      List<ZoneAdvice> zones =
          site.zones().stream().map(zone -> consultant.reasons(site, zone)).toList();
      Consultation consultation = new Consultation(site, consultant.pack(), zones);
      known = new SchemeKey(consultation, SchemeDesk.of(consultant.pack()).scheme(consultation));
      schemes.put(asking, known);
    }
    return known;
  }

  private Key key(Site site, String name) {
    Zone zone =
        site.zones().stream().filter(one -> one.name().equals(name)).findFirst().orElseThrow();
    ZoneAdvice advice = consultant.advise(site, zone);
    Map<String, String> turning = new LinkedHashMap<>();
    Map<String, String> open = new LinkedHashMap<>();
    holds(advice, open);
    for (TurningPoint point : consultant.turning(site, zone).another(1).singles()) {
      turn(advice, point, turning, open);
    }
    for (OpenQuestion question : advice.questions().list()) {
      if (question.decides()) {
        open.putIfAbsent(question.fact().name(), question.stake());
      }
    }
    Map<String, Finding> speaking = speaking(advice);
    List<String> rest =
        speaking.keySet().stream().filter(fact -> !turning.containsKey(fact)).toList();
    turning.putAll(HangingFacts.of(consultant, site, zone, rest));
    return new Key(consultant.pack(), advice, turning, speaking, open);
  }

  /** The facts for which options wait that could lead. */
  private static void holds(ZoneAdvice advice, Map<String, String> open) {
    for (OptionAdvice held : advice.ranking().heldContenders()) {
      for (Hold hold : held.holds()) {
        hold.ask().forEach(fact -> open.putIfAbsent(fact, held.option().label() + " wait for it"));
      }
    }
  }

  private void turn(
      ZoneAdvice advice,
      TurningPoint point,
      Map<String, String> turning,
      Map<String, String> open) {
    if (point.farFetched()) {
      return;
    }
    Change change = point.changes().get(0);
    String then =
        point.after().leader().map(option -> option.label() + " first").orElse("no clear choice");
    String text = "were it " + change.tried().text() + ", " + then;
    if (change.open()) {
      open.putIfAbsent(change.fact().name(), text);
    } else {
      stated(change.was(), advice.screening()).forEach(fact -> turning.putIfAbsent(fact, text));
    }
  }

  /**
   * The facts stated that the findings about the leaders rest on; where none leads, about those
   * held.
   */
  private static Map<String, Finding> speaking(ZoneAdvice advice) {
    Map<String, Finding> speaking = new LinkedHashMap<>();
    List<OptionAdvice> about = new ArrayList<>();
    advice.ranking().leader().ifPresent(about::add);
    about.addAll(advice.ranking().tiedWithLeader());
    about.addAll(advice.ranking().heldContenders());
    List<OptionAdvice> rest =
        advice.ranking().options().stream().filter(option -> !about.contains(option)).toList();
    Stream.concat(
            about.stream().flatMap(option -> option.findings().stream()),
            rest.stream()
                .filter(option -> !option.ranked())
                .flatMap(option -> option.findings().stream())
                .filter(finding -> finding.effect() == underhold.advice.Effect.RULE_OUT))
        .forEach(
            finding ->
                finding.facts().stream()
                    .map(matched -> advice.view().fact(matched.name()))
                    .flatMap(fact -> stated(fact, advice.screening()).stream())
                    .forEach(fact -> speaking.putIfAbsent(fact, finding)));
    return speaking;
  }

  /** The facts that a student can name for a fact: stated ones from which it follows, or itself. */
  private static Set<String> stated(Fact fact, Screening screening) {
    Set<String> found = new LinkedHashSet<>();
    stated(fact, screening, new LinkedHashSet<>(), found);
    return found;
  }

  private static void stated(Fact fact, Screening screening, Set<String> seen, Set<String> found) {
    if (!seen.add(fact.name())) {
      return;
    }
    boolean nameable = fact.origin() == Origin.DERIVED && !fact.definition().derived();
    if (fact.origin() == Origin.STATED || nameable) {
      found.add(fact.name());
    }
    if (fact.origin() == Origin.DERIVED) {
      Stream.concat(
              ZoneViews.sources(fact.name()).stream(),
              screening.derivations().stream()
                  .filter(finding -> fact.name().equals(finding.rule().action().fact()))
                  .flatMap(finding -> finding.rule().facts().stream()))
          .forEach(name -> stated(screening.view().fact(name), screening, seen, found));
    }
  }
}
