package underhold.report;

import java.util.Optional;
import java.util.stream.Stream;
import underhold.advice.SupportOption;
import underhold.consult.QuickSizing;
import underhold.consult.ZoneAdvice;
import underhold.quantity.Quantity;
import underhold.quantity.UnitSystem;
import underhold.site.Site;
import underhold.sizing.Amount;
import underhold.sizing.Stage;
import underhold.sizing.StageDetail;
import underhold.sizing.monitoring.MovementLimit;

/**
 * The limit of movement of a zone and the movement at which work stops, in the words of every
 * screen and package. The strictest limit that binds governs: the one stated, or a stricter one
 * that an authority sets, as the sheet of watching has it.
 */
public final class MovementLevels {
  private static final double SAME_METRES = 1e-9;

  private final Optional<Quantity> stated;
  private final Optional<MovementLimit> governing;
  private final double stopShare;
  private final UnitSystem units;

  private MovementLevels(Site site, ZoneAdvice zone) {
    this.stated = zone.view().amount("movementLimit");
    this.governing = MovementLimit.governing(zone.view());
    this.stopShare = ReadingTimes.of(site).stopShare();
    this.units = site.units();
  }

  /** The levels of a zone. */
  public static MovementLevels of(Site site, ZoneAdvice zone) {
    return new MovementLevels(site, zone);
  }

  /** The limit as it was stated; empty where nobody did. */
  public Optional<Quantity> stated() {
    return stated;
  }

  /** The limit that governs; empty where none binds. */
  public Optional<MovementLimit> governing() {
    return governing;
  }

  /** Whether a limit governs that is stricter than the one stated, or where none is stated. */
  public boolean stricter() {
    return governing
        .filter(limit -> stated.map(one -> limit.metres() < one.si() - SAME_METRES).orElse(true))
        .isPresent();
  }

  /** The limit that governs, as typed where it is the one stated. */
  public Optional<String> limit() {
    return governing.map(limit -> words(limit.metres()));
  }

  /** Whose limit governs and who says so. */
  public String whose() {
    return governing.map(limit -> limit.words() + "; " + limit.source().words()).orElse("");
  }

  /**
   * The movement at which work stops, for the end of a sentence.
   *
   * @param lift upward movement that stops the jacking, in stages that jack
   */
  String stop(Optional<Amount> lift) {
    Optional<Double> stop = governing.map(limit -> stopShare * limit.metres());
    String general = stop.map(metres -> "; stop at " + words(metres)).orElse("");
    String upward =
        lift.map(amount -> amount.with(Math.min(amount.si(), stop.orElse(amount.si()))))
            .map(amount -> Figures.asTyped(amount, units))
            .map(
                text ->
                    (general.isEmpty() ? "; stop at " : "; while jacks lift, at ")
                        + text
                        + " of upward movement")
            .orElse("");
    return general
        + upward
        + (stated.isEmpty() ? "; no movement limit is stated: agree one first" : "");
  }

  private String words(double metres) {
    return stated
        .filter(one -> Math.abs(one.si() - metres) < SAME_METRES)
        .map(Quantity::text)
        .orElseGet(() -> Amount.thickness(metres).in(units));
  }

  /**
   * The upward movement that stops the jacking, by the sheet that jacks; edge pits stand on piles
   * of a sheet of their own.
   */
  public static Optional<Amount> lift(ZoneAdvice zone, SupportOption method) {
    return Stream.of(method, SupportOption.DRILLED_PILES)
        .filter(option -> option == method || method == SupportOption.EDGE_PITS)
        .flatMap(option -> zone.sizing(option).stream())
        .map(QuickSizing::sheet)
        .flatMap(sheet -> sheet.stages().stream())
        .map(Stage::detail)
        .filter(StageDetail.LoadSteps.class::isInstance)
        .map(StageDetail.LoadSteps.class::cast)
        .flatMap(steps -> steps.lift().stream())
        .findFirst();
  }
}
