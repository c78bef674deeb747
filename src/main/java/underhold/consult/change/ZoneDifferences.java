package underhold.consult.change;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import underhold.advice.Finding;
import underhold.advice.Hold;
import underhold.advice.OptionAdvice;
import underhold.advice.SupportOption;
import underhold.consult.Bearing;
import underhold.consult.QuickSizing;
import underhold.consult.ZoneAdvice;
import underhold.site.Fact;
import underhold.site.Origin;
import underhold.sizing.Check;

/** Finds the differences between two answers to one zone. Findings are the same by their rule. */
final class ZoneDifferences {
  /** The dictionary's group of the facts that only say what the checks of a sheet say. */
  private static final String SIZING = "sizing";

  private final ZoneAdvice before;
  private final ZoneAdvice after;

  ZoneDifferences(ZoneAdvice before, ZoneAdvice after) {
    this.before = before;
    this.after = after;
  }

  ZoneChange find() {
    return new ZoneChange(
        before,
        after,
        after.ranking().options().stream().map(OptionAdvice::option).map(this::option).toList(),
        more(before.conditions(), after.conditions(), ZoneDifferences::id),
        more(after.conditions(), before.conditions(), ZoneDifferences::id),
        more(before.cautions(), after.cautions(), ZoneDifferences::id),
        more(after.cautions(), before.cautions(), ZoneDifferences::id),
        facts());
  }

  private static String id(Finding finding) {
    return finding.rule().id();
  }

  /** What the second list has and the first has not. */
  private static <T> List<T> more(List<T> less, List<T> all, Function<T, String> name) {
    Set<String> there = less.stream().map(name).collect(Collectors.toSet());
    return all.stream().filter(one -> !there.contains(name.apply(one))).toList();
  }

  private OptionChange option(SupportOption option) {
    List<Hold> held = before.ranking().of(option).holds();
    List<Hold> holds = after.ranking().of(option).holds();
    return new OptionChange(
        option,
        Place.of(before.ranking(), option),
        Place.of(after.ranking(), option),
        findings(option),
        more(held, holds, hold -> hold.rule().id()),
        more(holds, held, hold -> hold.rule().id()),
        sheet(option));
  }

  private List<FindingChange> findings(SupportOption option) {
    Map<String, Finding> was = speaking(before, option);
    Map<String, Finding> is = speaking(after, option);
    Set<String> ids = new LinkedHashSet<>(is.keySet());
    ids.addAll(was.keySet());
    List<FindingChange> changes = new ArrayList<>();
    for (String id : ids) {
      Bearing bore = bearing(was.get(id), before, option);
      Bearing bears = bearing(is.get(id), after, option);
      Optional<Finding> told =
          Optional.ofNullable(is.get(id)).or(() -> Optional.ofNullable(was.get(id)));
      if (bore != bears) {
        told.ifPresent(finding -> changes.add(new FindingChange(finding, bore, bears)));
      }
    }
    return changes;
  }

  private static Bearing bearing(@Nullable Finding finding, ZoneAdvice zone, SupportOption option) {
    return finding == null ? Bearing.NONE : Bearing.of(finding, zone.ranking().of(option));
  }

  private static Map<String, Finding> speaking(ZoneAdvice zone, SupportOption option) {
    OptionAdvice advice = zone.ranking().of(option);
    Map<String, Finding> found = new LinkedHashMap<>();
    Stream.concat(advice.findings().stream(), zone.screening().assumed().stream())
        .filter(finding -> Bearing.of(finding, advice) != Bearing.NONE)
        .forEach(finding -> found.putIfAbsent(id(finding), finding));
    return found;
  }

  private SheetChange sheet(SupportOption option) {
    Optional<QuickSizing> was = before.sizing(option);
    Optional<QuickSizing> is = after.sizing(option);
    boolean comparable =
        was.filter(QuickSizing::complete).isPresent()
            && is.filter(QuickSizing::complete).isPresent();
    return new SheetChange(
        was, is, comparable ? checks(was.orElseThrow(), is.orElseThrow()) : List.of());
  }

  private static List<CheckChange> checks(QuickSizing was, QuickSizing is) {
    Set<String> ids = new LinkedHashSet<>();
    is.sheet().checks().forEach(check -> ids.add(check.id()));
    was.sheet().checks().forEach(check -> ids.add(check.id()));
    List<CheckChange> changes = new ArrayList<>();
    for (String id : ids) {
      CheckChange change = new CheckChange(was.sheet().check(id), is.sheet().check(id));
      if (!change.before().map(Check::verdict).equals(change.after().map(Check::verdict))) {
        changes.add(change);
      }
    }
    return changes;
  }

  /** Facts that follow, or followed, from others; what is only stated is told as the change. */
  private List<FactChange> facts() {
    List<FactChange> changes = new ArrayList<>();
    for (Fact is : after.view().all()) {
      if (is.definition().group().equals(SIZING)) {
        continue; // the checks of the sheets tell it
      }
      Fact was = before.view().fact(is.definition().index());
      boolean follows = is.origin() == Origin.DERIVED || was.origin() == Origin.DERIVED;
      if (follows && !(was.text().equals(is.text()) && was.origin() == is.origin())) {
        changes.add(new FactChange(was, is));
      }
    }
    return changes;
  }
}
