package underhold.consult.stage;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import underhold.advice.Effect;
import underhold.advice.Finding;
import underhold.advice.SupportOption;
import underhold.consult.scheme.PairFinding;
import underhold.consult.scheme.ZoneChoice;

/**
 * Puts what the rules require and warn of at the stage where it bites: judgement, by the cause that
 * a rule names. What has no stage of its kind in a zone is told before the work.
 */
final class Told {
  private static final Map<String, List<StageKind>> BITES =
      Map.ofEntries(
          Map.entry("people in pits", List.of(StageKind.PITS)),
          Map.entry("open share", List.of(StageKind.PITS)),
          Map.entry("jacked load", List.of(StageKind.LOAD)),
          Map.entry("preload", List.of(StageKind.LOAD)),
          Map.entry("transfer", List.of(StageKind.LOAD)),
          Map.entry("drilling", List.of(StageKind.DRILL)),
          Map.entry("obstructions", List.of(StageKind.DRILL, StageKind.PITS)),
          Map.entry("bracing", List.of(StageKind.DIG)),
          Map.entry("buckling", List.of(StageKind.DIG)),
          Map.entry("deeper dig", List.of(StageKind.DIG)),
          Map.entry("edge", List.of(StageKind.DIG, StageKind.PITS)),
          Map.entry("water", List.of(StageKind.WATER, StageKind.PITS, StageKind.DIG)),
          Map.entry("artesian", List.of(StageKind.WATER, StageKind.PITS, StageKind.DIG)),
          Map.entry("contamination", List.of(StageKind.PITS, StageKind.DRILL, StageKind.DIG)),
          Map.entry(
              "live use",
              List.of(StageKind.DRILL, StageKind.BUILD, StageKind.PITS, StageKind.DIG)));

  private final Map<StageKind, List<Finding>> byKind = new HashMap<>();
  private final Map<StageKind, List<PairFinding>> pairsByKind = new HashMap<>();

  private Told() {}

  /**
   * What is told of a zone.
   *
   * @param kinds the kinds of stage that it has
   */
  static Told of(ZoneChoice zone, List<PairFinding> pairs, List<StageKind> kinds) {
    Told told = new Told();
    zone.method()
        .ifPresent(
            method -> {
              zone.zone().cautions().stream()
                  .filter(finding -> finding.rule().concerns(method))
                  .forEach(finding -> told.put(finding, kinds));
              zone.zone().conditions().stream()
                  .filter(finding -> requires(finding, method))
                  .forEach(finding -> told.put(finding, kinds));
            });
    for (PairFinding pair : pairs) {
      if (pair.effect() == Effect.CAUTION && pair.first().equals(zone.name())) {
        told.pairsByKind
            .computeIfAbsent(kind(pair.finding().rule().cause(), kinds), k -> new ArrayList<>())
            .add(pair);
      }
    }
    return told;
  }

  /** Duties that hold whatever is chosen stand in the advice; here only those of the method. */
  private static boolean requires(Finding finding, SupportOption method) {
    return !finding.assumed()
        && finding.rule().concerns(method)
        && !finding.rule().action().options().isEmpty();
  }

  private void put(Finding finding, List<StageKind> kinds) {
    byKind
        .computeIfAbsent(kind(finding.rule().cause(), kinds), k -> new ArrayList<>())
        .add(finding);
  }

  private static StageKind kind(String cause, List<StageKind> kinds) {
    Optional<StageKind> found =
        BITES.getOrDefault(cause, List.of()).stream().filter(kinds::contains).findFirst();
    return found.orElse(StageKind.PREPARE);
  }

  /** What is told at the first stage of that kind; a second stage of it is told nothing again. */
  List<Finding> take(StageKind kind) {
    List<Finding> taken = byKind.remove(kind);
    return taken == null ? List.of() : taken;
  }

  List<PairFinding> takePairs(StageKind kind) {
    List<PairFinding> taken = pairsByKind.remove(kind);
    return taken == null ? List.of() : taken;
  }
}
