package underhold.report;

import java.util.List;
import java.util.Optional;
import underhold.advice.SupportOption;
import underhold.consult.trial.Outcome;
import underhold.consult.turning.Change;
import underhold.consult.turning.Goal;
import underhold.consult.turning.TurningPoint;
import underhold.consult.turning.TurningPoints;

/** Turning points on a page. */
final class TurningSection {
  private static final int MARGIN = 2;
  private static final int MARK = 3;
  private static final int DEEPER = 5;
  private static final int DETAIL = 4;
  private static final int MOST_WAYS = 4;

  private final TextPage page;
  private final String zoneOption;

  /**
   * A section on a page.
   *
   * @param zone the zone that the commands to try must name; empty where the site has but one
   */
  TurningSection(TextPage page, String zone) {
    this.page = page;
    this.zoneOption = zone.isEmpty() ? "" : " --zone \"" + zone + "\"";
  }

  /** The cheapest ways to bring an option back, or to put it first. */
  void ways(TurningPoints points) {
    Goal goal = points.goal();
    if (goal == null) {
      return;
    }
    String aim = goal.first() ? "put it first" : "bring it back";
    page.heading("The smallest changes that would " + aim);
    if (points.all().isEmpty()) {
      page.para(MARGIN, "No change of up to three facts was found that would " + aim + ".");
      return;
    }
    for (TurningPoint point : points.all().stream().limit(MOST_WAYS).toList()) {
      point(point);
      if (!goal.first()) {
        page.para(DEEPER, then(point.after(), goal.option()));
      }
    }
    int more = points.all().size() - MOST_WAYS;
    if (more > 0) {
      page.para(MARGIN, "and " + more + " more in JSON (--json).");
    }
  }

  /** Where an option would stand that is back. */
  private static String then(Outcome after, SupportOption option) {
    Outcome.Placing placing = after.of(option);
    String state = placing.state() == Outcome.State.HELD ? "held" : "in rank";
    String leader =
        after
            .leader()
            .map(first -> first == option ? "it leads" : first.label() + " first")
            .orElse("no clear choice");
    return "Then "
        + state
        + ", score "
        + Words.score((int) Math.round(placing.score()))
        + "; "
        + leader
        + ".";
  }

  /** Some turning points, and the facts of the others. */
  void some(List<TurningPoint> points, int most) {
    List<TurningPoint> near =
        TurningWords.merged(points.stream().filter(point -> !point.farFetched()).toList());
    near.stream().limit(most).forEach(this::point);
    List<TurningPoint> rest = points.stream().filter(TurningPoint::farFetched).toList();
    if (!rest.isEmpty()) {
      page.para(MARGIN, "Only with amounts quite other than stated: " + names(rest) + ".");
    }
    if (near.size() > most) {
      page.para(MARGIN, "And by other values of: " + names(near.subList(most, near.size())) + ".");
    }
  }

  private static String names(List<TurningPoint> points) {
    return String.join(
        ", ",
        points.stream()
            .flatMap(point -> point.changes().stream())
            .map(change -> change.fact().name())
            .distinct()
            .toList());
  }

  private void point(TurningPoint point) {
    page.item(MARGIN, "-", MARK, TurningWords.of(point) + ".");
    TurningWords.follows(point).ifPresent(words -> page.para(DEEPER, Words.sentence(words) + "."));
    tie(point).ifPresent(words -> page.para(DEEPER, words));
    if (point.changes().stream().anyMatch(Change::decided)) {
      page.para(DEEPER, "This is a decision, or another job; no survey finds it.");
    }
    TurningWords.fails(point).ifPresent(words -> page.para(DEEPER, words));
    TurningWords.reasons(point)
        .forEach(words -> page.item(Tint.QUIET, DEEPER, "why", DETAIL, words));
    page.item(Tint.QUIET, DEEPER, "try", DETAIL, "what-if " + typed(point.changes()) + zoneOption);
  }

  /** Whether the first place is only one of a tie. */
  private static Optional<String> tie(TurningPoint point) {
    List<SupportOption> leaders = point.after().leaders();
    return leaders.size() < 2
        ? Optional.empty()
        : Optional.of(
            "Only in a tie, with "
                + Words.list(leaders.stream().skip(1).map(SupportOption::label).toList())
                + ".");
  }

  private static String typed(List<Change> changes) {
    return String.join(" ", changes.stream().map(TurningWords::typed).toList());
  }
}
