package underhold.sizing.edgepits;

import static underhold.sizing.edgepits.EdgeInputs.*;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import underhold.site.FactView;
import underhold.site.GroundProfile;
import underhold.sizing.Basis;
import underhold.sizing.Given;
import underhold.sizing.Origin;
import underhold.sizing.Settings;
import underhold.sizing.Source;
import underhold.sizing.zone.GroundColumn;
import underhold.sizing.zone.Inputs;
import underhold.sizing.zone.LayerSoil;
import underhold.sizing.zone.SiteFacts;
import underhold.sizing.zone.SiteSoils;
import underhold.sizing.zone.SoilClass;
import underhold.sizing.zone.Stratum;

/** Reads the inputs of edge pits from a zone, and says where the sheet does not fit it. */
final class EdgeReader {
  private static final Set<String> UNDERMINED =
      Set.of("partly-under", "wholly-under", "crosses-support");

  /** Just below the toe, m. */
  private static final double BELOW = 0.01;

  /** Light soil below the toe lowers the critical gradient, kN/m3. */
  private static final double LIGHT_SOIL = 16;

  private final SiteFacts facts;
  private final GroundProfile ground;
  private final GroundColumn column;
  private final Settings settings;
  private final Inputs.Builder inputs;

  private EdgeReader(FactView view, GroundProfile ground, Settings settings) {
    this.facts = new SiteFacts(view);
    this.ground = ground;
    this.column = GroundColumn.of(ground, facts);
    this.settings = settings;
    this.inputs = Inputs.from(facts);
  }

  /** The inputs of a zone, with what is missing. */
  static Inputs read(FactView view, GroundProfile ground, Settings settings) {
    EdgeReader reader = new EdgeReader(view, ground, settings);
    reader.fit();
    reader.load();
    reader.depths();
    reader.soils();
    reader.choices();
    return reader.inputs.build();
  }

  private void fit() {
    String edge = facts.word("edgeGround").map(Given::value).orElse("");
    boolean stands =
        facts.word("standingRockEdge").filter(word -> word.value().equals("yes")).isPresent();
    boolean favourable =
        facts.word("rockJoints").filter(word -> word.value().equals("favourable")).isPresent();
    if (stands || (edge.equals("rock") && favourable)) {
      inputs.object(
          "edgeGround",
          "Here the edge is rock that stands by itself: edge pits are not needed. The rock is dressed, checked by a geologist as it opens and pinned where needed; drilled piles alone carry the structure. No wall was sized.");
    } else if (edge.equals("rock")) {
      inputs.object(
          "rockJoints",
          "Here the edge is rock, but its joints are adverse or not known: it asks for rock support designed by a specialist, not for pits in soil. No wall was sized.");
    }
    facts
        .word("excavationPosition")
        .filter(word -> !UNDERMINED.contains(word.value()))
        .ifPresent(
            word ->
                inputs.object(
                    "excavationPosition",
                    "Here the site says: "
                        + word.value()
                        + ". Edge pits close the edge of an excavation that passes under the structure. No wall was sized."));
    facts
        .number("wallGapLength")
        .filter(gap -> gap.value() < EDGE_LENGTH.least())
        .ifPresent(
            gap ->
                inputs.object(
                    "wallGapLength",
                    "The site leaves no gap in the wall of the excavation, or one too short for a pit: there is no edge to close. No wall was sized."));
  }

  private void load() {
    Optional<Given<String>> pattern = facts.word("loadPattern");
    if (pattern.isPresent() && !LOAD_PATTERN.words().contains(pattern.get().value())) {
      inputs.object(
          "loadPattern",
          "Here the site says: "
              + pattern.get().value()
              + ". This sheet takes the structure's load along a line or over an area. No wall was sized.");
      return;
    }
    inputs.known(LOAD_PATTERN).need(LOAD_PATTERN, "the load on the soil behind rests on it");
    if (pattern.isPresent() && pattern.get().value().equals("area")) {
      inputs
          .known(AREA_LOAD)
          .need(AREA_LOAD, "what still stands on the soil presses on the wall of pits");
    } else if (pattern.isPresent()) {
      inputs
          .known(LINE_LOAD)
          .need(LINE_LOAD, "what still stands on the soil presses on the wall of pits")
          .known(FOOTING_WIDTH)
          .need(FOOTING_WIDTH, "it spreads the load over the soil");
    }
  }

  private void depths() {
    inputs
        .known(FOUNDING_DEPTH)
        .need(FOUNDING_DEPTH, "the soil above the underside presses on the wall of pits")
        .known(EXCAVATION)
        .need(EXCAVATION, "it is the height that the wall of pits holds");
    facts
        .number("wallGapLength")
        .filter(gap -> gap.value() >= EDGE_LENGTH.least())
        .ifPresent(gap -> inputs.put(EDGE_LENGTH, gap));
    if (facts.number("wallGapLength").isEmpty()) {
      inputs.need(EDGE_LENGTH, "the number and order of pits follow from it");
    }
    water();
    rock();
  }

  private void water() {
    inputs.known(WATER_DEPTH);
    Optional<Given<Double>> head = facts.number("headAboveExcavation");
    Optional<Given<Double>> founding = facts.number("foundingDepth");
    Optional<Given<Double>> below = facts.number("excavationBelowFooting");
    if (!inputs.has(WATER_DEPTH)
        && head.isPresent()
        && founding.isPresent()
        && below.isPresent()
        && facts.number("groundWaterDepth").isEmpty()) {
      inputs.put(
          WATER_DEPTH,
          Given.derived(
              founding.get().value() + below.get().value() - head.get().value(),
              "base of the excavation less the water above it"));
    }
    inputs.need(WATER_DEPTH, "water presses on the wall and lifts its base");
  }

  private void rock() {
    inputs.known(ROCK_DEPTH);
    Optional<Given<Double>> founding = facts.number("foundingDepth");
    if (!inputs.has(ROCK_DEPTH) && founding.isPresent()) {
      column.strata().stream()
          .filter(one -> one.soil() == SoilClass.ROCK)
          .filter(one -> one.bottomMetres() > founding.get().value())
          .findFirst()
          .ifPresent(
              rock ->
                  inputs.put(
                      ROCK_DEPTH,
                      Given.derived(
                          Math.max(0, rock.topMetres() - founding.get().value()),
                          "top of the layer: " + rock.name())));
    }
    OptionalDouble depth = rockDepth();
    double least = settings.get(EdgeSetting.LEAST_PIT.setting());
    if (depth.isPresent()
        && depth.getAsDouble() < least
        && facts
            .number("excavationBelowFooting")
            .filter(e -> e.value() > depth.getAsDouble())
            .isPresent()) {
      inputs.object(
          "rockDepth",
          "Rock lies so near below the structure that pits would be short or none: rock support alone (line drilling, dressing, bolts) by a specialist, and piles that are mostly sockets. No wall was sized; the setting "
              + EdgeSetting.LEAST_PIT.setting().name()
              + " holds the limit.");
    }
  }

  private OptionalDouble rockDepth() {
    return inputs
        .build()
        .find(ROCK_DEPTH)
        .map(Given::value)
        .map(OptionalDouble::of)
        .orElse(OptionalDouble.empty());
  }

  private void soils() {
    Optional<Given<Double>> founding = facts.number("foundingDepth");
    Optional<Given<Double>> below = facts.number("excavationBelowFooting");
    if (founding.isEmpty() || below.isEmpty() || !EXCAVATION.accepts(below.get().value())) {
      facesByFacts();
      return;
    }
    EdgeGeometry geometry = EdgeGeometry.of(below.get().value(), rockDepth(), settings);
    double top = founding.get().value();
    double toe = top + geometry.wallHeight();
    List<Stratum> faces =
        column.between(top, toe).stream().filter(one -> one.soil() != SoilClass.ROCK).toList();
    if (faces.isEmpty() || column.at(top).isEmpty()) {
      facesByFacts();
    } else {
      faces(faces);
    }
    base(geometry, toe);
    boards(top, toe);
  }

  /**
   * The boards of pits and approach pits meet every layer from the working level to the toe: the
   * one that presses most counts, with its own strength, and the greatest weight of all goes with
   * it; judgement, on the safe side.
   */
  private void boards(double top, double toe) {
    double bench = Math.min(settings.get(EdgeSetting.WORKING_LEVEL.setting()), top);
    if (ground.at(bench).isEmpty() || column.at(bench).isEmpty()) {
      return;
    }
    Optional<Given<Double>> softest = facts.number("undrainedStrength");
    List<LayerSoil> met = LayerSoil.of(ground.between(bench, toe), softest);
    double heaviest =
        column.between(bench, toe).stream()
            .filter(one -> one.soil() != SoilClass.ROCK)
            .mapToDouble(one -> one.unitWeight().value())
            .max()
            .orElse(0);
    LayerSoil.pressingMost(met, heaviest * (toe - bench))
        .filter(one -> one.soil() != SoilClass.ROCK)
        .ifPresent(worst -> boards(worst, LayerSoil.words(met), heaviest));
    List<LayerSoil> above = LayerSoil.of(ground.between(bench, top), softest);
    if (!above.isEmpty() && top > bench) {
      inputs.put(
          APPROACH_LAYERS,
          judged(LayerSoil.words(above), "layers between the working level and the underside"));
    }
  }

  /**
   * The least angle, the least strength and the greatest weight of all layers behind go together.
   */
  private void faces(List<Stratum> faces) {
    String among = faces.stream().map(Stratum::name).collect(Collectors.joining(", "));
    Stratum weakest =
        faces.stream()
            .min(Comparator.comparingDouble(one -> one.frictionAngle().value()))
            .orElseThrow();
    inputs.put(
        FACE_SOIL,
        judged(word(weakest.soil()), "least friction angle of the layers behind: " + among));
    inputs.put(FACE_FRICTION, weakest.frictionAngle());
    faces.stream()
        .map(Stratum::unitWeight)
        .max(Comparator.comparingDouble(Given::value))
        .ifPresent(weight -> inputs.put(FACE_WEIGHT, weight));
    faces.stream()
        .filter(one -> one.soil().clay())
        .map(Stratum::undrainedStrength)
        .min(Comparator.comparingDouble(Given::value))
        .ifPresent(strength -> inputs.put(FACE_STRENGTH, strength));
    inputs.put(
        FACES_RUN,
        judged(
            faces.stream().anyMatch(one -> one.soil().runs()) ? "yes" : "no",
            "whether one of the layers behind runs with water: " + among));
  }

  private void boards(LayerSoil worst, String met, double heaviest) {
    inputs.put(
        BOARD_SOIL,
        judged(
            word(worst.soil()),
            "presses most of the layers that pits and approach pits meet: " + met));
    inputs.put(BOARD_FRICTION, worst.frictionAngle());
    if (worst.soil().clay()) {
      inputs.put(BOARD_STRENGTH, worst.undrainedStrength());
    }
    inputs.put(
        BOARD_WEIGHT,
        Given.derived(heaviest, "the greatest unit weight of the layers that the boards meet"));
  }

  private void facesByFacts() {
    Optional<SoilClass> soil = facts.word("worstSoil").map(Given::value).flatMap(SiteSoils::soil);
    soil.ifPresentOrElse(
        known -> {
          Given<String> word = facts.word("worstSoil").orElseThrow();
          inputs.put(FACE_SOIL, SiteFacts.as(word, word(known)));
          inputs.put(FACES_RUN, SiteFacts.as(word, known.runs() ? "yes" : "no"));
          inputs.orAssume(FACE_FRICTION, known.frictionAngleDegrees(), Source.judgement());
          if (known.clay()) {
            inputs.known(FACE_STRENGTH);
            inputs.orAssume(
                FACE_STRENGTH, known.undrainedStrengthKilopascals(), Source.judgement());
          }
        },
        () -> inputs.need(FACE_SOIL, "pressure, boards and base rest on it"));
    inputs.knownOrAssumed(FACE_WEIGHT);
  }

  private void base(EdgeGeometry geometry, double toe) {
    if (geometry.onRock()) {
      inputs.put(BASE_SOIL, judged(word(SoilClass.ROCK), "the wall goes down to rock"));
      return;
    }
    Optional<Stratum> stratum = column.at(toe + BELOW);
    stratum.ifPresent(
        found -> {
          inputs.put(BASE_SOIL, judged(word(found.soil()), "layer at the toe: " + found.name()));
          inputs.put(BASE_WEIGHT, found.unitWeight());
          if (found.soil().clay()) {
            inputs.put(BASE_STRENGTH, found.undrainedStrength());
          }
        });
    if (stratum.isEmpty()) {
      String face = facts.word("worstSoil").map(Given::value).orElse("");
      SiteSoils.soil(face)
          .ifPresent(
              soil -> {
                inputs.orAssume(
                    BASE_SOIL,
                    word(soil),
                    new Source("the worst soil above, until a boring shows more", Basis.JUDGEMENT));
                if (soil.clay()) {
                  inputs.known(BASE_STRENGTH);
                }
              });
    }
  }

  private void choices() {
    inputs.known(BRACING).orAssume(BRACING, "no", Source.judgement());
    inputs.known(JOINTS).known(ARTESIAN);
    inputs.known(DRAWDOWN).orAssume(DRAWDOWN, "no", Source.judgement());
    facts
        .wordOrAssumed("standUp")
        .ifPresent(
            word -> {
              Origin origin = word.origin() == Origin.STATED ? Origin.STATED : Origin.ASSUMED;
              inputs.put(STAND_UP, new Given<>(word.value(), origin, word.source()));
            });
    inputs.orAssume(STAND_UP, "minutes", Source.judgement());
    inputs.orAssume(BASE_WEIGHT, LIGHT_SOIL, Source.judgement());
  }

  private static Given<String> judged(String word, String how) {
    return new Given<>(word, Origin.DERIVED, new Source(how, Basis.JUDGEMENT));
  }
}
