package underhold.review.audit;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import underhold.advice.Condition;
import underhold.site.FactDefinition;
import underhold.site.FactDictionary;

/**
 * What no zone can be, as boxes: the checks of a site and the calculations of facts, as far as a
 * box can say them. Tests hold each of them to the checks and calculations themselves. Sums and
 * ratios of amounts are no boxes and are left out, which can only make more seem possible.
 */
final class SiteRelations {
  private static final FactDictionary DICTIONARY = FactDictionary.standard();
  private static final String POSITION = "excavationPosition";
  private static final NumberSet ABOVE_0 = NumberSet.above(0);
  private static final double SOME_ROCK_METRES = 0.06;
  private static final double WHOLE_DAY_HOURS = 24;
  private static final double LEAST_DEPTH_METRES = 0.001;

  /** Everything that excludes itself, each entry a box in which no zone lies. */
  static final List<Box> EXCLUDED =
      List.of(
          numberAnd("excavationBelowFooting", ABOVE_0, POSITION, "no-excavation"),
          numberAnd(
              "underminedLength", ABOVE_0, POSITION, "beside", "inside-walls", "no-excavation"),
          numberAnd(
              "underminedWidth", ABOVE_0, POSITION, "beside", "inside-walls", "no-excavation"),
          numberAnd("wallGapLength", ABOVE_0, POSITION, "beside", "inside-walls", "no-excavation"),
          numberAnd("gapToExcavation", ABOVE_0, POSITION, "crosses-support", "wholly-under"),
          words("foundationKind", "timber-piles", "other-piles").and(words("oldPiles", "none")),
          numberAnd("nightClosure", NumberSet.below(WHOLE_DAY_HOURS), "liveUse", "none"),
          numberAnd("rockDepth", NumberSet.above(SOME_ROCK_METRES), "soilAtFooting", "rock"),
          Box.of("rockDepth", FactSet.numbers(NumberSet.atMost(0)))
              .and(wordsBut("soilAtFooting", "rock", "decomposed-rock")),
          words("worstSoil", "dense-sand", "loose-sand", "mixed-fine-sand", "silt", "fill", "peat")
              .and(words("runningLayer", "no")),
          words(
                  "worstSoil",
                  "decomposed-rock",
                  "cemented-sand",
                  "dense-gravel",
                  "dense-sand",
                  "loose-sand",
                  "mixed-fine-sand",
                  "silt",
                  "fill",
                  "peat")
              .and(words("openLayer", "no")),
          words("runningLayer", "yes").and(words("openLayer", "no")),
          numberAnd("excavationBelowFooting", NumberSet.atMost(0), "digsBelowFooting", "yes"),
          numberAnd("excavationBelowFooting", ABOVE_0, "digsBelowFooting", "no"),
          known("excavationBelowFooting").and(unknown("digsBelowFooting")),
          words(POSITION, "no-excavation").and(but("digsBelowFooting", "no")),
          unknown("excavationBelowFooting").and(words("digsBelowFooting", "yes")),
          known("influenceRatio").and(wordsBut(POSITION, "beside", "inside-walls")),
          known("influenceRatio")
              .and(
                  Box.of(
                      "excavationBelowFooting",
                      FactSet.numbers(NumberSet.below(LEAST_DEPTH_METRES)))),
          known("influenceRatio").and(unknown("excavationBelowFooting")),
          known("influenceRatio").and(unknown("gapToExcavation")),
          known("gapOverDepth").and(wordsBut(POSITION, "beside", "inside-walls")),
          known("gapOverDepth").and(unknown("excavationDepth")),
          known("forecastRatio").and(unknown("predictedMovement")),
          known("forecastRatio").and(unknown("movementLimit")),
          known("stabilityNumber").and(words(POSITION, "no-excavation")),
          known("stabilityNumber").and(unknown("undrainedStrength")),
          known("bracketLoad").and(unknown("lineLoad")),
          known("bracketLoad").and(unknown("clearSpan")),
          known("toeBelowExcavation").and(unknown("pileToeDepth")),
          known("pitDepth").and(unknown("bearingDepth")),
          known("bearingBelowExcavation").and(unknown("bearingDepth")),
          known("pitInRock").and(unknown("rockDepth")),
          known("pitInRock").and(unknown("pitDepth")),
          known("drawdownNeeded").and(unknown("headAbovePitBase")),
          known("headAbovePitBase").and(unknown("drawdownNeeded")));

  /** Amounts of which the first is never above the second, in one zone. */
  private static final List<List<String>> ORDERED =
      List.of(
          List.of("excavationBelowFooting", "excavationDepth"),
          List.of("excavationBelowFooting", "pitDepth"),
          List.of("bearingDepth", "pitDepth"),
          List.of("bearingBelowExcavation", "bearingDepth"));

  /** What calculated amounts may be off by rounding: a share, and so much at least. */
  private static final double ROUNDING_SHARE = 0.01;

  private static final double ROUNDING_METRES = 0.01;

  private SiteRelations() {}

  /**
   * The order of amounts as boxes, cut at the limits of a pack: the smaller is not clearly above a
   * limit where the larger is not above it.
   *
   * @param conditions all conditions of the pack
   */
  static List<Box> ordered(List<Condition> conditions) {
    List<Box> boxes = new ArrayList<>();
    for (List<String> pair : ORDERED) {
      TreeSet<Double> cuts = new TreeSet<>(List.of(0.0));
      conditions.stream()
          .filter(condition -> pair.contains(condition.fact()) && condition.operator().isNumeric())
          .forEach(condition -> cuts.add(condition.threshold()));
      for (double cut : cuts) {
        double clear = cut + Math.max(ROUNDING_METRES, ROUNDING_SHARE * Math.abs(cut));
        boxes.add(
            Box.of(pair.get(0), FactSet.numbers(NumberSet.above(clear)))
                .and(Box.of(pair.get(1), FactSet.numbers(NumberSet.atMost(cut)))));
      }
    }
    return boxes;
  }

  private static Box numberAnd(String amount, NumberSet numbers, String fact, String... words) {
    return Box.of(amount, FactSet.numbers(numbers)).and(words(fact, words));
  }

  private static Box words(String fact, String... words) {
    return Box.of(fact, FactSet.words(Set.of(words)));
  }

  /** Every other word; known. */
  private static Box wordsBut(String fact, String... words) {
    Set<String> rest = new LinkedHashSet<>(FactSet.all(definition(fact)).words());
    rest.removeAll(Set.of(words));
    return Box.of(fact, FactSet.words(rest));
  }

  /** Everything but one word, not known among it. */
  private static Box but(String fact, String word) {
    return Box.of(fact, FactSet.all(definition(fact)).minus(FactSet.words(Set.of(word))));
  }

  private static Box known(String fact) {
    return Box.of(fact, FactSet.all(definition(fact)).minus(nobody()));
  }

  private static Box unknown(String fact) {
    return Box.of(fact, nobody());
  }

  private static FactSet nobody() {
    return new FactSet(Set.of(), NumberSet.NONE, true);
  }

  private static FactDefinition definition(String fact) {
    return DICTIONARY.require(fact);
  }
}
