package underhold.review.audit;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import underhold.advice.Criterion;
import underhold.advice.Effect;
import underhold.advice.Limit;
import underhold.advice.Rule;
import underhold.advice.RulePack;
import underhold.advice.SupportOption;
import underhold.consult.SizingDesk;
import underhold.site.Fact;
import underhold.site.FactDefinition;
import underhold.site.FactReads;
import underhold.site.FactValue;
import underhold.site.FactView;
import underhold.site.Origin;
import underhold.site.Zone;
import underhold.site.ZoneViews;

/**
 * What nothing uses: facts that neither a rule reads, nor what a rule reads follows from, nor a
 * sheet looks at on the sites tried; limits, sources and causes that no rule names.
 */
final class UnusedKnowledge implements Analysis {
  static final String NAME = "unused";
  private static final Pattern LIMIT = Pattern.compile("\\{limit:([^{}]*)\\}");
  private static final Pattern FACT = Pattern.compile("\\{([A-Za-z]+)\\}");
  private static final String LOAD = "loadPattern";
  private static final int SITES_PER_LOAD = 4;

  @Override
  public String name() {
    return NAME;
  }

  @Override
  public Section run(Bench bench) {
    Section.Gathering found =
        new Section.Gathering(NAME, "Is everything that is asked for, limited or cited used?");
    facts(bench, found);
    limits(bench.pack(), found);
    sources(bench.pack(), found);
    causes(bench.pack(), found);
    return found.done();
  }

  private static void facts(Bench bench, Section.Gathering found) {
    Set<String> rules = new LinkedHashSet<>();
    for (Rule rule : bench.pack().rules()) {
      rules.addAll(rule.facts());
      Matcher matcher = FACT.matcher(rule.because());
      while (matcher.find()) {
        rules.add(matcher.group(1));
      }
    }
    Set<String> followed = new LinkedHashSet<>();
    List<String> open = new ArrayList<>(rules);
    while (!open.isEmpty()) {
      for (String source : ZoneViews.sources(open.remove(open.size() - 1))) {
        if (!rules.contains(source) && followed.add(source)) {
          open.add(source);
        }
      }
    }
    Set<String> sheets = sheets(bench, found);
    List<String> onlySheets = new ArrayList<>();
    List<String> onlyFollowed = new ArrayList<>();
    for (FactDefinition fact : bench.dictionary().all()) {
      found.result(Method.PROVED);
      if (rules.contains(fact.name())) {
        continue;
      }
      if (followed.contains(fact.name())) {
        onlyFollowed.add(fact.name());
      } else if (sheets.contains(fact.name())) {
        onlySheets.add(fact.name());
      } else {
        found.defect(
            new Defect(
                NAME,
                List.of(fact.name()),
                "No rule reads "
                    + fact.name()
                    + ", nothing that rules read follows from it, and no sheet looked at it on the sites tried.",
                Method.SAMPLED,
                Optional.empty()));
      }
    }
    found.note("Read only through what follows from them: " + list(onlyFollowed) + ".");
    found.note("Read only by the sheets: " + list(onlySheets) + ".");
  }

  private static String list(List<String> names) {
    return names.isEmpty() ? "none" : String.join(", ", names);
  }

  /** The facts that sheets look at on the cases and on some random sites. */
  private static Set<String> sheets(Bench bench, Section.Gathering found) {
    List<AuditSite> sites = new ArrayList<>(bench.cases());
    RandomSites random = bench.randomSites(6);
    FactSet loads = FactSet.all(bench.dictionary().require(LOAD));
    for (String load : loads.words().stream().sorted().toList()) {
      for (int i = 0; i < SITES_PER_LOAD; i++) {
        Map<String, FactSet> given = Map.of(LOAD, FactSet.words(Set.of(load)));
        sites.add(new AuditSite("random", load, random.next(given)));
      }
    }
    SizingDesk desk = new SizingDesk();
    Set<String> looked = new HashSet<>();
    for (AuditSite one : sites) {
      for (Zone zone : one.site().zones()) {
        FactView view =
            bench.rules().complete(ZoneViews.known(one.site(), zone, bench.dictionary()));
        FactView cautious = ZoneViews.cautious(view);
        for (SupportOption option : SupportOption.values()) {
          FactReads reads = new FactReads();
          desk.quick(one.site(), zone.name(), view.noting(reads), option);
          found.tried(1);
          for (FactDefinition fact : bench.dictionary().all()) {
            Fact other = other(view.fact(fact.index()));
            if (!looked.contains(fact.name())
                && !reads.same(view.with(other), () -> cautious.with(other))) {
              looked.add(fact.name());
            }
          }
        }
      }
    }
    return looked;
  }

  /** The fact, otherwise. */
  private static Fact other(Fact fact) {
    return new Fact(fact.definition(), Origin.STATED, new FactValue.Choice("something else"), "");
  }

  private static void limits(RulePack pack, Section.Gathering found) {
    Set<String> used = new HashSet<>();
    for (Rule rule : pack.all()) {
      rule.conditions().stream()
          .filter(condition -> condition.operator().isNumeric())
          .forEach(condition -> used.add(condition.limitName()));
      Matcher matcher = LIMIT.matcher(rule.because() + rule.sentence());
      while (matcher.find()) {
        used.add(matcher.group(1));
      }
    }
    for (Limit limit : pack.limits().all()) {
      found.result(Method.PROVED);
      if (!used.contains(limit.name())) {
        found.defect(
            Defect.proved(
                NAME, List.of(limit.name()), "No rule names the limit " + limit.name() + "."));
      }
    }
  }

  private static void sources(RulePack pack, Section.Gathering found) {
    StringBuilder limits = new StringBuilder();
    pack.limits().all().forEach(limit -> limits.append(';').append(limit.source()));
    Set<String> cited = new HashSet<>();
    pack.all().forEach(rule -> rule.citations().forEach(citation -> cited.add(citation.key())));
    for (String part : limits.toString().split(";", -1)) {
      cited.add(part.strip().split(" ", 2)[0]);
    }
    pack.sources().keySet().stream()
        .sorted()
        .forEach(
            key -> {
              found.result(Method.PROVED);
              if (!cited.contains(key)) {
                found.defect(
                    Defect.proved(
                        NAME, List.of(key), "No rule and no limit cites the source " + key + "."));
              }
            });
  }

  private static void causes(RulePack pack, Section.Gathering found) {
    Set<String> used = new HashSet<>();
    pack.all().stream()
        .filter(rule -> rule.effect() != Effect.DERIVE)
        .forEach(rule -> used.add(rule.cause()));
    Set<Criterion> filled = new HashSet<>();
    pack.criteria().byCause().keySet().stream()
        .sorted()
        .forEach(
            cause -> {
              found.result(Method.PROVED);
              if (used.contains(cause)) {
                pack.criteria().find(cause).ifPresent(filled::add);
              } else {
                found.defect(
                    Defect.proved(
                        NAME, List.of(cause), "No rule speaks under the cause " + cause + "."));
              }
            });
    for (Criterion criterion : Criterion.values()) {
      if (!filled.contains(criterion)) {
        found.defect(
            Defect.proved(
                NAME,
                List.of(criterion.word()),
                "No rule speaks under the criterion " + criterion.word() + "."));
      }
    }
  }
}
