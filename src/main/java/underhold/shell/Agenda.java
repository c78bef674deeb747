package underhold.shell;

import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import underhold.advice.FactRoots;
import underhold.advice.Rule;
import underhold.advice.RulePack;
import underhold.advice.Truth;
import underhold.consult.OpenQuestion;
import underhold.consult.ZoneAdvice;
import underhold.site.FactDefinition;
import underhold.site.FactDictionary;
import underhold.site.FactView;
import underhold.site.Site;
import underhold.site.Zone;
import underhold.site.ZoneViews;

/** What is still worth asking of a zone, in which order. */
final class Agenda {
  private static final FactDictionary DICTIONARY = FactDictionary.standard();

  /** The questions asked of every zone, in their order. */
  static final List<FactDefinition> CORE =
      DICTIONARY.all().stream()
          .filter(fact -> fact.core() > 0)
          .sorted(Comparator.comparingInt(FactDefinition::core))
          .toList();

  private final RulePack pack;
  private final Adviser adviser;

  /** A fact that no rule reads itself, such as a depth, matters through what follows from it. */
  private final Set<String> directlyRead = new HashSet<>();

  /** Answers a zone. */
  @FunctionalInterface
  interface Adviser {
    ZoneAdvice advise(Site site, Zone zone);
  }

  Agenda(RulePack pack, Adviser adviser) {
    this.pack = pack;
    this.adviser = adviser;
    pack.rules().forEach(rule -> directlyRead.addAll(rule.facts()));
  }

  /** The core questions still to ask: not answered, not following, and read by some open rule. */
  List<FactDefinition> core(Site site, int zone) {
    FactView view = ZoneViews.known(site, site.zones().get(zone), DICTIONARY);
    Set<String> open = read(view);
    return CORE.stream()
        .filter(fact -> !answered(site, zone, fact))
        .filter(fact -> view.fact(fact.name()).value() == null)
        .filter(fact -> matters(fact, open))
        .toList();
  }

  private boolean matters(FactDefinition fact, Set<String> open) {
    return open.contains(fact.name())
        || !directlyRead.contains(fact.name())
        || fact.askInstead().stream().anyMatch(open::contains);
  }

  /** The facts that some rule, not yet decided, could still read. */
  private Set<String> read(FactView view) {
    Set<String> open = new HashSet<>();
    for (Rule rule : pack.rules()) {
      if (rule.holds(view) == Truth.OPEN) {
        open.addAll(rule.facts());
      }
    }
    return Set.copyOf(new FactRoots(pack).ask(open.stream().sorted().toList(), view));
  }

  /** The questions that could still decide, the weightiest first. */
  List<OpenQuestion> deciding(Site site, int zone) {
    return open(site, zone, OpenQuestion::decides);
  }

  /** The questions that could only move a score. */
  List<OpenQuestion> minor(Site site, int zone) {
    return open(site, zone, question -> !question.decides());
  }

  private List<OpenQuestion> open(Site site, int zone, Predicate<OpenQuestion> wanted) {
    return adviser.advise(site, site.zones().get(zone)).questions().list().stream()
        .filter(wanted)
        .filter(question -> !answered(site, zone, question.fact()))
        .toList();
  }

  /** Whether somebody answered, be it that nobody knows. */
  static boolean answered(Site site, int zone, FactDefinition fact) {
    return site.zones().get(zone).facts().containsKey(fact.name())
        || site.facts().containsKey(fact.name());
  }

  /** The open question of a fact, if it is among those given. */
  static Optional<OpenQuestion> of(FactDefinition fact, List<OpenQuestion> questions) {
    return questions.stream().filter(question -> question.fact().equals(fact)).findFirst();
  }
}
