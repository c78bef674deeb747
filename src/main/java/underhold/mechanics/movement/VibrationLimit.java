package underhold.mechanics.movement;

/**
 * Other published limits of peak particle velocity, one value each.
 *
 * <p>Sources and basis stand at each. The limits of USBM RI 8507 rise with frequency; only their
 * two ends are here, since the line between was not at hand.
 */
@SuppressWarnings("ImmutableEnumChecker") // its parts are records of immutable parts
public enum VibrationLimit {
  /** Historic structures within 90 ft of the work. */
  NYC_HISTORIC(
      "historic structures within 90 ft",
      0.5,
      new Citation(
          "New York City, Technical Policy and Procedure Notice 10/88 (secondary, engineer's page)",
          Provenance.PUBLISHED)),
  /** FTA category I. */
  FTA_REINFORCED("reinforced concrete, steel or timber, no plaster", 0.5, fta()),
  /** FTA category II. */
  FTA_ENGINEERED("engineered concrete and masonry, no plaster", 0.3, fta()),
  /** FTA category III. */
  FTA_TIMBER_AND_MASONRY("non-engineered timber and masonry", 0.2, fta()),
  /** FTA category IV. */
  FTA_FRAGILE("buildings extremely susceptible to vibration", 0.12, fta()),
  /** Low end of the blasting criterion, plaster at low frequency. */
  USBM_LOW("houses with plaster, low frequency", 0.5, usbm()),
  /** High end of the blasting criterion. */
  USBM_HIGH("houses, high frequency", 2.0, usbm());

  /** 1 in/s in m/s. */
  private static final double INCH = 0.0254;

  private final String label;
  private final double inchesPerSecond;
  private final Citation citation;

  VibrationLimit(String label, double inchesPerSecond, Citation citation) {
    this.label = label;
    this.inchesPerSecond = inchesPerSecond;
    this.citation = citation;
  }

  private static Citation fta() {
    return new Citation(
        "Federal Transit Administration, Transit Noise and Vibration Impact Assessment, construction damage criteria",
        Provenance.FROM_MEMORY);
  }

  private static Citation usbm() {
    return new Citation("US Bureau of Mines, RI 8507, 1980", Provenance.FROM_MEMORY);
  }

  /** What it is for. */
  public String label() {
    return label;
  }

  /** Peak particle velocity, m/s. */
  public double metresPerSecond() {
    return inchesPerSecond * INCH;
  }

  /** Source. */
  public Citation citation() {
    return citation;
  }
}
