package underhold.sizing.pits;

import static underhold.sizing.pits.PitsFact.*;

import java.util.Map;
import underhold.sizing.Amount;
import underhold.sizing.Phrase;
import underhold.sizing.SheetBuilder;
import underhold.sizing.pits.order.DiggingOrder;
import underhold.sizing.pits.order.DiggingPlan;
import underhold.sizing.pits.order.OrderRules;
import underhold.sizing.pits.order.PitTimes;

/** Time of a pit, order of digging and calendar. */
final class OrderSection {
  private static final double HOURS_A_DAY = 24;
  private static final double WORKING_DAYS_A_WEEK = 5;

  private OrderSection() {}

  static DiggingPlan write(PitsCase site, SheetBuilder sheet, Layout layout) {
    PitTimes times = times(site, sheet, layout);
    OrderRules rules =
        new OrderRules(
            site.get(PitsSetting.CLEAR_PIT_WIDTHS),
            site.get(site.openShare()),
            (int) Math.max(1, Math.floor(site.get(PitsSetting.CREWS))),
            times);
    DiggingPlan plan = DiggingOrder.plan(layout.row(), rules);
    DiggingPlan plain = DiggingOrder.plain(layout.row(), rules);
    double shift = site.get(PitsSetting.SHIFT);
    sheet.time(
        "one pit, digging and concrete",
        Amount.hours(times.crewDays() * shift),
        Phrase.of("working hours of one crew"));
    sheet.time(
        "one pit, first cut until it carries",
        Amount.count(rounded(times.openDays())),
        Phrase.of("working days; the wall is unsupported over the pit all this time"));
    sheet.time("pits", Amount.count(layout.count()), Phrase.of("along the wall"));
    sheet.time(
        "rounds",
        Amount.count(plan.roundCount()),
        Phrase.of(
            plan.inStep()
                ? "each waits for the one before"
                : "a pit begins as soon as the rules allow"));
    sheet.time(
        "calendar, all pits",
        Amount.count(rounded(plan.calendarDays())),
        Phrase.of(
            "working days with {crews} crews, {weeks} weeks of five days; the plain order 1-4-2-5-3 takes {plain}, and no order can take less than {bound}. Waiting counts in days of 24 h; weekends are not credited",
            Map.of(
                "crews",
                site.amount(PitsSetting.CREWS),
                "weeks",
                Amount.count(Math.ceil(plan.calendarDays() / WORKING_DAYS_A_WEEK)),
                "plain",
                Amount.count(rounded(plain.calendarDays())),
                "bound",
                Amount.count(rounded(DiggingOrder.fewestDays(layout.row(), rules))))));
    sheet.time(
        "labour, digging and concrete",
        Amount.hours(layout.count() * times.crewDays() * shift * site.get(PitsSetting.CREW_SIZE)),
        Phrase.of(
            "person hours, {n} people a crew, {c} crews",
            "n",
            site.amount(PitsSetting.CREW_SIZE),
            "c",
            site.amount(PitsSetting.CREWS)));
    sheet.check(
        "open-length",
        "Length of wall open at once by the calendar",
        Amount.length(plan.greatestOpenMetres()),
        Amount.length(site.get(site.openShare()) * site.get(WALL_LENGTH)),
        underhold.sizing.Verdict.REFER,
        site.openShare().setting().source(),
        Phrase.of("Open from the first cut until concrete and dry pack have their strength."));
    return plan;
  }

  /** Working days of the widest pit. */
  static PitTimes times(PitsCase site, SheetBuilder sheet, Layout layout) {
    double dug =
        sheet
            .step(
                "pit-volume",
                "Soil dug for one pit and its approach",
                "V = {b} × {t} × {D} + {la} × {wa} × ({Df} + {Da})")
            .with("b", "widest pit", Amount.length(layout.widest()))
            .with("t", "thickness of the pier across the wall", Amount.length(site.pierThickness()))
            .with("D", "pit depth below the footing", site.amount(PIT_DEPTH))
            .with("la", "approach pit along the wall", site.amount(PitsSetting.APPROACH_LENGTH))
            .with("wa", "approach pit out from the wall", site.amount(PitsSetting.APPROACH_WIDTH))
            .with("Df", "founding depth", site.amount(FOUNDING_DEPTH))
            .with(
                "Da",
                "approach depth below the footing, not deeper than the pit",
                Amount.length(site.approachBelowFooting()))
            .from(underhold.sizing.Source.practice())
            .gives(Amount.volume(onePit(site, layout.widest()) + approach(site)));
    PitsSetting rate = heavy(site) ? PitsSetting.DIG_RATE_HEAVY : PitsSetting.DIG_RATE;
    double shifts = dug / site.get(rate) * site.get(PitsSetting.DIG_SLOWDOWN);
    double hours =
        sheet
            .step("pit-dig-time", "Digging and sheeting one pit", "T = {V} / {R} × {k} × {s}")
            .with("V", "soil dug", Amount.volume(dug))
            .with("R", "dug a day by a crew", site.amount(rate))
            .with(
                "k",
                "sheeting, hoisting, small obstructions",
                site.amount(PitsSetting.DIG_SLOWDOWN))
            .with("s", "working day", site.amount(PitsSetting.SHIFT))
            .from(rate.setting().source())
            .gives(Amount.hours(shifts * site.get(PitsSetting.SHIFT)));
    double shift = site.get(PitsSetting.SHIFT);
    return new PitTimes(
        Math.max(0.5, Math.ceil(2 * hours / shift - 1e-9) / 2),
        site.get(PitsSetting.CONCRETE_TIME) / shift,
        site.get(PitsSetting.DRY_PACK_WAIT) / HOURS_A_DAY,
        site.get(PitsSetting.DRY_PACK_TIME) / shift,
        site.get(PitsSetting.NEIGHBOUR_WAIT) / HOURS_A_DAY);
  }

  /** Soil of a pit under the footing, m3. */
  static double onePit(PitsCase site, double width) {
    return width * site.pierThickness() * site.get(PIT_DEPTH);
  }

  /** Soil of an approach pit, m3. */
  static double approach(PitsCase site) {
    return site.get(PitsSetting.APPROACH_LENGTH)
        * site.get(PitsSetting.APPROACH_WIDTH)
        * (site.get(FOUNDING_DEPTH) + site.approachBelowFooting());
  }

  private static boolean heavy(PitsCase site) {
    return switch (site.faceSoil.value()) {
      case LOOSE_SAND, DENSE_SAND, SILT, SOFT_CLAY, PEAT -> false;
      default -> true;
    };
  }

  /** Days up to the next tenth. */
  static double rounded(double days) {
    return Math.ceil(days * 10 - 1e-6) / 10;
  }
}
