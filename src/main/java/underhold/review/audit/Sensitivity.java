package underhold.review.audit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import underhold.advice.Confirmation;
import underhold.advice.Limit;
import underhold.advice.Points;
import underhold.advice.Rule;
import underhold.advice.Strength;
import underhold.consult.trial.Trials;
import underhold.site.FactView;
import underhold.site.Site;
import underhold.site.Zone;
import underhold.site.ZoneViews;

/**
 * Which limit and which weight turns how many first places: each moved by itself, a limit to the
 * ends of its plausible range or, where none is stated, a fifth down and up; a weight a quarter
 * down and up. A limit of zero that has no range is a matter of definition and stays. First places
 * are those of the rules, before sheets take points away, and only equal scores tie.
 */
final class Sensitivity implements Analysis {
  static final String NAME = "sensitivity";
  private static final double LIMIT_SHARE = 0.2;
  private static final double WEIGHT_SHARE = 0.25;
  private static final int SITES_PER_TRIES = 10;
  private static final int SHOWN = 15;

  @Override
  public String name() {
    return NAME;
  }

  /** A zone of a site with what is known of it. */
  private record Tried(boolean random, FactView view, Trials trials, String leader) {}

  private record Turned(String what, int cases, int random) {
    int all() {
      return cases + random;
    }
  }

  @Override
  public Section run(Bench bench) {
    Section.Gathering found =
        new Section.Gathering(NAME, "Which limit and which weight turns how many first places?");
    Points points = Points.of(bench.pack().weights());
    List<Tried> zones = zones(bench, points);
    List<Turned> turned = new ArrayList<>();
    int still = 0;
    for (Limit limit : moved(bench)) {
      for (double value : ends(limit)) {
        var rules = bench.rules().with(Map.of(limit.name(), value));
        Turned one =
            turned(
                limit.name() + (value < limit.si() ? " down" : " up"),
                zones,
                found,
                tried -> tried.trials.by(rules, points),
                limit.name(),
                bench);
        found.result(Method.COUNTED);
        if (one.all() > 0) {
          turned.add(one);
        } else {
          still++;
        }
      }
    }
    limits(turned, still, zones, found);
    weights(bench, points, zones, found);
    return found.done();
  }

  private static List<Tried> zones(Bench bench, Points points) {
    List<Tried> zones = new ArrayList<>();
    for (AuditSite one : bench.cases()) {
      one.site().zones().forEach(zone -> zones.add(tried(false, one.site(), zone, bench, points)));
    }
    RandomSites random = bench.randomSites(9);
    for (int i = 0; i < Math.max(1, bench.effort().tries() / SITES_PER_TRIES); i++) {
      Site site = random.next();
      zones.add(tried(true, site, site.zones().get(0), bench, points));
    }
    return zones;
  }

  private static Tried tried(boolean random, Site site, Zone zone, Bench bench, Points points) {
    Trials trials = new Trials(bench.rules(), site, Confirmation.NONE).by(bench.rules(), points);
    FactView known = ZoneViews.known(site, zone, bench.dictionary());
    return new Tried(random, known, trials, leader(trials, bench.rules().complete(known)));
  }

  private static String leader(Trials trials, FactView view) {
    return trials.of(view, Set.of()).leaderId();
  }

  private static List<Limit> moved(Bench bench) {
    Map<String, Limit> read = new LinkedHashMap<>();
    for (Rule rule : bench.pack().rules()) {
      rule.conditions().stream()
          .filter(condition -> condition.operator().isNumeric())
          .map(condition -> bench.pack().limits().require(condition.limitName()))
          .filter(limit -> limit.si() != 0 || !limit.plausible().isEmpty())
          .forEach(limit -> read.put(limit.name(), limit));
    }
    return List.copyOf(read.values());
  }

  private static List<Double> ends(Limit limit) {
    if (!limit.plausible().isEmpty()) {
      return limit.plausible().stream()
          .map(quantity -> quantity.si())
          .filter(value -> value != limit.si())
          .toList();
    }
    return List.of(limit.si() * (1 - LIMIT_SHARE), limit.si() * (1 + LIMIT_SHARE));
  }

  private interface Moved {
    Trials of(Tried tried);
  }

  private static Turned turned(
      String what,
      List<Tried> zones,
      Section.Gathering found,
      Moved moved,
      String limit,
      Bench bench) {
    int cases = 0;
    int random = 0;
    for (Tried tried : zones) {
      if (!matters(limit, tried.view, bench)) {
        continue;
      }
      Trials trials = moved.of(tried);
      found.tried(1);
      if (!leader(trials, trials.rules().complete(tried.view)).equals(tried.leader)) {
        random += tried.random ? 1 : 0;
        cases += tried.random ? 0 : 1;
      }
    }
    return new Turned(what, cases, random);
  }

  /** Whether any fact compared with the limit is known; every weight matters. */
  private static boolean matters(String limit, FactView view, Bench bench) {
    return limit.isEmpty()
        || bench.pack().rules().stream()
            .flatMap(rule -> rule.conditions().stream())
            .filter(c -> c.operator().isNumeric() && c.limitName().equals(limit))
            .anyMatch(c -> view.number(c.index()) != null);
  }

  private static void limits(
      List<Turned> turned, int still, List<Tried> zones, Section.Gathering found) {
    long cases = zones.stream().filter(tried -> !tried.random).count();
    List<Turned> most =
        turned.stream().sorted(Comparator.comparingInt(Turned::all).reversed()).toList();
    found.note(
        "Of "
            + cases
            + " zones of the cases and "
            + (zones.size() - cases)
            + " random sites, first places turned by one limit (cases + random): "
            + String.join(
                ", ",
                most.stream()
                    .limit(SHOWN)
                    .map(one -> one.what + " " + one.cases + " + " + one.random)
                    .toList())
            + (most.size() > SHOWN ? ", and " + (most.size() - SHOWN) + " that turn fewer" : "")
            + "; "
            + still
            + " moves turn none.");
    most.stream()
        .filter(one -> one.cases > 0)
        .max(Comparator.comparingInt(Turned::cases))
        .ifPresent(
            one ->
                found.note(
                    "The limit that turns most of the cases: "
                        + one.what
                        + " ("
                        + one.cases
                        + " of "
                        + cases
                        + ")."));
  }

  private static void weights(
      Bench bench, Points points, List<Tried> zones, Section.Gathering found) {
    List<String> turns = new ArrayList<>();
    for (Strength strength : Strength.values()) {
      for (double share : new double[] {1 - WEIGHT_SHARE, 1 + WEIGHT_SHARE}) {
        Points other = moved(points, strength, share);
        Turned one =
            turned("", zones, found, tried -> tried.trials.by(bench.rules(), other), "", bench);
        found.result(Method.COUNTED);
        turns.add(
            strength.word() + (share < 1 ? " down " : " up ") + one.cases + " + " + one.random);
      }
    }
    found.note("By one weight, a quarter down or up: " + String.join(", ", turns) + ".");
  }

  private static Points moved(Points points, Strength strength, double share) {
    ToDoubleFunction<Strength> of = one -> points.of(one) * (one == strength ? share : 1);
    return new Points(
        of.applyAsDouble(Strength.DECISIVE),
        of.applyAsDouble(Strength.MAJOR),
        of.applyAsDouble(Strength.MODERATE),
        of.applyAsDouble(Strength.MINOR));
  }
}
