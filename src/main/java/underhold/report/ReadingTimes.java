package underhold.report;

import java.util.List;
import java.util.Map;
import underhold.quantity.UnitSystem;
import underhold.site.Site;
import underhold.sizing.Amount;
import underhold.sizing.Setting;
import underhold.sizing.Settings;
import underhold.sizing.monitoring.MonitoringMethod;

/**
 * How often points are read by the settings of the sheet of watching: those in the site's file,
 * else its defaults. The plan of stages asks no less than that sheet, so that one package never
 * says two things.
 */
public final class ReadingTimes {
  private static final MonitoringMethod METHOD = new MonitoringMethod();
  private static final double DAY = 24;
  private static final double WEEK = 7 * DAY;

  private final Settings settings;
  private final UnitSystem units;

  private ReadingTimes(Settings settings, UnitSystem units) {
    this.settings = settings;
    this.units = units;
  }

  /** The times of a site. */
  public static ReadingTimes of(Site site) {
    List<String> filed =
        site.sizing().getOrDefault(METHOD.id(), Map.of()).entrySet().stream()
            .map(entry -> entry.getKey() + "=" + entry.getValue())
            .toList();
    return new ReadingTimes(METHOD.settings().parse(filed).settings(), site.units());
  }

  /** The readings before any work. */
  String before() {
    return text("baseline-sets") + " sets over " + text("baseline-time") + " at least";
  }

  /** The longest time between readings while work goes on. */
  public String during() {
    return "every " + text("work-interval") + " at least";
  }

  /** The same, a day where the sheet would allow more. */
  String daily() {
    return hours("work-interval") > DAY ? "daily" : during();
  }

  /** The same, a week where the sheet would allow more. */
  String weekly() {
    return hours("work-interval") > WEEK ? "weekly at least" : during();
  }

  /** The readings after the work. */
  String after() {
    return "every " + text("after-interval") + " for " + text("after-time") + " at least";
  }

  /** The level at which work stops, as a share of the limit that governs. */
  double stopShare() {
    return amount("stop-share").si();
  }

  private double hours(String name) {
    return amount(name).si();
  }

  private String text(String name) {
    return amount(name).in(units);
  }

  private Amount amount(String name) {
    Setting setting =
        METHOD
            .settings()
            .number(name)
            .orElseThrow(() -> new IllegalStateException("the sheet of watching has no " + name));
    return settings.amount(setting);
  }
}
