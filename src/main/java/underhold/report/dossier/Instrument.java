package underhold.report.dossier;

/** What the sheet of watching counts, with the setting that the count rests on. */
enum Instrument {
  POINTS("levelling points at the foot", "settlement and heave", "point-spacing"),
  TARGETS("position targets on the face", "movement in three directions, tilt", "target-rows"),
  GAUGES("crack gauges", "opening and shearing of cracks and joints", ""),
  DATUM("datum points", "what everything else is held against", "benchmarks"),
  VIBRATION("vibration monitors", "shaking by plant, drilling and breaking", "vibration-monitors");

  private final String item;
  private final String watches;
  private final String setting;

  Instrument(String item, String watches, String setting) {
    this.item = item;
    this.watches = watches;
    this.setting = setting;
  }

  /** Its name on the sheet. */
  String item() {
    return item;
  }

  /** What is watched with it. */
  String watches() {
    return watches;
  }

  /** The setting that its number rests on; empty where none does. */
  String setting() {
    return setting;
  }
}
