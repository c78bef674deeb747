package underhold.sizing;

import underhold.site.FactView;
import underhold.site.GroundProfile;

/**
 * Sizes one support option from the facts and the ground of a zone. A pure function: the same site
 * and settings give the same sheet.
 */
public interface SizingMethod {
  /** Identifier of the method: the option's own, such as "pits". */
  String id();

  /** What the user may set. */
  SettingTable settings();

  /**
   * The sheet. Where an essential fact is missing, or the method does not fit the zone, the sheet
   * asks or says so and holds no number.
   *
   * @param facts the facts of the zone, with what follows from them
   * @param ground the layers below the zone; may be empty
   * @param settings settings in force, of this method's own table
   */
  default Sheet size(FactView facts, GroundProfile ground, Settings settings) {
    return size(facts, ground, settings, Guesses.TRIED);
  }

  /**
   * The sheet, as {@link #size(FactView, GroundProfile, Settings)}.
   *
   * @param guesses what is done about inputs that nobody stated
   */
  Sheet size(FactView facts, GroundProfile ground, Settings settings, Guesses guesses);
}
