package underhold.sizing.monitoring;

import static underhold.sizing.monitoring.MonitoringInputs.*;

import java.util.Arrays;
import java.util.Set;
import underhold.mechanics.movement.ExcavationBeside;
import underhold.sizing.Amount;
import underhold.sizing.Choice;
import underhold.sizing.Origin;
import underhold.sizing.Setting;
import underhold.sizing.Settings;
import underhold.sizing.Verdict;
import underhold.sizing.zone.Inputs;
import underhold.sizing.zone.NumberInput;
import underhold.sizing.zone.WordInput;

/**
 * Complete inputs and settings of one zone.
 *
 * @param inputs complete inputs
 * @param settings settings in force
 */
record MonitoringCase(Inputs inputs, Settings settings) {
  private static final Set<String> MASONRY =
      Set.of("reinforced-masonry", "unreinforced-masonry", "rubble");

  double get(NumberInput input) {
    return inputs.get(input);
  }

  Amount amount(NumberInput input) {
    return inputs.amount(input);
  }

  double get(Setting setting) {
    return settings.get(setting);
  }

  Amount amount(Setting setting) {
    return settings.amount(setting);
  }

  String get(WordInput input) {
    return inputs.get(input);
  }

  String get(Choice choice) {
    return settings.get(choice);
  }

  boolean predicted() {
    return inputs.has(PREDICTED);
  }

  boolean assumed(NumberInput input) {
    return inputs.find(input).filter(given -> given.origin() == Origin.ASSUMED).isPresent();
  }

  /** Fails, unless one of the inputs it rests on is only assumed: then an engineer decides. */
  Verdict failsOn(NumberInput... numbers) {
    return Arrays.stream(numbers).anyMatch(this::assumed) ? Verdict.REFER : Verdict.FAILS;
  }

  boolean digs() {
    return !get(POSITION).equals("no-excavation");
  }

  boolean undermined() {
    return MonitoringInputs.undermined(inputs);
  }

  boolean historic() {
    return !get(HERITAGE).equals("none");
  }

  boolean building() {
    return get(KIND).equals("building-wall") || framed();
  }

  boolean framed() {
    return get(KIND).equals("building-frame");
  }

  boolean masonry() {
    return MASONRY.contains(get(MATERIAL));
  }

  ExcavationBeside excavation() {
    return new ExcavationBeside(get(GAP), get(BELOW), get(DEPTH), historic());
  }
}
