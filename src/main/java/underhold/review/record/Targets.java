package underhold.review.record;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import underhold.advice.Strength;
import underhold.review.record.Target.Kind;
import underhold.review.saved.SavedAdvice;
import underhold.review.saved.SavedCheck;
import underhold.review.saved.SavedFinding;
import underhold.review.saved.SavedOption;
import underhold.review.saved.SavedSheet;
import underhold.review.saved.SavedZone;
import underhold.site.NearestName;
import underhold.site.PlainText;

/** Every part of a saved consultation that an entry can speak of. */
public final class Targets {
  /** An override that takes a finding away. */
  static final String SET_ASIDE = "set-aside";

  /** An override by which nothing leads. */
  static final String NONE = "none";

  private static final List<String> VERDICTS = List.of("passes", "fails", "refer");
  private static final int SHOWN = 5;

  private final Map<String, Target> byPath = new LinkedHashMap<>();

  /** The parts of a consultation. */
  public Targets(SavedAdvice advice) {
    plain(
        "whole",
        Kind.WHOLE,
        "the whole consultation",
        advice.zones().stream()
            .map(zone -> zone.name() + ": " + zone.line())
            .collect(Collectors.joining("; ")));
    plain("scheme", Kind.SCHEME, "the methods together", advice.scheme().line());
    advice
        .plan()
        .stages()
        .forEach(
            stage ->
                plain(
                    "stage/" + stage.id(),
                    Kind.STAGE,
                    stage.zone().isEmpty() ? "the whole site" : stage.zone(),
                    stage.line()));
    advice.zones().forEach(this::zone);
  }

  /** All, in the order of the consultation. */
  public List<Target> all() {
    return List.copyOf(byPath.values());
  }

  /** All paths. */
  public List<String> paths() {
    return all().stream().map(Target::path).toList();
  }

  /** The part of that path, in any case; the zone may be left out where no other zone has such. */
  public Optional<Target> find(String typed) {
    String wanted = key(typed);
    Target exact = byPath.get(wanted);
    if (exact != null) {
      return Optional.of(exact);
    }
    List<Target> ends = endingWith(wanted);
    return ends.size() == 1 ? Optional.of(ends.get(0)) : Optional.empty();
  }

  private List<Target> endingWith(String wanted) {
    return byPath.entrySet().stream()
        .filter(entry -> entry.getKey().endsWith("/" + wanted))
        .map(Map.Entry::getValue)
        .toList();
  }

  /** Why there is no part of that path, and what may have been meant. */
  public String refusal(String typed) {
    String shown = PlainText.quoted(typed);
    List<Target> ends = endingWith(key(typed));
    if (ends.size() > 1) {
      return "Several zones have "
          + shown
          + "; name the zone: "
          + ends.stream()
              .limit(SHOWN)
              .map(target -> "\"" + target.path() + "\"")
              .collect(Collectors.joining(", "))
          + ".";
    }
    Stream<String> shorter =
        byPath.keySet().stream().map(path -> path.substring(path.indexOf('/') + 1));
    List<String> names = Stream.concat(byPath.keySet().stream(), shorter).distinct().toList();
    String guess =
        NearestName.of(typed, names)
            .flatMap(this::find)
            .map(target -> " Did you mean \"" + target.path() + "\"?")
            .orElse("");
    return "The consultation has no part " + shown + "." + guess;
  }

  private void zone(SavedZone zone) {
    List<String> options = zone.options().stream().map(SavedOption::id).toList();
    String leader = zone.leader().map(SavedOption::id).orElse(NONE);
    add(
        new Target(
            zone.name() + "/ranking",
            Kind.RANKING,
            "the ranking of " + zone.name(),
            zone.line()
                + zone.options().stream()
                    .map(option -> option.id() + " " + option.standing())
                    .collect(Collectors.joining(", ", " (", ")")),
            leader,
            Stream.concat(options.stream(), Stream.of(NONE)).toList()));
    zone.options()
        .forEach(
            option ->
                plain(
                    zone.name() + "/option/" + option.id(),
                    Kind.OPTION,
                    option.label(),
                    option.line()));
    zone.findings().forEach(finding -> finding(zone, finding));
    zone.facts()
        .forEach(
            fact ->
                plain(zone.name() + "/fact/" + fact.name(), Kind.FACT, fact.label(), fact.line()));
    zone.options().forEach(one -> one.sheet().ifPresent(sheet -> sheet(zone, one.id(), sheet)));
  }

  private void finding(SavedZone zone, SavedFinding finding) {
    List<String> words =
        Stream.concat(
                Stream.of(SET_ASIDE),
                finding.strength().isPresent()
                    ? Stream.of(Strength.values()).map(Strength::word)
                    : Stream.of())
            .toList();
    add(
        new Target(
            zone.name() + "/finding/" + finding.rule(),
            Kind.FINDING,
            "the finding of " + finding.rule(),
            finding.line(),
            finding.strength().orElse(finding.effect()),
            words));
  }

  private void sheet(SavedZone zone, String option, SavedSheet sheet) {
    String of = option + "/";
    sheet
        .inputs()
        .forEach(
            input ->
                plain(
                    zone.name() + "/input/" + of + input.name(),
                    Kind.INPUT,
                    input.label(),
                    input.line()));
    sheet
        .steps()
        .forEach(
            step ->
                plain(
                    zone.name() + "/step/" + of + step.id(),
                    Kind.STEP,
                    step.title(),
                    step.result().text()));
    for (SavedCheck check : sheet.checks()) {
      add(
          new Target(
              zone.name() + "/check/" + of + check.id(),
              Kind.CHECK,
              check.title(),
              check.line(),
              check.verdict(),
              VERDICTS));
    }
  }

  private void plain(String path, Kind kind, String label, String original) {
    add(new Target(path, kind, label, original, "", List.of()));
  }

  private void add(Target target) {
    byPath.putIfAbsent(key(target.path()), target);
  }

  private static String key(String path) {
    return path.strip().toLowerCase(Locale.ROOT);
  }
}
