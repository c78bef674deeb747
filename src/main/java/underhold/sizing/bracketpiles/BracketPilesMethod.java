package underhold.sizing.bracketpiles;

import java.util.List;
import underhold.site.FactView;
import underhold.site.GroundProfile;
import underhold.sizing.Guesses;
import underhold.sizing.SettingTable;
import underhold.sizing.Settings;
import underhold.sizing.Sheet;
import underhold.sizing.SheetBuilder;
import underhold.sizing.SizingMethod;
import underhold.sizing.bracketpiles.PileGround.Piece;
import underhold.sizing.zone.AssumedInputs;
import underhold.sizing.zone.GroundColumn;
import underhold.sizing.zone.Inputs;
import underhold.sizing.zone.SiteFacts;

/**
 * Mini piles outside an edge or beside a column, carrying it on steel brackets.
 *
 * <p>Allowable stresses with their factors shown; anchors in concrete by strength with one load
 * factor. The pile above the base of the excavation carries nothing. What carries the moment of the
 * eccentricity has no default: until it is decided the weakest path is shown and every check that
 * rests on it is referred.
 */
public final class BracketPilesMethod implements SizingMethod {
  /** Identifier of the method. */
  public static final String METHOD = "bracket-piles";

  private static final String TITLE = "Mini piles with brackets";

  @Override
  public String id() {
    return METHOD;
  }

  @Override
  public SettingTable settings() {
    return BracketSettings.TABLE;
  }

  @Override
  public Sheet size(FactView facts, GroundProfile ground, Settings settings, Guesses guesses) {
    BracketSettings all = new BracketSettings(settings);
    SiteFacts site = new SiteFacts(facts);
    GroundColumn column = GroundColumn.of(ground, site);
    Inputs inputs = BracketInputs.of(site, column, all);
    if (!inputs.missing().isEmpty()) {
      SheetBuilder sheet = SheetBuilder.titled(TITLE, METHOD);
      inputs.write(sheet);
      return sheet.missing(inputs.missing()).build();
    }
    return AssumedInputs.referred(
        inputs,
        guesses,
        one -> reckon(new BracketCase(one, all, column), SheetBuilder.titled(TITLE, METHOD)),
        one -> reckon(new BracketCase(one, all, column), SheetBuilder.ofChecks(TITLE, METHOD)));
  }

  private static Sheet reckon(BracketCase site, SheetBuilder sheet) {
    site.inputs().write(sheet);
    site.settings().all().write(sheet);
    PileTrial pile = PileTrial.choose(site);
    EdgeSection.write(site, sheet);
    EdgeSection.writePileSpacing(site, pile.gross(), sheet);
    EccentricitySection.write(site, pile, sheet);
    CasingSteps.write(site, pile, sheet);
    LateralSection.write(site, pile, sheet);
    List<Piece> bond = BondSection.write(site, pile, sheet);
    new PlateSection(site, pile).write(sheet);
    AnchorSection.write(site, pile, sheet);
    SeatSection.write(site, pile, sheet);
    new MovementSection(site, pile, bond).write(sheet);
    if (sheet.whole()) {
      TestSection.write(site, pile, sheet);
      BillSection.write(site, pile, bond, sheet);
      StageSection.write(site, pile, sheet);
      CautionSection.write(site, pile, sheet);
    }
    return sheet.build();
  }
}
