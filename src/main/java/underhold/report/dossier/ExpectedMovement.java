package underhold.report.dossier;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import underhold.advice.SupportOption;
import underhold.consult.QuickSizing;
import underhold.quantity.Quantity;
import underhold.quantity.UnitSystem;
import underhold.sizing.Amount;
import underhold.sizing.Check;
import underhold.sizing.Sheet;

/**
 * What the sheet of the method that is built expects a structure to move, beside the levels at
 * which work is looked at again, changed or stopped. A level that the sheet itself expects to be
 * passed is said so before work, not found out by the surveyor.
 *
 * @param reckoned the checks of a movement on the sheet of the method that is built, and on that of
 *     the piles that it stands on
 * @param predicted the movement that the site states as predicted without underpinning; empty where
 *     the structure is only watched, for then its sheet reckons with it
 */
record ExpectedMovement(List<Check> reckoned, Optional<Quantity> predicted) {
  /** The checks of a predicted movement, over all methods. */
  private static final Set<String> MOVEMENTS =
      Set.of(
          "movement",
          "differential-movement",
          "head-settlement",
          "group-settlement",
          "head-sideways",
          "forecast-movement");

  private static final List<String> LEVELS = List.of("stop", "action", "alert");

  ExpectedMovement {
    reckoned = List.copyOf(reckoned);
  }

  static ExpectedMovement of(Material material, ZonePart zone) {
    Stream<Sheet> sheets =
        Stream.concat(
            material.chosen(zone).map(ZoneSheet::sheet).stream(), piles(material, zone).stream());
    return new ExpectedMovement(
        sheets
            .flatMap(sheet -> sheet.checks().stream())
            .filter(check -> MOVEMENTS.contains(check.id()))
            .toList(),
        material
            .method(zone)
            .filter(method -> method != SupportOption.MONITOR)
            .flatMap(method -> zone.advice().view().amount("predictedMovement")));
  }

  /** Edge pits stand on piles of a sheet of their own, which settle. */
  private static Optional<Sheet> piles(Material material, ZonePart zone) {
    return material
        .method(zone)
        .filter(SupportOption.EDGE_PITS::equals)
        .flatMap(method -> zone.advice().sizing(SupportOption.DRILLED_PILES))
        .map(QuickSizing::sheet)
        .filter(Sheet::complete);
  }

  /**
   * The highest level that the largest of them passes, and that passed by the movement which the
   * site itself states as predicted, in a sentence each; empty where none is passed.
   *
   * @param watching the sheet of watching
   */
  Optional<String> passed(Sheet watching, UnitSystem units) {
    Optional<String> byMethod =
        reckoned.stream()
            .max(Comparator.comparingDouble(check -> check.demand().si()))
            .flatMap(
                check ->
                    highest(watching, check.demand().si())
                        .map(level -> sentence(check, level, watching, units)));
    Optional<String> byGround =
        predicted.flatMap(
            quantity ->
                highest(watching, quantity.si())
                    .map(
                        level ->
                            "The site states that "
                                + quantity.text()
                                + " is predicted without underpinning. The method carries the"
                                + " structure; it does not keep the ground or the wall of the"
                                + " excavation from moving: unless that is less, the "
                                + level
                                + " level of "
                                + level(watching, level).map(one -> one.in(units)).orElse("")
                                + " is passed (judgement)."));
    List<String> sentences = Stream.of(byMethod, byGround).flatMap(Optional::stream).toList();
    return sentences.isEmpty() ? Optional.empty() : Optional.of(String.join(" ", sentences));
  }

  private static Optional<String> highest(Sheet watching, double metres) {
    return LEVELS.stream()
        .filter(
            level ->
                level(watching, level)
                    .filter(amount -> !Check.covers(metres, amount.si()))
                    .isPresent())
        .findFirst();
  }

  private static Optional<Amount> level(Sheet watching, String level) {
    return watching.step(level + "-level").map(step -> step.result());
  }

  private static String sentence(Check check, String level, Sheet watching, UnitSystem units) {
    return "The sheet of the method expects "
        + check.demand().in(units)
        + " ("
        + check.title().substring(0, 1).toLowerCase(java.util.Locale.ROOT)
        + check.title().substring(1)
        + "): the "
        + level
        + " level of "
        + level(watching, level).map(one -> one.in(units)).orElse("")
        + " will be passed even if all goes as foreseen. The engineer of record settles levels or"
        + " method before work starts (judgement).";
  }
}
