package underhold.sizing.pits;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import underhold.sizing.Guesses;
import underhold.sizing.MissingInput;
import underhold.sizing.Sheet;
import underhold.sizing.SheetBuilder;
import underhold.sizing.pits.order.DiggingPlan;

/**
 * Sizes hand-dug underpinning pits under a continuous foundation.
 *
 * <p>A pure function of its input and settings. Working (allowable) stresses with their factors
 * shown; concrete by strength design with one load factor on all loads. Every value that nobody
 * stated appears on the sheet as derived, assumed or default. Where an essential input is missing
 * the sheet holds the questions and no numbers. Sources stand at each step.
 */
public final class PitsSizing {
  /** Identifier of the method. */
  public static final String METHOD = "pits";

  private static final String TITLE = "Underpinning pits";

  private PitsSizing() {}

  /** The sheet. */
  public static Sheet size(PitsInput input, PitsSettings settings) {
    return size(input, settings, List.of(), Guesses.TRIED);
  }

  static Sheet size(PitsInput input, PitsSettings settings, List<MissingInput> bars) {
    return size(input, settings, bars, Guesses.TRIED);
  }

  /**
   * The sheet, unless something beyond the input bars it.
   *
   * @param bars what must be cleared first
   * @param guesses what is done about inputs that nobody stated
   */
  static Sheet size(
      PitsInput input, PitsSettings settings, List<MissingInput> bars, Guesses guesses) {
    List<MissingInput> missing = missing(input, bars);
    if (!missing.isEmpty()) {
      SheetBuilder sheet = SheetBuilder.titled(TITLE, METHOD);
      InputSection.writeKnown(input, sheet);
      return sheet.missing(missing).build();
    }
    return PitsAssumptions.referred(
        input,
        guesses,
        one -> reckon(PitsCase.of(one, settings), SheetBuilder.titled(TITLE, METHOD)),
        one -> reckon(PitsCase.of(one, settings), SheetBuilder.ofChecks(TITLE, METHOD)));
  }

  private static Sheet reckon(PitsCase site, SheetBuilder sheet) {
    InputSection.write(site, sheet);
    Layout layout = LayoutSection.write(site, sheet, SpanSection.write(site, sheet));
    DiggingPlan plan = OrderSection.write(site, sheet, layout);
    double board = SheetingSection.write(site, sheet, layout, plan.rules().times().openDays());
    OptionalDouble allowable = BaseSection.write(site, sheet, layout);
    boolean braced = PierSection.write(site, sheet, layout, allowable);
    GroundSection.write(site, sheet, layout);
    DryPackSection.write(site, sheet);
    if (sheet.whole()) {
      BillSection.write(site, sheet, layout, board);
      StageSection.write(site, sheet, layout, plan, board, braced);
      CautionSection.write(site, sheet, braced);
    }
    return sheet.build();
  }

  /** One question for each thing missing; a bar says more than a mere gap. */
  private static List<MissingInput> missing(PitsInput input, List<MissingInput> bars) {
    List<MissingInput> missing = new ArrayList<>(bars);
    Set<String> named = bars.stream().map(MissingInput::name).collect(Collectors.toSet());
    PitsCase.missing(input).stream()
        .filter(one -> !named.contains(one.name()))
        .forEach(missing::add);
    return missing;
  }

  /** The digging order behind a complete sheet, for drawings. */
  public static Optional<DiggingPlan> order(PitsInput input, PitsSettings settings) {
    if (!PitsCase.missing(input).isEmpty()) {
      return Optional.empty();
    }
    SheetBuilder scratch = SheetBuilder.titled(TITLE, METHOD);
    PitsCase site = PitsCase.of(input, settings);
    Layout layout = LayoutSection.write(site, scratch, SpanSection.write(site, scratch));
    return Optional.of(OrderSection.write(site, scratch, layout));
  }
}
