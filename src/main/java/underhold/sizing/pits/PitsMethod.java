package underhold.sizing.pits;

import underhold.site.FactView;
import underhold.site.GroundProfile;
import underhold.sizing.Guesses;
import underhold.sizing.SettingTable;
import underhold.sizing.Settings;
import underhold.sizing.Sheet;
import underhold.sizing.SizingMethod;

/** Underpinning pits under a wall. */
public final class PitsMethod implements SizingMethod {
  @Override
  public String id() {
    return PitsSizing.METHOD;
  }

  @Override
  public SettingTable settings() {
    return PitsSettings.TABLE;
  }

  @Override
  public Sheet size(FactView facts, GroundProfile ground, Settings settings, Guesses guesses) {
    return PitsFromSite.size(facts, ground, new PitsSettings(settings), guesses);
  }
}
