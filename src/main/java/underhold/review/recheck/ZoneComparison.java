package underhold.review.recheck;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import underhold.review.saved.SavedFact;
import underhold.review.saved.SavedFinding;
import underhold.review.saved.SavedFirmness;
import underhold.review.saved.SavedHold;
import underhold.review.saved.SavedOption;
import underhold.review.saved.SavedZone;

/** What two answers to one zone differ in. */
final class ZoneComparison {
  private static final List<String> DUTIES = List.of("require", "caution");

  private final SavedZone was;
  private final SavedZone now;
  private final String leader;
  private final List<Difference> found = new ArrayList<>();

  private ZoneComparison(SavedZone was, SavedZone now) {
    this.was = was;
    this.now = now;
    this.leader = was.leader().map(SavedOption::id).orElse("");
  }

  static ZoneRecheck of(SavedZone was, SavedZone now) {
    return new ZoneComparison(was, now).run();
  }

  private ZoneRecheck run() {
    String leads = now.leader().map(SavedOption::id).orElse("");
    if (!leads.equals(leader)) {
      found.add(Difference.worse(Topic.LEADER, "leader", was.line(), now.line()));
    } else if (!tied(was).equals(tied(now))) {
      boolean more = !tied(was).containsAll(tied(now));
      found.add(
          new Difference(
              Topic.TIE,
              "tied with the leader",
              String.join(", ", tied(was)),
              String.join(", ", tied(now)),
              more));
    }
    Pairs.of(was.options(), now.options(), SavedOption::id).forEach(this::option);
    ranks();
    Pairs.of(was.findings(), now.findings(), SavedFinding::rule).forEach(this::finding);
    Pairs.of(was.facts(), now.facts(), SavedFact::name).forEach(this::fact);
    if (!was.questions().equals(now.questions())) {
      add(
          Topic.QUESTION,
          "open questions",
          String.join(", ", was.questions()),
          String.join(", ", now.questions()));
    }
    if (!was.firmness().equals(now.firmness())) {
      add(Topic.FIRMNESS, "times first", firmness(was), firmness(now));
    }
    found.sort(Comparator.comparing(Difference::topic));
    return new ZoneRecheck(was.name(), was.line(), now.line(), stand(leads), found);
  }

  private Stand stand(String leads) {
    if (found.isEmpty()) {
      return Stand.IDENTICAL;
    }
    if (!leads.equals(leader)) {
      return Stand.FALLEN;
    }
    return found.stream().anyMatch(Difference::worse) ? Stand.LOOK_AGAIN : Stand.STANDS;
  }

  private static List<String> tied(SavedZone zone) {
    return zone.options().stream().filter(SavedOption::tied).map(SavedOption::id).sorted().toList();
  }

  private void option(Pairs<SavedOption> pair) {
    if (!pair.both()) {
      add(
          Topic.STANDING,
          pair.name(),
          pair.textWas(SavedOption::line),
          pair.textNow(SavedOption::line));
      return;
    }
    SavedOption before = pair.was().orElseThrow();
    SavedOption after = pair.now().orElseThrow();
    if (!before.standing().equals(after.standing())) {
      add(Topic.STANDING, pair.name(), before.standing(), after.standing());
    }
    if (before.score() != after.score()) {
      String one = SavedOption.points(before.score());
      String other = SavedOption.points(after.score());
      add(Topic.POINTS, pair.name(), one, other);
    }
    for (Pairs<SavedHold> hold : Pairs.of(before.holds(), after.holds(), SavedHold::rule)) {
      if (!hold.was().equals(hold.now())) {
        add(
            Topic.HOLD,
            pair.name() + ", " + hold.name(),
            hold.textWas(SavedHold::explanation),
            hold.textNow(SavedHold::explanation));
      }
    }
    found.addAll(
        SheetComparison.of(pair.name(), before.sheet(), after.sheet(), pair.name().equals(leader)));
  }

  /** The order is told once, not option by option: one that moves up moves others down. */
  private void ranks() {
    String before = order(was);
    String after = order(now);
    if (!before.equals(after)) {
      add(Topic.RANK, "order", before, after);
    }
  }

  private static String order(SavedZone zone) {
    return zone.options().stream().map(SavedOption::id).collect(Collectors.joining(" > "));
  }

  private void finding(Pairs<SavedFinding> pair) {
    if (!pair.both()) {
      SavedFinding one = pair.was().or(pair::now).orElseThrow();
      found.add(
          new Difference(
              Topic.FINDING,
              pair.name(),
              pair.textWas(SavedFinding::line),
              pair.textNow(SavedFinding::line),
              pair.now().isPresent() && DUTIES.contains(one.effect()) && concernsLeader(one)));
      return;
    }
    SavedFinding before = pair.was().orElseThrow();
    SavedFinding after = pair.now().orElseThrow();
    if (!before.head().equals(after.head())) {
      boolean duty = DUTIES.contains(after.effect()) && concernsLeader(after);
      found.add(new Difference(Topic.FINDING, pair.name(), before.line(), after.line(), duty));
    } else if (!before.equals(after)) {
      boolean words = !before.because().equals(after.because());
      add(
          Topic.FINDING_TEXT,
          pair.name(),
          words ? before.because() : rest(before),
          words ? after.because() : rest(after));
    }
  }

  private boolean concernsLeader(SavedFinding finding) {
    return finding.options().isEmpty() || finding.options().contains(leader);
  }

  /** Where the words are the same: what they rest on. */
  private static String rest(SavedFinding finding) {
    String limits =
        finding.limits().stream()
            .map(limit -> limit.label() + " " + limit.value() + " (" + limit.from() + ")")
            .collect(Collectors.joining(", "));
    String facts =
        finding.facts().stream()
            .map(fact -> fact.label() + " " + fact.value() + " (" + fact.from() + ")")
            .collect(Collectors.joining(", "));
    return String.join(
        "; ",
        List.of(finding.basis(), finding.source(), facts, limits).stream()
            .filter(text -> !text.isEmpty())
            .toList());
  }

  private void fact(Pairs<SavedFact> pair) {
    if (!pair.was().equals(pair.now())) {
      boolean sameLine =
          pair.both() && pair.textWas(SavedFact::line).equals(pair.textNow(SavedFact::line));
      add(
          Topic.FACT,
          pair.name(),
          pair.textWas(sameLine ? SavedFact::how : SavedFact::line),
          pair.textNow(sameLine ? SavedFact::how : SavedFact::line));
    }
  }

  private static String firmness(SavedZone zone) {
    Optional<SavedFirmness> firmness = zone.firmness();
    return firmness.map(one -> one.line() + " of " + one.draws() + " draws").orElse("");
  }

  private void add(Topic topic, String subject, String one, String other) {
    found.add(Difference.of(topic, subject, one, other));
  }
}
