package underhold.sizing.drilledpiles;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import underhold.sizing.Amount;
import underhold.sizing.Given;
import underhold.sizing.Source;
import underhold.sizing.zone.GroundColumn;
import underhold.sizing.zone.Inputs;
import underhold.sizing.zone.NumberInput;
import underhold.sizing.zone.SoilClass;
import underhold.sizing.zone.Stratum;

/**
 * The properties of a zone's strata as inputs, so that an assumed one refers the checks that rest
 * on it.
 *
 * @param index from 1
 * @param stratum the stratum as read
 */
record LayerInputs(int index, Stratum stratum) {
  private static final double CAREFUL_ROCK_STRENGTH = 5000;
  private static final double CAREFUL_ROCK_QUALITY = 0.25;

  static List<LayerInputs> of(GroundColumn column) {
    List<LayerInputs> layers = new ArrayList<>();
    for (Stratum stratum : column.strata()) {
      layers.add(new LayerInputs(layers.size() + 1, stratum));
    }
    return layers;
  }

  private NumberInput weight() {
    return input("weight", "unit weight", Amount.unitWeight(0), 9, 30);
  }

  private NumberInput strength() {
    return input("strength", "undrained strength", Amount.pressure(0), 1, 1000);
  }

  private NumberInput blows() {
    return input("n60", "blow count N60", Amount.count(0), 0, 200);
  }

  private NumberInput rock() {
    return input("qu", "unconfined strength", Amount.stress(0), 100, 400_000);
  }

  private NumberInput quality() {
    return input("rqd", "rock quality designation", Amount.ratio(0), 0, 1);
  }

  private NumberInput input(String name, String label, Amount kind, double least, double most) {
    return NumberInput.of(
        "layer-" + index + "-" + name, label + " of " + stratum.name(), kind, least, most, "");
  }

  /** Blow count of a class where none was measured; judgement. */
  private static double carefulBlows(SoilClass soil) {
    return switch (soil) {
      case DENSE_SAND, DENSE_GRAVEL -> 25;
      case HARD -> 30;
      case LOOSE_SAND -> 5;
      case SILT -> 4;
      case ROCK, STIFF_CLAY, SOFT_CLAY, FILL, PEAT -> 0;
    };
  }

  void put(Inputs.Builder inputs) {
    inputs.put(weight(), stratum.unitWeight());
    Source careful =
        new Source(stratum.name() + ": careful value of its class", Source.judgement().basis());
    switch (BondLayer.Kind.of(stratum.soil())) {
      case CLAY -> inputs.put(strength(), stratum.undrainedStrength());
      case SAND ->
          inputs.put(blows(), or(stratum.blowCount(), carefulBlows(stratum.soil()), careful));
      case ROCK -> {
        inputs.put(rock(), or(stratum.unconfinedStrength(), CAREFUL_ROCK_STRENGTH, careful));
        inputs.put(quality(), or(stratum.rockQuality(), CAREFUL_ROCK_QUALITY, careful));
      }
      case NONE -> {}
    }
  }

  private static Given<Double> or(Optional<Given<Double>> stated, double value, Source why) {
    return stated.orElseGet(() -> Given.assumed(value, why));
  }

  BondLayer layer(Inputs inputs) {
    return new BondLayer(
        stratum.name(),
        stratum.soil(),
        stratum.topMetres(),
        stratum.bottomMetres(),
        value(inputs, weight()),
        value(inputs, strength()),
        value(inputs, blows()),
        value(inputs, rock()),
        value(inputs, quality()));
  }

  private static double value(Inputs inputs, NumberInput input) {
    return inputs.find(input).map(Given::value).orElse(0.0);
  }
}
