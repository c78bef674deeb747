package underhold.review.recheck;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import underhold.review.saved.SavedAdvice;
import underhold.review.saved.SavedAmount;
import underhold.review.saved.SavedPlan;
import underhold.review.saved.SavedScheme;
import underhold.review.saved.SavedStage;

/** What two answers differ in over all zones: the scheme and the plan. */
final class WholeComparison {
  private final List<Difference> found = new ArrayList<>();

  private WholeComparison() {}

  static List<Difference> of(SavedAdvice was, SavedAdvice now) {
    WholeComparison comparison = new WholeComparison();
    comparison.scheme(was.scheme(), now.scheme());
    comparison.plan(was.plan(), now.plan());
    comparison.found.sort(Comparator.comparing(Difference::topic));
    return comparison.found;
  }

  private void scheme(SavedScheme was, SavedScheme now) {
    if (was.reason().isEmpty() && !now.reason().isEmpty()) {
      found.add(Difference.worse(Topic.SCHEME, "scheme", was.line(), now.line()));
      return;
    }
    if (!was.line().equals(now.line())) {
      found.add(Difference.worse(Topic.SCHEME, "methods together", was.line(), now.line()));
    }
    if (was.held() != now.held()) {
      found.add(
          new Difference(Topic.HOLD, "scheme", held(was.held()), held(now.held()), now.held()));
    }
    if (!was.primary().equals(now.primary())) {
      add(Topic.SCHEME, "primary", was.primary(), now.primary());
    }
    if (was.points() != now.points()) {
      add(Topic.POINTS, "scheme", String.valueOf(was.points()), String.valueOf(now.points()));
    }
    Pairs.of(
            was.findings(),
            now.findings(),
            one -> one.rule() + ", " + one.first() + " and " + one.second())
        .forEach(
            pair -> {
              if (!pair.was().equals(pair.now())) {
                add(
                    Topic.FINDING,
                    pair.name(),
                    pair.textWas(SavedScheme.Between::because),
                    pair.textNow(SavedScheme.Between::because));
              }
            });
  }

  private static String held(boolean held) {
    return held ? "held by an open rule between zones" : "not held";
  }

  private void plan(SavedPlan was, SavedPlan now) {
    if (!was.problems().equals(now.problems())) {
      found.add(
          new Difference(
              Topic.PLAN,
              "plan",
              refused(was),
              refused(now),
              was.problems().isEmpty() && !now.problems().isEmpty()));
    }
    if (!SavedAmount.same(was.days(), now.days())) {
      add(Topic.STAGE, "working days in all", days(was.days()), days(now.days()));
    }
    Pairs.of(was.stages(), now.stages(), SavedStage::id).forEach(this::stage);
    if (!was.criticalPath().equals(now.criticalPath())) {
      add(
          Topic.STAGE,
          "critical path",
          String.join(" > ", was.criticalPath()),
          String.join(" > ", now.criticalPath()));
    }
    if (!was.settings().equals(now.settings())) {
      add(Topic.INPUT, "settings of stages", was.settings().toString(), now.settings().toString());
    }
  }

  private static String refused(SavedPlan plan) {
    return plan.problems().isEmpty() ? "made" : "none: " + String.join("; ", plan.problems());
  }

  private void stage(Pairs<SavedStage> pair) {
    if (!pair.both()) {
      add(Topic.STAGE, pair.name(), pair.textWas(SavedStage::line), pair.textNow(SavedStage::line));
      return;
    }
    SavedStage was = pair.was().orElseThrow();
    SavedStage now = pair.now().orElseThrow();
    boolean sameTime =
        SavedAmount.same(was.days(), now.days()) && SavedAmount.same(was.start(), now.start());
    boolean sameLinks = was.after().equals(now.after());
    if (!sameTime || !was.title().equals(now.title()) || !was.method().equals(now.method())) {
      add(Topic.STAGE, pair.name(), times(was), times(now));
    }
    if (!sameLinks) {
      add(
          Topic.STAGE,
          pair.name() + " comes after",
          String.join(", ", was.after()),
          String.join(", ", now.after()));
    }
  }

  private static String times(SavedStage stage) {
    return stage.line() + ", from day " + days(stage.start());
  }

  private static String days(double days) {
    return days == Math.rint(days)
        ? String.valueOf((long) days)
        : String.format(Locale.ROOT, "%.2f", days);
  }

  private void add(Topic topic, String subject, String was, String now) {
    found.add(Difference.of(topic, subject, was, now));
  }
}
