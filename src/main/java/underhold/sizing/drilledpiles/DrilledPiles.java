package underhold.sizing.drilledpiles;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import underhold.site.FactView;
import underhold.site.GroundProfile;
import underhold.sizing.Guesses;
import underhold.sizing.SettingTable;
import underhold.sizing.Settings;
import underhold.sizing.Sheet;
import underhold.sizing.SheetBuilder;
import underhold.sizing.SizingMethod;
import underhold.sizing.zone.AssumedInputs;
import underhold.sizing.zone.GroundColumn;
import underhold.sizing.zone.Inputs;
import underhold.sizing.zone.SiteFacts;

/**
 * Sizes drilled-in piles that carry a column, a wall, or a slab or box while the ground below it is
 * dug away.
 *
 * <p>A pure function of facts, ground and settings. The shaft above the final dug level and a
 * disturbed zone below it counts for nothing and stands as a column, stage by stage. Stresses in
 * the ground are those after digging. Working stresses with their factors shown; factored
 * resistances by two other formats for comparison. Any one pile may be lost. Where an essential
 * input is missing the sheet holds the questions and no numbers. Sources stand at each step.
 */
public final class DrilledPiles implements SizingMethod {
  /** Identifier of the method. */
  public static final String METHOD = "drilled-piles";

  /** What the user may set. */
  public static final SettingTable TABLE =
      new SettingTable(
          METHOD,
          Stream.of(PileNumbers.all(), GroupNumbers.all(), ColumnNumbers.all(), WorkNumbers.all())
              .flatMap(List::stream)
              .toList(),
          PileChoices.all());

  /** Title of the stage in which load comes on the piles, before anything is dug. */
  public static final String TRANSFER_STAGE = "Load on the piles, before support is cut";

  private static final String TITLE = "Drilled piles";

  @Override
  public String id() {
    return METHOD;
  }

  @Override
  public SettingTable settings() {
    return TABLE;
  }

  @Override
  public Sheet size(FactView facts, GroundProfile ground, Settings settings, Guesses guesses) {
    return sized(facts, ground, settings, guesses).sheet();
  }

  /**
   * Piles that were sized.
   *
   * @param sheet their sheet
   * @param piles what it comes to, for methods that add to them; empty where an essential input is
   *     missing
   */
  public record Sized(Sheet sheet, Optional<PrimaryPiles> piles) {}

  /** The sheet, as {@link #size}, with what it comes to. */
  public static Sized sized(
      FactView facts, GroundProfile ground, Settings settings, Guesses guesses) {
    List<LayerInputs> layers = layers(facts, ground);
    Inputs inputs = inputs(facts, ground, layers);
    if (!inputs.missing().isEmpty()) {
      SheetBuilder sheet = SheetBuilder.titled(TITLE, METHOD);
      inputs.write(sheet);
      return new Sized(sheet.missing(inputs.missing()).build(), Optional.empty());
    }
    PileCase site = PileCase.of(inputs, settings, layers);
    PileDesign design = Designer.design(site);
    Sheet sheet =
        AssumedInputs.referred(
            inputs,
            guesses,
            one -> reckon(site, design, SheetBuilder.titled(TITLE, METHOD)),
            one ->
                one == inputs
                    ? reckon(site, design, SheetBuilder.ofChecks(TITLE, METHOD))
                    : checks(PileCase.of(one, settings, layers)));
    return new Sized(sheet, Optional.of(primary(site, design)));
  }

  private static Sheet checks(PileCase site) {
    return reckon(site, Designer.design(site), SheetBuilder.ofChecks(TITLE, METHOD));
  }

  /**
   * The piles of a complete sheet, for methods that add to them; empty where an essential input is
   * missing.
   */
  public static Optional<PrimaryPiles> primary(
      FactView facts, GroundProfile ground, Settings settings) {
    List<LayerInputs> layers = layers(facts, ground);
    Inputs inputs = inputs(facts, ground, layers);
    if (!inputs.missing().isEmpty()) {
      return Optional.empty();
    }
    PileCase site = PileCase.of(inputs, settings, layers);
    return Optional.of(primary(site, Designer.design(site)));
  }

  private static PrimaryPiles primary(PileCase site, PileDesign design) {
    WorkPlan plan = WorkPlan.of(site, design);
    return new PrimaryPiles(
        plan.piles(),
        design.layout().pileKilonewtons(),
        site.totalLoad(),
        site.diameter(),
        design.toeMetres(),
        site.dugLevel(),
        design.layout().leastSpacingMetres(),
        Math.min(1, site.get(WorkNumbers.LOCK_OFF)),
        plan.pileHours() * plan.piles() / site.get(WorkNumbers.RIGS),
        design.stages().isEmpty() ? List.of() : new PileStrength(site).braces());
  }

  private static List<LayerInputs> layers(FactView facts, GroundProfile ground) {
    return LayerInputs.of(GroundColumn.of(ground, new SiteFacts(facts)));
  }

  private static Inputs inputs(FactView facts, GroundProfile ground, List<LayerInputs> layers) {
    SiteFacts site = new SiteFacts(facts);
    Inputs.Builder inputs = PileInputs.read(site, GroundColumn.of(ground, site));
    layers.forEach(layer -> layer.put(inputs));
    return inputs.build();
  }

  private static Sheet reckon(PileCase site, PileDesign design, SheetBuilder sheet) {
    site.inputs().write(sheet);
    site.settings().write(sheet);
    LoadSection.write(site, design, sheet);
    SideSection.write(site, design, sheet);
    StrengthSection.write(site, design, sheet);
    GroupSection.write(site, design, sheet);
    if (sheet.whole()) {
      SettlementSection.writeCurve(site, design, sheet);
    }
    SettlementSection.write(site, design, sheet);
    DepthSection.write(site, design, sheet);
    TransferSection.write(site, design, sheet);
    WorkSection.write(site, design, sheet);
    if (sheet.whole()) {
      StageSection.write(site, design, sheet);
      CautionSection.write(site, sheet);
    }
    return sheet.build();
  }
}
