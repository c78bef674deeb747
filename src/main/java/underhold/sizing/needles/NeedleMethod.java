package underhold.sizing.needles;

import java.util.List;
import underhold.site.FactView;
import underhold.site.GroundProfile;
import underhold.sizing.Guesses;
import underhold.sizing.MissingInput;
import underhold.sizing.SettingTable;
import underhold.sizing.Settings;
import underhold.sizing.Sheet;
import underhold.sizing.SheetBuilder;
import underhold.sizing.SizingMethod;
import underhold.sizing.zone.AssumedInputs;
import underhold.sizing.zone.Inputs;
import underhold.sizing.zone.SiteFacts;

/** Needle beams under a column or through a wall. */
public final class NeedleMethod implements SizingMethod {
  /** What may be set. */
  public static final SettingTable TABLE =
      new SettingTable(
          "needles",
          concat(BeamSettings.NUMBERS, SupportSettings.NUMBERS),
          concat(BeamSettings.CHOICES, SupportSettings.CHOICES));

  private static final String ID = "needles";
  private static final String TITLE = "Needle beams";

  @Override
  public String id() {
    return ID;
  }

  @Override
  public SettingTable settings() {
    return TABLE;
  }

  @Override
  public Sheet size(FactView facts, GroundProfile ground, Settings settings, Guesses guesses) {
    Inputs inputs = new NeedleFromSite(new SiteFacts(facts), ground, settings).inputs();
    List<MissingInput> missing = inputs.missing();
    if (!missing.isEmpty()) {
      SheetBuilder sheet = SheetBuilder.titled(TITLE, ID);
      inputs.write(sheet);
      return sheet.missing(missing).build();
    }
    return AssumedInputs.referred(
        inputs,
        guesses,
        one -> reckon(one, settings, SheetBuilder.titled(TITLE, ID)),
        one -> reckon(one, settings, SheetBuilder.ofChecks(TITLE, ID)));
  }

  private static Sheet reckon(Inputs inputs, Settings settings, SheetBuilder sheet) {
    inputs.write(sheet);
    settings.write(sheet);
    NeedleSizing.write(new NeedleCase(inputs, settings), sheet);
    return sheet.build();
  }

  private static <T> List<T> concat(List<T> one, List<T> other) {
    return java.util.stream.Stream.concat(one.stream(), other.stream()).toList();
  }
}
