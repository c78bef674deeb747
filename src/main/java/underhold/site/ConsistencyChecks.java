package underhold.site;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import underhold.quantity.Quantity;

/** Facts of one zone that exclude each other although neither follows from the other. */
final class ConsistencyChecks {
  private static final Set<String> NOT_UNDER = Set.of("beside", "inside-walls", "no-excavation");
  private static final Set<String> RIGHT_UNDER = Set.of("crosses-support", "wholly-under");
  private static final Set<String> PILED = Set.of("timber-piles", "other-piles");
  private static final Set<String> ROCKS = Set.of("rock", "decomposed-rock");
  private static final String POSITION = "excavationPosition";
  private static final double WHOLE_DAY_HOURS = 24;

  static final List<ConsistencyCheck> ALL =
      List.of(
          new ConsistencyCheck(
              "without an excavation nothing is dug below the footing",
              List.of("excavationBelowFooting", POSITION),
              known -> above0(known, "excavationBelowFooting", Set.of("no-excavation"))),
          new ConsistencyCheck(
              "soil is removed only from under what the excavation reaches",
              List.of("underminedLength", POSITION),
              known -> above0(known, "underminedLength", NOT_UNDER)),
          new ConsistencyCheck(
              "an excavation reaches in only under what it goes under",
              List.of("underminedWidth", POSITION),
              known -> above0(known, "underminedWidth", NOT_UNDER)),
          new ConsistencyCheck(
              "the excavation wall has a gap only where the structure stands over its line",
              List.of("wallGapLength", POSITION),
              known -> above0(known, "wallGapLength", NOT_UNDER)),
          new ConsistencyCheck(
              "there is no gap to an excavation right under the element",
              List.of("gapToExcavation", POSITION),
              known -> above0(known, "gapToExcavation", RIGHT_UNDER)),
          new ConsistencyCheck(
              "a foundation on piles has piles",
              List.of("oldPiles", "foundationKind"),
              ConsistencyChecks::pilesWithoutPiles),
          new ConsistencyCheck(
              "rock that bears is where the good bearing is",
              List.of("rockDepth", "bearingDepth", "bearingKind"),
              ConsistencyChecks::rockAwayFromBearing),
          new ConsistencyCheck(
              "a pit is at least as deep as the excavation",
              List.of("headAbovePitBase", "headAboveExcavation"),
              ConsistencyChecks::pitBaseAboveExcavation),
          new ConsistencyCheck(
              "only what is in use is closed at night",
              List.of("nightClosure", "liveUse"),
              ConsistencyChecks::closureWithoutUse),
          new ConsistencyCheck(
              "a footing on rock has rock right under it",
              List.of("rockDepth", "soilAtFooting"),
              ConsistencyChecks::rockFootingAboveRock),
          new ConsistencyCheck(
              "rock right under a footing is the soil at the footing",
              List.of("rockDepth", "soilAtFooting"),
              ConsistencyChecks::rockUnderAnotherSoil),
          new ConsistencyCheck(
              "good bearing does not lie below rock",
              List.of("bearingDepth", "rockDepth"),
              ConsistencyChecks::bearingBelowRock),
          new ConsistencyCheck(
              "where the worst soil can run, a layer can run",
              List.of("worstSoil", "runningLayer"),
              known -> bothAre(known, "worstSoil", LayerDerivations.CAN_RUN, "runningLayer")),
          new ConsistencyCheck(
              "where all is sound rock, no layer of soil can run",
              List.of("worstSoil", "runningLayer"),
              known ->
                  is(known, "worstSoil", "rock") && is(known, "runningLayer", "yes")
                      ? both(known, "worstSoil", "runningLayer")
                      : null),
          new ConsistencyCheck(
              "where the worst soil lets water through, a layer does",
              List.of("worstSoil", "openLayer"),
              known ->
                  bothAre(known, "worstSoil", LayerDerivations.LETS_WATER_THROUGH, "openLayer")),
          new ConsistencyCheck(
              "a layer that can run lets water through",
              List.of("runningLayer", "openLayer"),
              known -> bothAre(known, "runningLayer", Set.of("yes"), "openLayer")));

  private ConsistencyChecks() {}

  /** One fact has one of the words and the other is no. */
  private static @Nullable String bothAre(
      FactView known, String fact, Set<String> words, String denied) {
    String word = known.word(fact).orElse("");
    boolean clash = words.contains(word) && known.word(denied).orElse("").equals("no");
    return clash ? both(known, fact, denied) : null;
  }

  private static @Nullable String above0(FactView known, String amount, Set<String> positions) {
    Optional<Quantity> quantity = known.amount(amount);
    boolean excluded = known.word(POSITION).filter(positions::contains).isPresent();
    return excluded && quantity.isPresent() && quantity.get().si() > 0
        ? both(known, amount, POSITION)
        : null;
  }

  private static @Nullable String pilesWithoutPiles(FactView known) {
    boolean piled = known.word("foundationKind").filter(PILED::contains).isPresent();
    return piled && is(known, "oldPiles", "none")
        ? both(known, "foundationKind", "oldPiles")
        : null;
  }

  private static @Nullable String rockAwayFromBearing(FactView known) {
    Optional<Quantity> rock = known.amount("rockDepth");
    Optional<Quantity> bearing = known.amount("bearingDepth");
    if (rock.isEmpty() || bearing.isEmpty() || !is(known, "bearingKind", "rock")) {
      return null;
    }
    FactDefinition definition = known.fact("rockDepth").definition();
    boolean apart =
        Agreement.clearlyLess(definition, rock.get(), bearing.get())
            || Agreement.clearlyLess(definition, bearing.get(), rock.get());
    return apart
        ? both(known, "rockDepth", "bearingDepth") + ", but the bearing layer is rock"
        : null;
  }

  private static @Nullable String pitBaseAboveExcavation(FactView known) {
    Optional<Quantity> pit = known.amount("headAbovePitBase");
    Optional<Quantity> excavation = known.amount("headAboveExcavation");
    boolean less =
        pit.isPresent()
            && excavation.isPresent()
            && Agreement.clearlyLess(
                known.fact("headAbovePitBase").definition(), pit.get(), excavation.get());
    return less
        ? both(known, "headAbovePitBase", "headAboveExcavation")
            + ", but a pit goes at least as deep as the excavation"
        : null;
  }

  private static @Nullable String closureWithoutUse(FactView known) {
    boolean partOfDay =
        known.amount("nightClosure").filter(hours -> hours.si() < WHOLE_DAY_HOURS).isPresent();
    return partOfDay && is(known, "liveUse", "none")
        ? both(known, "nightClosure", "liveUse")
        : null;
  }

  private static @Nullable String rockFootingAboveRock(FactView known) {
    Optional<Quantity> rock = known.amount("rockDepth");
    boolean below = rock.isPresent() && rock.get().si() > Agreement.LENGTH_METRES;
    return below && is(known, "soilAtFooting", "rock")
        ? both(known, "rockDepth", "soilAtFooting")
        : null;
  }

  private static @Nullable String rockUnderAnotherSoil(FactView known) {
    Optional<Quantity> rock = known.amount("rockDepth");
    Optional<String> soil = known.word("soilAtFooting");
    boolean right = rock.isPresent() && rock.get().si() <= 0;
    boolean other = soil.isPresent() && !ROCKS.contains(soil.get());
    return right && other ? both(known, "rockDepth", "soilAtFooting") : null;
  }

  private static @Nullable String bearingBelowRock(FactView known) {
    Optional<Quantity> rock = known.amount("rockDepth");
    Optional<Quantity> bearing = known.amount("bearingDepth");
    return rock.isPresent()
            && bearing.isPresent()
            && !is(known, "bearingKind", "rock") // told by the check above
            && Agreement.clearlyLess(
                known.fact("rockDepth").definition(), rock.get(), bearing.get())
        ? both(known, "bearingDepth", "rockDepth")
        : null;
  }

  private static boolean is(FactView known, String fact, String word) {
    return known.word(fact).filter(word::equals).isPresent();
  }

  private static String both(FactView known, String one, String other) {
    return show(known.fact(one)) + ", and " + show(known.fact(other));
  }

  private static String show(Fact fact) {
    String shown = fact.definition().label() + " is " + PlainText.shown(fact.text());
    return fact.origin() == Origin.DERIVED ? shown + " (" + fact.how() + ")" : shown;
  }
}
