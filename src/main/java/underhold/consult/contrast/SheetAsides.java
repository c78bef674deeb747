package underhold.consult.contrast;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import underhold.advice.SupportOption;
import underhold.consult.QuickSizing;
import underhold.consult.ZoneAdvice;
import underhold.sizing.BillItem;
import underhold.sizing.Sheet;

/**
 * What the sheets of two options say of movement and time, where both say something. Each sheet
 * reckons in its own way, so nothing is concluded from it here.
 */
final class SheetAsides {
  /** The checks of a predicted movement, over all methods. */
  private static final Set<String> MOVEMENTS =
      Set.of(
          "movement",
          "differential-movement",
          "head-settlement",
          "group-settlement",
          "forecast-movement");

  /** How the entries begin that hold for the whole of the work, over all methods. */
  private static final List<String> TOTALS =
      List.of(
          "calendar, all pits",
          "working days of needle work",
          "working days of eight hours",
          "all piles, ",
          "in all");

  private final Optional<Sheet> first;
  private final Optional<Sheet> second;
  private final SupportOption one;
  private final SupportOption other;

  SheetAsides(ZoneAdvice zone, SupportOption one, SupportOption other) {
    this.one = one;
    this.other = other;
    this.first = sheet(zone, one);
    this.second = sheet(zone, other);
  }

  private static Optional<Sheet> sheet(ZoneAdvice zone, SupportOption option) {
    return zone.sizing(option).filter(QuickSizing::complete).map(QuickSizing::sheet);
  }

  List<Aside> movement() {
    return both(movements(one, first), movements(other, second));
  }

  List<Aside> time() {
    return both(times(one, first), times(other, second));
  }

  private static List<Aside> both(List<Aside> some, List<Aside> others) {
    return some.isEmpty() || others.isEmpty()
        ? List.of()
        : Stream.concat(some.stream(), others.stream()).toList();
  }

  private static List<Aside> movements(SupportOption option, Optional<Sheet> sheet) {
    List<Aside> found = new ArrayList<>();
    sheet.ifPresent(
        given ->
            given.checks().stream()
                .filter(check -> MOVEMENTS.contains(check.id()))
                .forEach(check -> found.add(new Aside.CheckOnSheet(option, check))));
    return found;
  }

  /** The entries for the whole work; every entry where a sheet has none such. */
  private static List<Aside> times(SupportOption option, Optional<Sheet> sheet) {
    List<BillItem> items = sheet.map(Sheet::time).orElse(List.of());
    List<BillItem> totals = items.stream().filter(SheetAsides::total).toList();
    return (totals.isEmpty() ? items : totals)
        .stream().<Aside>map(item -> new Aside.TimeOnSheet(option, item)).toList();
  }

  private static boolean total(BillItem item) {
    return TOTALS.stream().anyMatch(item.name()::startsWith);
  }
}
