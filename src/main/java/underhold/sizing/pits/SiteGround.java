package underhold.sizing.pits;

import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import underhold.site.GroundLayer;
import underhold.site.GroundProfile;
import underhold.sizing.Basis;
import underhold.sizing.Given;
import underhold.sizing.Origin;
import underhold.sizing.Source;
import underhold.sizing.zone.LayerSoil;
import underhold.sizing.zone.SiteFacts;
import underhold.sizing.zone.SiteSoils;

/**
 * The soil at the faces and below the base of the pits.
 *
 * <p>At the faces, from the underside of the footing to the pit base, stands the layer that presses
 * most on the boards; the least friction angle, the least undrained strength and the greatest unit
 * weight of all layers there go with it. Below the base, to a depth of twice the footing's width,
 * stands the layer that bears least. Both are judgement, on the safe side. Without layers the facts
 * of the zone serve.
 */
final class SiteGround {
  /** Depth below the base that counts for bearing, in footing widths; judgement. */
  private static final double BASE_WIDTHS = 2;

  private final SiteFacts facts;
  private final List<LayerSoil> faces;
  private final List<LayerSoil> base;
  private final List<LayerSoil> above;
  private final double stress;
  private final double width;

  SiteGround(SiteFacts facts, GroundProfile ground, OptionalDouble pits) {
    this.facts = facts;
    this.width = facts.number("footingWidth").map(Given::value).orElse(1.0);
    this.stress = facts.number("lineLoad").map(Given::value).orElse(100.0 * width) / width;
    Optional<Given<Double>> founding = facts.number("foundingDepth");
    if (founding.isEmpty() || pits.isEmpty() || ground.at(founding.get().value()).isEmpty()) {
      faces = List.of();
      base = List.of();
      above = List.of();
    } else {
      double top = founding.get().value();
      double bottom = top + pits.getAsDouble();
      above =
          soils(ground.between(0, top)).stream()
              .filter(one -> ground.bottomMetres(one.layer()) <= top)
              .toList();
      faces = soils(ground.between(top, bottom));
      base = soils(ground.between(bottom, bottom + BASE_WIDTHS * width));
    }
  }

  private List<LayerSoil> soils(List<GroundLayer> layers) {
    return LayerSoil.of(layers, facts.number("undrainedStrength"));
  }

  /** Layers that only the approach pits go through, in words; empty where there are none. */
  String above() {
    return LayerSoil.words(above);
  }

  void write(PitsInputBuilder input, SiteAmounts amounts) {
    LayerSoil.pressingMost(faces, stress)
        .ifPresentOrElse(worst -> faces(worst, input, amounts), () -> facesByFacts(input, amounts));
    LayerSoil.bearingLeast(base, width)
        .ifPresentOrElse(worst -> base(worst, input, amounts), () -> baseByFacts(input, amounts));
  }

  private void faces(LayerSoil worst, PitsInputBuilder input, SiteAmounts amounts) {
    String among = " of the layers at the faces: " + LayerSoil.words(faces);
    input.faceSoil(derived(worst.soil(), "presses most" + among));
    input.facesRun(
        derived(
            faces.stream().anyMatch(one -> one.soil().runs()),
            "whether one" + among + " runs with water"));
    faces.stream()
        .map(LayerSoil::frictionAngle)
        .min(Comparator.comparingDouble(Given::value))
        .ifPresent(least -> amounts.put(PitsFact.FACE_FRICTION_ANGLE, least));
    faces.stream()
        .filter(one -> one.soil().clay())
        .map(LayerSoil::undrainedStrength)
        .min(Comparator.comparingDouble(Given::value))
        .ifPresent(least -> amounts.put(PitsFact.FACE_UNDRAINED_STRENGTH, least));
    standUp(among, input);
    List<Given<Double>> weights = faces.stream().flatMap(l -> l.unitWeight().stream()).toList();
    (weights.size() == faces.size()
            ? weights.stream().max(Comparator.comparingDouble(Given::value))
            : facts.numberOrAssumed("soilUnitWeight"))
        .ifPresent(weight -> amounts.put(PitsFact.FACE_UNIT_WEIGHT, weight));
  }

  /** The shortest time, where every layer states one. */
  private void standUp(String among, PitsInputBuilder input) {
    List<StandUp> times =
        faces.stream()
            .flatMap(one -> one.layer().maybeStandUp().stream())
            .map(word -> StandUp.valueOf(word.toUpperCase(Locale.ROOT)))
            .toList();
    if (times.size() == faces.size() && facts.word("standUp").isPresent()) {
      input.standUp(derived(Collections.min(times), "the shortest" + among));
    }
  }

  private void facesByFacts(PitsInputBuilder input, SiteAmounts amounts) {
    facts
        .word("worstSoil")
        .ifPresent(
            word ->
                SiteSoils.soil(word.value())
                    .ifPresent(soil -> input.faceSoil(SiteFacts.as(word, soil))));
    facts
        .number("undrainedStrength")
        .ifPresent(strength -> amounts.put(PitsFact.FACE_UNDRAINED_STRENGTH, strength));
    facts
        .numberOrAssumed("soilUnitWeight")
        .ifPresent(weight -> amounts.put(PitsFact.FACE_UNIT_WEIGHT, weight));
  }

  private void base(LayerSoil worst, PitsInputBuilder input, SiteAmounts amounts) {
    input.baseSoil(
        derived(
            worst.soil(),
            "bears least within two footing widths below the pit base of: "
                + LayerSoil.words(base)));
    amounts.put(PitsFact.BASE_FRICTION_ANGLE, worst.frictionAngle());
    if (worst.soil().clay()) {
      amounts.put(PitsFact.BASE_UNDRAINED_STRENGTH, worst.undrainedStrength());
    }
    worst.unitWeight().ifPresent(weight -> amounts.put(PitsFact.BASE_UNIT_WEIGHT, weight));
  }

  /** A bearing layer is below the base only where its depth is known, for pits go down to it. */
  private void baseByFacts(PitsInputBuilder input, SiteAmounts amounts) {
    if (facts.number("bearingDepth").isEmpty()) {
      return;
    }
    facts
        .word("bearingKind")
        .ifPresent(
            word ->
                SiteSoils.bearing(word.value())
                    .ifPresent(soil -> input.baseSoil(SiteFacts.as(word, soil))));
    facts
        .number("undrainedStrength")
        .ifPresent(strength -> amounts.put(PitsFact.BASE_UNDRAINED_STRENGTH, strength));
  }

  private static <T> Given<T> derived(T value, String how) {
    return new Given<>(value, Origin.DERIVED, new Source(how, Basis.JUDGEMENT));
  }
}
