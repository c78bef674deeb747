package underhold.review.audit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import underhold.advice.Confirmation;
import underhold.advice.SupportOption;
import underhold.consult.trial.Outcome;
import underhold.consult.trial.Trials;
import underhold.site.FactDefinition;
import underhold.site.FactReader;
import underhold.site.FactValue;
import underhold.site.Site;
import underhold.site.StatedFact;
import underhold.site.Zone;

/** One site with one fact at each of its values in turn, the better first. */
final class Ladder {
  private final Bench bench;
  private final Tendency tendency;
  private final FactDefinition fact;
  private final List<FactValue> values;

  Ladder(Bench bench, Tendency tendency) {
    this.bench = bench;
    this.tendency = tendency;
    this.fact = bench.dictionary().require(tendency.fact());
    this.values = tendency.order().stream().map(typed -> value(fact, typed)).toList();
  }

  static FactValue value(FactDefinition fact, String typed) {
    return FactReader.read(fact, typed)
        .fold(
            value -> value,
            () -> {
              throw new IllegalArgumentException(fact.name() + " unknown");
            },
            rejected -> {
              throw new IllegalArgumentException(rejected.explanation());
            });
  }

  FactDefinition fact() {
    return fact;
  }

  List<FactValue> values() {
    return values;
  }

  /** What the expectation keeps to, with the changing fact at its best. */
  Map<String, FactSet> given() {
    Map<String, FactSet> given = new LinkedHashMap<>();
    tendency.given().forEach((name, typed) -> given.put(name, set(name, typed)));
    given.put(fact.name(), set(fact.name(), tendency.order().subList(0, 1)));
    return given;
  }

  private FactSet set(String name, List<String> typed) {
    FactDefinition definition = bench.dictionary().require(name);
    FactSet set = new FactSet(Set.of(), NumberSet.NONE, false);
    for (String text : typed) {
      FactValue value = value(definition, text);
      set =
          set.or(
              value instanceof FactValue.Amount amount
                  ? FactSet.numbers(
                      NumberSet.closed(amount.quantity().si(), amount.quantity().si()))
                  : FactSet.words(Set.of(value.text())));
    }
    return set;
  }

  /**
   * A rise that must not be.
   *
   * @param from the site before
   * @param to the site after
   * @param text what rises, in words
   */
  record Rise(Site from, Site to, String text) {}

  private record Rung(FactValue value, Site site, Outcome outcome) {}

  /** The first rise that the site shows, if any. */
  Optional<Rise> rise(Site base) {
    List<Rung> rungs = new ArrayList<>();
    for (FactValue value : values) {
      Site site = with(base, value);
      if (Trying.possible(site)) {
        Outcome outcome =
            new Trials(bench.rules(), site, Confirmation.NONE).of(site.zones().get(0));
        rungs.add(new Rung(value, site, outcome));
      }
    }
    for (int i = 0; i < rungs.size(); i++) {
      for (int j = i + 1; j < rungs.size(); j++) {
        for (SupportOption option : tendency.options()) {
          Optional<Rise> rise = rise(rungs.get(i), rungs.get(j), option);
          if (rise.isPresent()) {
            return rise;
          }
        }
      }
    }
    return Optional.empty();
  }

  private Optional<Rise> rise(Rung low, Rung high, SupportOption option) {
    Outcome.Placing before = low.outcome.of(option);
    Outcome.Placing after = high.outcome.of(option);
    String text = "";
    if (tendency.watched().standing() && !before.usable() && after.usable()) {
      text = option.id() + " is ruled out and then no longer";
    } else if (tendency.watched().score()
        && before.usable() // what is ruled out has no points to compare
        && after.usable()
        && after.score() > before.score()) {
      text = option.id() + " rises from " + points(before) + " to " + points(after);
    }
    return text.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new Rise(
                low.site,
                high.site,
                text
                    + " as "
                    + fact.name()
                    + " goes from "
                    + low.value.text()
                    + " to "
                    + high.value.text()));
  }

  private static String points(Outcome.Placing placing) {
    return String.valueOf((long) placing.score());
  }

  private Site with(Site base, FactValue value) {
    Zone zone = base.zones().get(0);
    Map<String, StatedFact> facts = new LinkedHashMap<>();
    for (FactDefinition definition : bench.dictionary().all()) {
      StatedFact stated =
          definition == fact ? new StatedFact(value, "") : zone.facts().get(definition.name());
      if (stated != null) {
        facts.put(definition.name(), stated);
      }
    }
    return new Site(
        base.name(),
        base.units(),
        base.facts(),
        base.ground(),
        List.of(new Zone(zone.name(), facts, zone.ground(), zone.note())),
        base.sizing(),
        base.note());
  }
}
