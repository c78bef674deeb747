package underhold.sizing.edgepits;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import underhold.site.FactView;
import underhold.site.GroundProfile;
import underhold.sizing.Guesses;
import underhold.sizing.MissingInput;
import underhold.sizing.SettingTable;
import underhold.sizing.Settings;
import underhold.sizing.Sheet;
import underhold.sizing.SheetBuilder;
import underhold.sizing.SizingMethod;
import underhold.sizing.drilledpiles.DrilledPiles;
import underhold.sizing.drilledpiles.PrimaryPiles;
import underhold.sizing.pits.OpenPits;
import underhold.sizing.zone.AssumedInputs;
import underhold.sizing.zone.Inputs;

/**
 * Sizes edge pits: a wall of hand-dug pits that holds the edge of an excavation under a structure
 * that drilled piles carry.
 *
 * <p>The wall is checked alone with the structure on it and without, because piles that take the
 * load take from the pits what pits rely on; then with its braces, stage by stage. Working stresses
 * with their factors shown; concrete by strength design with one load factor. Where an essential
 * fact is missing, for the wall or for the piles, the sheet asks and holds no number.
 */
public final class EdgePitsMethod implements SizingMethod {
  private static final String TITLE = "Drilled piles with edge pits";

  private final PileSizer piles;

  /** Edge pits beside drilled piles with their default settings. */
  public EdgePitsMethod() {
    this(DrilledPiles.TABLE.defaults());
  }

  /**
   * Edge pits beside drilled piles.
   *
   * @param pileSettings settings of the sheet of drilled piles
   */
  public EdgePitsMethod(Settings pileSettings) {
    this(PileSizer.with(pileSettings));
  }

  /** Edge pits beside drilled piles sized elsewhere. */
  public EdgePitsMethod(PileSizer piles) {
    this.piles = piles;
  }

  @Override
  public String id() {
    return "edge-pits";
  }

  @Override
  public SettingTable settings() {
    return EdgeSetting.TABLE;
  }

  @Override
  public Sheet size(FactView facts, GroundProfile ground, Settings settings, Guesses guesses) {
    Inputs inputs = EdgeReader.read(facts, ground, settings);
    SheetBuilder open = SheetBuilder.titled(TITLE, id());
    if (!inputs.missing().isEmpty()) {
      inputs.write(open);
      return open.missing(inputs.missing()).build();
    }
    DrilledPiles.Sized sized = piles.sized(facts, ground, guesses);
    Sheet sheet = sized.sheet();
    Optional<PrimaryPiles> primary = sized.piles();
    if (!sheet.complete() || primary.isEmpty()) {
      inputs.write(open);
      return open.missing(ofPiles(sheet)).build();
    }
    PileSummary summary = new PileSummary(sheet, primary.get());
    return AssumedInputs.referred(
        inputs,
        guesses,
        one -> reckon(one, settings, summary, SheetBuilder.titled(TITLE, id())),
        one -> reckon(one, settings, summary, SheetBuilder.ofChecks(TITLE, id())));
  }

  private static List<MissingInput> ofPiles(Sheet sheet) {
    List<MissingInput> missing = new ArrayList<>();
    for (MissingInput one : sheet.missing()) {
      missing.add(
          new MissingInput(
              one.name(),
              one.question(),
              "for the drilled piles, which carry the structure before any edge pit is dug: "
                  + one.why()));
    }
    return distinct(missing);
  }

  private static List<MissingInput> distinct(List<MissingInput> missing) {
    Set<String> names = missing.stream().map(MissingInput::name).collect(Collectors.toSet());
    return missing.stream().filter(one -> names.remove(one.name())).toList();
  }

  private static Sheet reckon(
      Inputs inputs, Settings settings, PileSummary primary, SheetBuilder sheet) {
    EdgeCase site = new EdgeCase(inputs, settings, primary.shareOnGround());
    site.inputs.write(sheet);
    site.settings.write(sheet);
    primary.write(sheet);
    LoadSection.write(site, sheet);
    AloneSection.write(site, sheet);
    PropSection.Held held = PropSection.write(site, sheet);
    ToeSection.write(site, sheet, held);
    int dowels = RockSection.write(site, sheet, held);
    WallSection.write(site, sheet, held);
    GroundSection.write(site, sheet);
    OpenPits dug = DigSection.write(site, sheet);
    if (sheet.whole()) {
      BillSection.write(site, sheet, dug, held, dowels);
      BillSection.piles(sheet, primary.piles());
      StageSection.write(site, sheet, primary, new StageSection.Work(dug, held, dowels));
      CautionSection.write(site, sheet);
    }
    return sheet.build();
  }
}
