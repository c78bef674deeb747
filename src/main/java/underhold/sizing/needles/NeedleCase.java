package underhold.sizing.needles;

import java.util.List;
import underhold.mechanics.steel.DesignMethod;
import underhold.mechanics.steel.SectionTable;
import underhold.mechanics.steel.Steel;
import underhold.sizing.Amount;
import underhold.sizing.Choice;
import underhold.sizing.Setting;
import underhold.sizing.Settings;
import underhold.sizing.zone.Inputs;
import underhold.sizing.zone.NumberInput;
import underhold.sizing.zone.SoilClass;
import underhold.sizing.zone.WordInput;

/**
 * Everything that a sizing of needles rests on.
 *
 * @param inputs complete inputs
 * @param settings settings in force
 */
record NeedleCase(Inputs inputs, Settings settings) {
  double get(NumberInput input) {
    return inputs.get(input);
  }

  Amount amount(NumberInput input) {
    return inputs.amount(input);
  }

  boolean has(NumberInput input) {
    return inputs.has(input);
  }

  String get(WordInput input) {
    return inputs.get(input);
  }

  double get(Setting setting) {
    return settings.get(setting);
  }

  Amount amount(Setting setting) {
    return settings.amount(setting);
  }

  String get(Choice choice) {
    return settings.get(choice);
  }

  boolean is(Choice choice, String word) {
    return settings.get(choice).equals(word);
  }

  /** A row through a wall, else a pair under a column. */
  boolean row() {
    return get(NeedleInput.LAYOUT).endsWith("row");
  }

  boolean cantilever() {
    return get(NeedleInput.LAYOUT).startsWith("cantilever");
  }

  boolean held() {
    return is(BeamSettings.RESTRAINT, "held");
  }

  boolean eurocode() {
    return is(BeamSettings.CODE, "eurocode");
  }

  /** How AISC strengths become available ones; ASD also where the code is Eurocode. */
  DesignMethod designMethod() {
    return is(BeamSettings.CODE, "aisc-lrfd") ? DesignMethod.LRFD : DesignMethod.ASD;
  }

  /** Load factor on the needle's own strength: 1 where strengths are allowable. */
  double loadFactor() {
    if (eurocode()) {
      return get(BeamSettings.EUROCODE_FACTOR);
    }
    return designMethod() == DesignMethod.LRFD ? get(BeamSettings.LRFD_FACTOR) : 1;
  }

  SectionTable table() {
    return SectionTable.named(get(BeamSettings.TABLE)).orElseThrow();
  }

  Steel steel() {
    Steel grade = eurocode() ? Steel.S355 : Steel.A992;
    return grade.withYield(get(BeamSettings.YIELD));
  }

  SoilClass seatSoil() {
    return NeedleInput.soil(get(NeedleInput.SEAT_SOIL));
  }

  /** Whether soft soil lies between the seats and the toe of the excavation. */
  boolean softWedge() {
    return inputs.find(NeedleInput.WEDGE_SOIL).isPresent();
  }

  /** Thicknesses in which plates are sold, m, thinnest first. */
  List<Double> plateThicknesses() {
    return table().american()
        ? List.of(0.375, 0.5, 0.625, 0.75, 1.0, 1.25, 1.5, 2.0).stream()
            .map(inches -> inches * 0.0254)
            .toList()
        : List.of(0.010, 0.012, 0.015, 0.020, 0.025, 0.030, 0.040, 0.050);
  }
}
