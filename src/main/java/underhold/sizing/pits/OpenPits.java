package underhold.sizing.pits;

import java.util.List;
import underhold.sizing.Amount;
import underhold.sizing.Phrase;
import underhold.sizing.Setting;
import underhold.sizing.Settings;
import underhold.sizing.SheetBuilder;
import underhold.sizing.Verdict;
import underhold.sizing.pits.order.DiggingOrder;
import underhold.sizing.pits.order.DiggingPlan;
import underhold.sizing.pits.order.OrderRules;
import underhold.sizing.pits.order.PitRow;
import underhold.sizing.pits.order.PitTimes;

/**
 * The digging of pits of a given layout for another method: times, order and boards, as on the
 * sheet of pits and with the same settings.
 *
 * @param plan order and calendar
 * @param boardMetres thickness of the boards, actual
 * @param approachVolume soil of an approach pit, m3
 * @param boardArea boards of all pits and their approach pits, m2
 */
public record OpenPits(
    DiggingPlan plan, double boardMetres, double approachVolume, double boardArea) {

  /** Settings of pits that the digging reads. */
  private static final List<PitsSetting> READ =
      List.of(
          PitsSetting.CLEAR_PIT_WIDTHS,
          PitsSetting.OPEN_SHARE,
          PitsSetting.CREWS,
          PitsSetting.CREW_SIZE,
          PitsSetting.SHIFT,
          PitsSetting.DIG_RATE,
          PitsSetting.DIG_RATE_HEAVY,
          PitsSetting.DIG_SLOWDOWN,
          PitsSetting.CONCRETE_TIME,
          PitsSetting.DRY_PACK_WAIT,
          PitsSetting.DRY_PACK_TIME,
          PitsSetting.NEIGHBOUR_WAIT,
          PitsSetting.APPROACH_LENGTH,
          PitsSetting.APPROACH_WIDTH,
          PitsSetting.APPROACH_DEPTH,
          PitsSetting.ARCHING,
          PitsSetting.BOARD_LOSS,
          PitsSetting.BOARD_HEIGHT,
          PitsSetting.BOARD_DURATION,
          PitsSetting.BOARD_DEFLECTION,
          PitsSetting.BOARD_BEARING,
          PitsSetting.BULKING);

  /** The settings that the digging reads, for the table of the other method. */
  public static List<Setting> settings() {
    return READ.stream().map(PitsSetting::setting).toList();
  }

  /**
   * Writes the digging on a sheet.
   *
   * @param input input of pits, complete
   * @param settings settings of the other method, which hold those of {@link #settings} and the
   *     timber
   * @param row the pits
   * @param sheet the sheet
   */
  public static OpenPits write(PitsInput input, Settings settings, PitRow row, SheetBuilder sheet) {
    Settings own =
        PitsSettings.TABLE
            .defaults()
            .with(PitsSettings.TIMBER, settings.get(PitsSettings.TIMBER))
            .withNumbersOf(settings, settings());
    PitsCase site = PitsCase.of(input, new PitsSettings(own));
    Layout layout = new Layout(row);
    OrderRules rules =
        new OrderRules(
            site.get(PitsSetting.CLEAR_PIT_WIDTHS),
            site.get(site.openShare()),
            (int) Math.max(1, Math.floor(site.get(PitsSetting.CREWS))),
            OrderSection.times(site, sheet, layout));
    DiggingPlan plan = DiggingOrder.plan(row, rules);
    times(site, sheet, plan);
    double board = SheetingSection.write(site, sheet, layout, plan.rules().times().openDays());
    double depth = site.get(PitsFact.PIT_DEPTH);
    double approachDepth = site.get(PitsFact.FOUNDING_DEPTH) + site.approachBelowFooting();
    double approachRound =
        2 * (site.get(PitsSetting.APPROACH_LENGTH) + site.get(PitsSetting.APPROACH_WIDTH));
    double boards =
        row.count() * (2 * site.pierThickness() * depth + approachRound * approachDepth)
            + row.lengthMetres() * depth;
    return new OpenPits(plan, board, OrderSection.approach(site), boards);
  }

  private static void times(PitsCase site, SheetBuilder sheet, DiggingPlan plan) {
    PitTimes times = plan.rules().times();
    double shift = site.get(PitsSetting.SHIFT);
    sheet.time(
        "one pit, digging and concrete",
        Amount.hours(times.crewDays() * shift),
        Phrase.of("working hours of one crew"));
    sheet.time(
        "one pit, first cut until a neighbour may start",
        Amount.count(OrderSection.rounded(times.openDays())),
        Phrase.of("working days"));
    sheet.time(
        "rounds",
        Amount.count(plan.roundCount()),
        Phrase.of(
            plan.inStep()
                ? "each waits for the one before"
                : "a pit begins as soon as the rules allow"));
    sheet.time(
        "calendar, all pits",
        Amount.count(OrderSection.rounded(plan.calendarDays())),
        Phrase.of(
            "working days with {crews} crews; waiting counts in days of 24 h, weekends are not credited",
            "crews",
            site.amount(PitsSetting.CREWS)));
    sheet.time(
        "labour, digging and concrete",
        Amount.hours(
            plan.row().count() * times.crewDays() * shift * site.get(PitsSetting.CREW_SIZE)),
        Phrase.of("person hours, {n} people a crew", "n", site.amount(PitsSetting.CREW_SIZE)));
    sheet.check(
        "open-length",
        "Length of edge open at once by the calendar",
        Amount.length(plan.greatestOpenMetres()),
        Amount.length(site.get(site.openShare()) * plan.row().lengthMetres()),
        Verdict.REFER,
        site.openShare().setting().source(),
        Phrase.of("No two adjacent pits are open together."));
  }
}
