package underhold.consult.stage;

import java.util.List;
import java.util.Optional;
import underhold.quantity.Quantity;
import underhold.site.FactView;
import underhold.sizing.Amount;
import underhold.sizing.Setting;
import underhold.sizing.Settings;
import underhold.sizing.Sheet;

/**
 * How long the stages of a zone take: by the zone's own sheet where it gives a time, else by a
 * named default. Work from a live track goes by night closures, each step of load below live rail
 * by a closure of its own.
 */
final class Timing {
  /** Times that the sheets give, by the names they give them. */
  static final String NIGHTS = "all piles, night closures";

  static final String SHIFTS = "all piles, shifts";
  static final String BRACKET_DRILLING = "drilling and grouting, one rig";
  static final String BRACKET_CURE = "curing before load";
  static final String BRACKET_FITTING = "fitting and preloading";
  static final String NEEDLES_SET = "working days to set needles and seats";
  static final String NEEDLES_LOAD = "working days of load transfer";
  static final String NEEDLES_BACK = "working days to return the load";

  static final String WATCH_BEFORE = "before any work";
  static final String WATCH_DURING = "during the work";
  static final String WATCH_AFTER = "after the work";

  private static final double HOURS_PER_DAY = 24;
  private static final double HOURS_PER_WEEK = 168;
  private static final double WORKING_DAYS_PER_WEEK = 5;

  private final Settings settings;
  private final FactView facts;
  private final List<Sheet> sheets;

  /**
   * Times of one zone.
   *
   * @param sheets those that may give a time, the method's own first
   */
  Timing(Settings settings, FactView facts, List<Sheet> sheets) {
    this.settings = settings;
    this.facts = facts;
    this.sheets = List.copyOf(sheets);
  }

  /** A default, with its name, so that it can be changed. */
  StageTime setting(Setting setting) {
    return new StageTime(settings.get(setting), setting.name() + ", judgement");
  }

  /** Drilling the piles of the zone. */
  StageTime drilling() {
    Optional<Double> nights = item(NIGHTS);
    if (nights.isPresent()) {
      return new StageTime(nights.get(), "night closures, by the sheet");
    }
    Optional<Double> shifts = item(SHIFTS);
    if (shifts.isPresent()) {
      return new StageTime(shifts.get(), "shifts, by the sheet");
    }
    Optional<Double> hours = item(BRACKET_DRILLING);
    if (hours.isPresent()) {
      double shift = byNight() ? nightHours() : settings.get(PlanSettings.SHIFT);
      return new StageTime(
          Math.ceil(hours.get() / shift - 1e-9),
          (byNight() ? "night closures" : "shifts")
              + ", from the hours of the sheet and shift-hours, judgement");
    }
    return setting(PlanSettings.DRILL);
  }

  /** Hardening and testing of bracket piles. */
  StageTime cure() {
    return item(BRACKET_CURE)
        .map(hours -> new StageTime(hours / HOURS_PER_DAY, "days of 24 h, by the sheet"))
        .orElseGet(() -> setting(PlanSettings.BUILD));
  }

  /** Building a part of the support: as many parts share what the sheet gives for all. */
  StageTime building(int parts) {
    Optional<Double> fitting = item(BRACKET_FITTING);
    if (fitting.isPresent()) {
      double shift = byNight() ? nightHours() : settings.get(PlanSettings.SHIFT);
      return new StageTime(
          Math.ceil(fitting.get() / shift - 1e-9), "fitting and preloading, by the sheet");
    }
    return item(NEEDLES_SET)
        .map(days -> new StageTime(days / parts, "share of the sheet's days for needles and seats"))
        .orElseGet(() -> setting(PlanSettings.BUILD).and(setting(PlanSettings.HARDEN)));
  }

  /** Trials before the work; a trial pile hardens before it is tested. */
  StageTime preparing(boolean trialPile) {
    StageTime usual = setting(PlanSettings.PREPARE);
    if (!trialPile) {
      return usual;
    }
    StageTime hardening =
        item(BRACKET_CURE)
            .map(hours -> new StageTime(hours / HOURS_PER_DAY, "hardening by the sheet"))
            .orElseGet(() -> setting(PlanSettings.HARDEN));
    return usual.and(hardening);
  }

  /**
   * Baseline readings of a zone that is only watched: what the sheet asks, less the days in which
   * the survey of the whole site has read them already.
   */
  StageTime baseline() {
    StageTime asked = weeks(WATCH_BEFORE, PlanSettings.PREPARE);
    return item(WATCH_BEFORE).isPresent()
        ? new StageTime(
            Math.max(0, asked.days() - settings.get(PlanSettings.SURVEY)),
            asked.source() + ", less survey-days")
        : asked;
  }

  /**
   * One step of load, or one of the stages between the last step and the release; of the sheet's
   * days of transfer the lock-off takes its own.
   */
  StageTime step(int steps) {
    if (closureForEachStep()) {
      return new StageTime(1, "a night closure for each step, load-by-closure, judgement");
    }
    double lockOff = settings.get(PlanSettings.LOCK_OFF);
    return item(NEEDLES_LOAD)
        .map(
            days ->
                new StageTime(
                    (days > lockOff ? days - lockOff : days) / steps,
                    "share of the sheet's days of load transfer, its lock-off apart"))
        .orElseGet(() -> setting(PlanSettings.STEP));
  }

  /** A time in weeks of a sheet of watching, five working days each; else a default. */
  StageTime weeks(String name, Setting fallback) {
    return item(name)
        .map(
            hours ->
                new StageTime(
                    hours / HOURS_PER_WEEK * WORKING_DAYS_PER_WEEK,
                    "weeks of five days, by the sheet"))
        .orElseGet(() -> setting(fallback));
  }

  /** Handing the load back. */
  StageTime handBack() {
    return item(NEEDLES_BACK)
        .map(days -> new StageTime(days, "by the sheet"))
        .orElseGet(() -> setting(PlanSettings.RETURN));
  }

  /** Drawing the needles, which the sheet counts among its days of return. */
  StageTime needlesOut() {
    return item(NEEDLES_BACK).isPresent()
        ? new StageTime(0, "within the sheet's days of return")
        : setting(PlanSettings.REMOVE);
  }

  /** Whether the zone is drilled from a live track, in closures only. */
  private boolean byNight() {
    return facts.word("pilesFromTrackOnly").filter("yes"::equals).isPresent()
        && night().filter(hours -> hours > settings.get(PlanSettings.NIGHT_LOSS)).isPresent();
  }

  private boolean closureForEachStep() {
    boolean live = facts.word("liveUse").filter("rail"::equals).isPresent();
    return live && night().isPresent() && settings.get(PlanSettings.TRACK_STEPS).equals("yes");
  }

  private double nightHours() {
    double night = night().orElse(0.0) - settings.get(PlanSettings.NIGHT_LOSS);
    return Math.min(night, settings.get(PlanSettings.SHIFT));
  }

  private Optional<Double> night() {
    return facts.amount("nightClosure").map(Quantity::si);
  }

  private Optional<Double> item(String name) {
    return sheets.stream()
        .flatMap(one -> one.time().stream())
        .filter(item -> item.name().equals(name))
        .map(item -> item.amount())
        .map(Amount::si)
        .findFirst();
  }
}
