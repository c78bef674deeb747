package underhold.sizing.needles;

import static underhold.sizing.needles.NeedleInput.*;

import java.util.List;
import java.util.Optional;
import underhold.site.GroundProfile;
import underhold.sizing.Basis;
import underhold.sizing.Given;
import underhold.sizing.Origin;
import underhold.sizing.Setting;
import underhold.sizing.Settings;
import underhold.sizing.Source;
import underhold.sizing.zone.Inputs;
import underhold.sizing.zone.LayerSoil;
import underhold.sizing.zone.NumberInput;
import underhold.sizing.zone.SiteFacts;
import underhold.sizing.zone.SiteSoils;
import underhold.sizing.zone.SoilClass;

/** Reads a zone: what the needles need, what is assumed meanwhile, and whether needles fit. */
final class NeedleFromSite {
  /** Least depth below a seat whose weakest layer counts, m; judgement. */
  private static final double SEAT_ZONE_METRES = 2;

  /** The same in widths of the widest pad allowed; judgement. */
  private static final double SEAT_ZONE_WIDTHS = 1.5;

  /** Depth of seats of which nobody stated where good bearing is, m; judgement. */
  private static final double SHALLOW_SEAT_METRES = 0.5;

  /** A thin wall, m; judgement. */
  private static final double THIN_WALL_METRES = 0.2;

  /** A light soil, kN/m3; judgement. */
  private static final double LIGHT_SOIL = 18;

  private static final double WATER = 9.81;

  private final SiteFacts facts;
  private final GroundProfile ground;
  private final Settings settings;
  private final Inputs.Builder inputs;

  NeedleFromSite(SiteFacts facts, GroundProfile ground, Settings settings) {
    this.facts = facts;
    this.ground = ground;
    this.settings = settings;
    this.inputs = Inputs.from(facts);
  }

  /** All inputs; essential ones that are not known stand in its questions. */
  Inputs inputs() {
    Optional<Given<String>> pattern = facts.word("loadPattern");
    if (pattern.isEmpty()) {
      inputs.object("loadPattern", "it decides whether needles can take the load at all");
      return inputs.build();
    }
    String word = pattern.get().value();
    if (!word.equals("concentrated") && !word.equals("continuous")) {
      inputs.object(
          "loadPattern",
          "Here the site says: "
              + word
              + ". This sheet sizes needles under a column or through a wall. It does not hold for"
              + " rafts, slabs, boxes or overhanging edges: nothing was sized.");
      return inputs.build();
    }
    boolean row = word.equals("continuous");
    if (!layout(row)) {
      return inputs.build();
    }
    load(row);
    span();
    pickUp(row);
    seat();
    inputs.knownOrAssumed(MOVEMENT_LIMIT).known(CARRIED).known(ROOM).known(CONDITION);
    return inputs.build();
  }

  private boolean layout(boolean row) {
    String set = settings.get(BeamSettings.ARRANGEMENT);
    String fitting = row ? "row" : "pair";
    if (set.equals(row ? "pair" : "row")) {
      inputs.object(
          "loadPattern",
          "The setting arrangement asks for a "
              + set
              + ", which does not fit the load pattern of this zone: nothing was sized.");
      return false;
    }
    boolean shut = shut("insideAccess") || shut("outsideAccess");
    boolean cantilever = set.equals("cantilever") || (set.equals("auto") && shut);
    String layout = cantilever ? "cantilever-" + fitting : fitting;
    boolean stated = !set.equals("auto");
    String why =
        stated
            ? "the setting arrangement"
            : cantilever
                ? "one side cannot be reached, so the needles cantilever from the other"
                : "the load pattern; both sides are taken to be within reach";
    inputs.put(
        LAYOUT,
        new Given<>(
            layout,
            stated ? Origin.SET_BY_USER : Origin.DERIVED,
            new Source(why, stated ? Basis.SITE_FACT : Basis.JUDGEMENT)));
    return true;
  }

  private boolean shut(String access) {
    return facts.word(access).filter(word -> word.value().equals("none")).isPresent();
  }

  private void load(boolean row) {
    if (row) {
      inputs
          .known(LINE_LOAD)
          .need(LINE_LOAD, "needles are sized by the load that they carry")
          .known(WALL_LENGTH)
          .need(WALL_LENGTH, "it gives the number of needles");
    } else {
      inputs.known(COLUMN_LOAD).need(COLUMN_LOAD, "needles are sized by the load that they carry");
    }
  }

  private void span() {
    inputs.known(SEAT_SPAN);
    useful(HOLE_WIDTH);
    useful(HOLE_DEPTH);
    if (!inputs.has(SEAT_SPAN) && !(inputs.has(HOLE_WIDTH) && inputs.has(HOLE_DEPTH))) {
      inputs.need(
          SEAT_SPAN,
          "the moment grows with the span and the deflection with its cube; it could also be found"
              + " from the width and depth of the excavation under the structure");
    }
    inputs
        .known(SEAT_DEPTH)
        .orAssume(
            SEAT_DEPTH,
            SHALLOW_SEAT_METRES,
            new Source("shallow seats, until good bearing is found", Basis.JUDGEMENT));
  }

  /** Takes a number that the sheet can do without, where it lies in its range. */
  private void useful(NumberInput input) {
    facts
        .number(input.fact())
        .filter(given -> input.accepts(given.value()))
        .ifPresent(given -> inputs.put(input, given));
  }

  private void pickUp(boolean row) {
    inputs.knownOrAssumed(MATERIAL);
    if (row) {
      inputs
          .knownOrAssumed(CLEAR_SPAN)
          .known(WALL_THICKNESS)
          .orAssume(WALL_THICKNESS, THIN_WALL_METRES, new Source("a thin wall", Basis.JUDGEMENT));
    } else {
      useful(SHAFT);
    }
  }

  private void seat() {
    double depth = facts.number(SEAT_DEPTH.fact()).map(Given::value).orElse(SHALLOW_SEAT_METRES);
    double zone =
        Math.max(SEAT_ZONE_METRES, SEAT_ZONE_WIDTHS * settings.get(SupportSettings.WIDEST_PAD));
    List<LayerSoil> below = layers(depth, depth + zone);
    Optional<LayerSoil> weakest = LayerSoil.bearingLeast(below, 1);
    weakest.ifPresentOrElse(this::layer, this::classAlone);
    wedge();
    double weight =
        weakest.flatMap(LayerSoil::unitWeight).map(Given::value).orElse(LIGHT_SOIL) - WATER;
    inputs.orAssume(
        SEAT_WEIGHT,
        Math.max(SEAT_WEIGHT.least(), weight),
        new Source("below water, on the safe side", Basis.JUDGEMENT));
  }

  /** The layer between the seats and the toe of the excavation that wants the flattest line. */
  private void wedge() {
    double depth = facts.number(SEAT_DEPTH.fact()).map(Given::value).orElse(SHALLOW_SEAT_METRES);
    double toe = facts.number(HOLE_DEPTH.fact()).map(Given::value).orElse(depth);
    layers(depth, toe).stream()
        .filter(layer -> SpanSection.flat(layer.soil()))
        .findFirst()
        .ifPresent(
            layer ->
                inputs.put(
                    WEDGE_SOIL,
                    Given.derived(
                        word(layer.soil()),
                        "soft layer between the seats and the toe of the excavation: "
                            + LayerSoil.words(List.of(layer)))));
  }

  private List<LayerSoil> layers(double from, double to) {
    return LayerSoil.of(ground.between(from, to), facts.number("undrainedStrength"));
  }

  private void layer(LayerSoil layer) {
    inputs.put(
        SEAT_SOIL,
        Given.derived(
            word(layer.soil()),
            "weakest layer within one and a half of the widest pad, at least 2 m, below the seats: "
                + LayerSoil.words(List.of(layer))));
    strengths(layer.soil(), layer.undrainedStrength(), layer.frictionAngle());
  }

  private void classAlone() {
    Given<String> word =
        facts
            .wordOrAssumed("soilAtFooting")
            .orElseThrow(() -> new IllegalStateException("the dictionary assumes a soil"));
    SoilClass soil = SiteSoils.soil(word.value()).orElse(SoilClass.FILL);
    inputs.put(SEAT_SOIL, SiteFacts.as(word, word(soil)));
    Source careful = new Source("careful value of " + soil.label(), Basis.JUDGEMENT);
    strengths(
        soil,
        Given.assumed(soil.undrainedStrengthKilopascals(), careful),
        Given.assumed(soil.frictionAngleDegrees(), careful));
  }

  private void strengths(SoilClass soil, Given<Double> strength, Given<Double> angle) {
    boolean investigated = settings.get(SupportSettings.SEAT_PRESSURE) > 0;
    if (!investigated && soil.clay()) {
      inputs.put(SEAT_STRENGTH, strength);
    } else if (!investigated && soil != SoilClass.ROCK) {
      inputs.put(SEAT_FRICTION, angle);
    }
    Setting modulus = SupportSettings.SEAT_MODULUS;
    if (settings.get(modulus) >= SEAT_MODULUS.least()) {
      inputs.put(
          SEAT_MODULUS,
          new Given<>(
              settings.get(modulus),
              Origin.SET_BY_USER,
              new Source("ground investigation, as set", Basis.SITE_FACT)));
    } else {
      inputs.put(
          SEAT_MODULUS,
          Given.assumed(
              SeatSoil.modulusKilopascals(soil, strength.value()),
              new Source("careful value of " + soil.label(), Basis.JUDGEMENT)));
    }
  }
}
