package underhold.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import underhold.advice.RulePack;
import underhold.advice.SupportOption;
import underhold.consult.turning.Goal;
import underhold.consult.turning.TurningPoint;
import underhold.consult.turning.TurningPoints;
import underhold.site.Site;

/** The turning points of the zones of a site. */
public final class TurningText {
  private static final int MARGIN = 2;
  private static final int MOST_SINGLES = 6;

  private final TextPage page;

  private TurningText(Look look) {
    this.page = new TextPage(look);
  }

  /** The turning points zone by zone, by the name of the zone. */
  public static String of(Site site, Map<String, TurningPoints> zones, RulePack pack, Look look) {
    TurningText text = new TurningText(look);
    boolean several = site.zones().size() > 1;
    zones.forEach(
        (zone, points) ->
            text.zone(
                site.name() + ": " + zone,
                points,
                new TurningSection(text.page, several ? zone : "")));
    text.page.blank();
    text.page.para(
        0,
        "Every change was tried on the whole advice, sizing included, with all other facts as they"
            + " are; what cannot be together is left out. Ground layers are not changed. Try one"
            + " yourself: what-if FACT=VALUE.");
    Program.foot(text.page, pack);
    return text.page.text();
  }

  private void zone(String title, TurningPoints points, TurningSection section) {
    page.heading(title);
    page.para(0, now(points) + " " + points.tried() + " single changes of fact were tried.");
    Goal goal = points.goal();
    if (goal != null && goal.met(points.base())) {
      page.para(0, Words.sentence(goal.option().label()) + " is first as it is.");
      return;
    }
    section("One fact that " + turns(goal), points.singles(), goal, section);
    if (points.singles().isEmpty()) {
      page.para(MARGIN, "No single fact " + turns(goal) + ".");
    }
    section("Two facts together that " + turns(goal), points.pairs(), goal, section);
    section("Three facts together that " + turns(goal), points.triples(), goal, section);
    if (!points.complete()) {
      page.para(MARGIN, "Not every combination was tried: there are too many.");
    }
  }

  private static String turns(@Nullable Goal goal) {
    if (goal == null) {
      return "would take the first place away";
    }
    return goal.first()
        ? "would put " + goal.option().label() + " first"
        : "would bring " + goal.option().label() + " back";
  }

  private static String now(TurningPoints points) {
    return points
        .base()
        .leader()
        .map(leader -> Words.sentence(leader.label()) + " first as it is.")
        .orElse("No clear choice as it is.");
  }

  private void section(
      String heading, List<TurningPoint> points, @Nullable Goal goal, TurningSection section) {
    if (points.isEmpty()) {
      return;
    }
    page.heading(heading);
    if (goal != null) {
      section.some(points, points.size());
      return;
    }
    Map<Optional<SupportOption>, List<TurningPoint>> groups = new LinkedHashMap<>();
    for (TurningPoint point : points) {
      groups.computeIfAbsent(point.after().leader(), key -> new ArrayList<>()).add(point);
    }
    groups.forEach(
        (leader, group) -> {
          page.tinted(
              Tint.STRONG, MARGIN, leader.map(TurningText::leads).orElse("Nothing would lead if"));
          section.some(group, MOST_SINGLES);
        });
  }

  private static String leads(SupportOption leader) {
    return Words.sentence(leader.label()) + " (" + leader.id() + ") would come first if";
  }
}
