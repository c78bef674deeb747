package underhold.sizing.monitoring;

import underhold.site.FactView;
import underhold.site.GroundProfile;
import underhold.sizing.Guesses;
import underhold.sizing.SettingTable;
import underhold.sizing.Settings;
import underhold.sizing.Sheet;
import underhold.sizing.SheetBuilder;
import underhold.sizing.SizingMethod;
import underhold.sizing.zone.AssumedInputs;
import underhold.sizing.zone.Inputs;

/**
 * Plans the protection and monitoring of an element that is not underpinned.
 *
 * <p>It predicts nothing: the movement comes from whoever designs the excavation. Against it stand
 * the strictest limit that serves the structure, the strain that the movement brings, and what the
 * instruments can see. Without a prediction the sheet says what movement each damage category would
 * need, and refers. Sources stand at each step.
 */
public final class MonitoringMethod implements SizingMethod {
  static final String ID = "monitor";

  private static final String TITLE = "Protection and monitoring, no underpinning";

  @Override
  public String id() {
    return ID;
  }

  @Override
  public SettingTable settings() {
    return MonitoringSettings.TABLE;
  }

  @Override
  public Sheet size(FactView facts, GroundProfile ground, Settings settings, Guesses guesses) {
    Inputs inputs = MonitoringInputs.of(facts);
    if (!inputs.missing().isEmpty()) {
      SheetBuilder sheet = SheetBuilder.titled(TITLE, ID);
      inputs.write(sheet);
      return sheet.missing(inputs.missing()).build();
    }
    return AssumedInputs.referred(
        inputs,
        guesses,
        one -> reckon(new MonitoringCase(one, settings), SheetBuilder.titled(TITLE, ID)),
        one -> reckon(new MonitoringCase(one, settings), SheetBuilder.ofChecks(TITLE, ID)));
  }

  private static Sheet reckon(MonitoringCase site, SheetBuilder sheet) {
    site.inputs().write(sheet);
    site.settings().write(sheet);
    ZoneSection.write(site, sheet);
    Limits limits = LimitSection.write(site, sheet);
    FadeSection.Fade fade = FadeSection.write(site, sheet, limits);
    StrainSection.write(site, sheet, limits, fade);
    Triggers triggers = TriggerSection.write(site, sheet, limits);
    if (sheet.whole()) {
      VibrationSection.write(site, sheet);
      BillSection.write(site, sheet);
      StageSection.write(site, sheet, triggers);
    }
    CautionSection.write(site, sheet, triggers);
    return sheet.build();
  }
}
