package underhold.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import underhold.consult.ZoneAdvice;
import underhold.consult.scheme.Scheme;
import underhold.consult.stage.Place;
import underhold.consult.stage.PlanStage;
import underhold.consult.stage.StageKind;
import underhold.consult.stage.StagePlan;
import underhold.quantity.UnitSystem;
import underhold.sizing.Amount;

/** What the views of a plan have in common: words for days, zones, open ground, readings. */
public final class Stages {
  private static final int LETTERS = 26;

  /** Stages in which jacks may lift the structure. */
  private static final Set<StageKind> JACKING =
      Set.of(StageKind.LOAD, StageKind.ACCEPT, StageKind.HAND_BACK);

  private Stages() {}

  /** The letter of a zone: A for the first of the site. */
  public static String letter(Scheme scheme, String zone) {
    for (int i = 0; i < scheme.best().zones().size(); i++) {
      if (scheme.best().zones().get(i).name().equals(zone)) {
        return String.valueOf((char) ('A' + i % LETTERS));
      }
    }
    return "-";
  }

  /** Days to a tenth, without a needless nought. */
  public static String days(double days) {
    String text = String.format(Locale.ROOT, "%.1f", days);
    return text.endsWith(".0") ? text.substring(0, text.length() - 2) : text;
  }

  /** Where a stage lies. */
  public static String zone(PlanStage stage) {
    return stage.zone().isEmpty() ? "whole site" : stage.zone();
  }

  /** What is open or bare while the stage goes on. */
  public static String open(StagePlan plan, PlanStage stage) {
    UnitSystem units = plan.scheme().site().units();
    List<String> open = new ArrayList<>();
    List<Place> pits = stage.moves().spans().stream().filter(p -> p.number() > 0).toList();
    if (!pits.isEmpty()) {
      open.add(
          pits.stream().map(Place::name).collect(Collectors.joining(", "))
              + ": "
              + length(stage.moves().openMetres(), units)
              + plan.limit(stage.zone())
                  .map(
                      limit ->
                          " of "
                              + length(limit.wallMetres(), units)
                              + (pits.size() > 1
                                  ? ", where " + length(limit.metres(), units) + " may be"
                                  : ", one pit alone"))
                  .orElse(""));
    }
    stage.moves().spans().stream()
        .filter(place -> place.number() == 0)
        .forEach(place -> open.add(place.name()));
    stage.moves().undermines().forEach(place -> open.add("ground below or beside " + place.name()));
    if (open.isEmpty() && stage.kind() == StageKind.DIG) {
      open.add("the face of the lift");
    }
    return open.isEmpty() ? "nothing" : String.join("; ", open);
  }

  private static String length(double metres, UnitSystem units) {
    return Amount.length(metres).in(units);
  }

  /**
   * The readings in force: what the stage itself asks, and no less than the sheet of watching asks
   * of any work.
   */
  public static String watch(StagePlan plan, PlanStage stage) {
    ReadingTimes times = ReadingTimes.of(plan.scheme().site());
    String always = ", and " + times.during();
    String when =
        switch (stage.kind()) {
          case SURVEY, DECIDE -> "baseline sets until steady, " + times.before();
          case PREPARE ->
              "baseline sets go on until steady; with those of the survey, " + times.before();
          case DRILL -> "structure and ground levels before and after each pile" + always;
          case LOAD, ACCEPT, HAND_BACK -> "structure, supports and jacks at each step" + always;
          case PITS -> "levels and cracks at the start of each shift and after each pit" + always;
          case DIG -> "all points before and after each lift" + always;
          case WATER -> "piezometers and levels " + times.daily();
          case REMOVE -> "all points after each part taken out" + always;
          case BUILD, CLOSE, LASTING, RENEW -> "all points as the work goes on, " + times.weekly();
          case AFTER, REINSTATE -> "all points until steady, " + times.after();
        };
    return when + limit(plan, stage);
  }

  private static String limit(StagePlan plan, PlanStage stage) {
    if (stage.zone().isEmpty()) {
      return "";
    }
    ZoneAdvice zone = plan.scheme().best().of(stage.zone()).zone();
    return MovementLevels.of(plan.scheme().site(), zone)
        .stop(
            JACKING.contains(stage.kind())
                ? stage.method().flatMap(method -> MovementLevels.lift(zone, method))
                : Optional.empty());
  }
}
