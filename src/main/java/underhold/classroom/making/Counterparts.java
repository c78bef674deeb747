package underhold.classroom.making;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import underhold.quantity.Measure;
import underhold.site.FactDefinition;
import underhold.site.FactDictionary;

/** The changes of a site that a theme speaks of: facts as they could as well have been. */
final class Counterparts {
  private static final Set<GroundKind> GOOD =
      Set.of(
          GroundKind.STIFF_CLAY, GroundKind.TILL, GroundKind.DENSE_SAND, GroundKind.CEMENTED_SAND);
  private static final List<GroundKind> GOOD_ONES =
      List.of(GroundKind.STIFF_CLAY, GroundKind.TILL, GroundKind.DENSE_SAND);
  private static final List<GroundKind> POOR_ONES =
      List.of(
          GroundKind.FINE_SAND,
          GroundKind.SOFT_CLAY_OVER_GRAVEL,
          GroundKind.LOOSE_SAND,
          GroundKind.SILT);
  private static final List<GroundKind> ROCKS = List.of(GroundKind.ROCK, GroundKind.WEATHERED_ROCK);

  private final Sketch sketch;

  Counterparts(Sketch sketch) {
    this.sketch = sketch;
  }

  /** The changes of a theme, in an order drawn anew for each site. */
  List<Change> of(Theme theme) {
    List<Change> changes = new ArrayList<>();
    if (theme == Theme.MARRIED) {
      married(changes);
    }
    for (String fact : theme.facts()) {
      if (fact.equals("ground")) {
        ground(theme, changes);
      } else if (sketch.value(fact).isPresent()) {
        fact(fact, changes);
      }
    }
    return sketch.draw().shuffled(changes);
  }

  /** Whatever is otherwise in the other zone. */
  private void married(List<Change> changes) {
    if (sketch.zones().size() < 2) {
      return;
    }
    String other = List.copyOf(sketch.zones().keySet()).get(1);
    Map<String, String> whole = new LinkedHashMap<>();
    sketch
        .facts(sketch.first())
        .forEach(
            (fact, value) -> {
              String theirs = sketch.facts(other).get(fact);
              if (theirs != null && !theirs.equals(value)) {
                changes.add(Change.of(fact, theirs));
                whole.put(fact, theirs);
              }
            });
    if (whole.containsKey("excavationPosition") && whole.containsKey("wallGapLength")) {
      Map<String, String> cut = new LinkedHashMap<>(whole);
      cut.keySet()
          .retainAll(
              Set.of("excavationPosition", "underminedLength", "underminedWidth", "wallGapLength"));
      changes.add(new Change(cut, List.of()));
    }
  }

  private void fact(String fact, List<Change> changes) {
    String now = sketch.value(fact).orElseThrow();
    FactDefinition definition = FactDictionary.standard().require(fact);
    if (definition.kind().isNumber()) {
      amounts(fact)
          .filter(other -> !other.equals(now))
          .forEach(v -> changes.add(Change.of(fact, v)));
      return;
    }
    for (FactDefinition.Allowed allowed : definition.values()) {
      if (!allowed.value().equals(now)) {
        word(fact, now, allowed.value(), changes);
      }
    }
  }

  /** Another word, with what must go with it; words that make it another structure are left out. */
  private void word(String fact, String now, String other, List<Change> changes) {
    boolean piled = sketch.value("foundationKind").orElse("").endsWith("-piles");
    switch (fact) {
      case "loadPattern" -> {
        if (!other.equals("area") && !other.equals("cantilevered-edge")) {
          changes.add(Change.of(fact, other));
        }
      }
      case "foundationKind" -> {
        if (other.equals("timber-piles") && !now.equals("box-slab")) {
          changes.add(Change.of(fact, other, "oldPiles", "timber"));
        } else if (piled && other.equals("strip")) {
          changes.add(Change.of(fact, other, "oldPiles", "none"));
        }
      }
      case "outsideAccess", "insideAccess" -> {
        boolean both = sketch.is("rigBothSides", "yes") && !other.endsWith("rig");
        changes.add(both ? Change.of(fact, other, "rigBothSides", "no") : Change.of(fact, other));
      }
      case "oldPiles" -> {
        if (!piled) {
          changes.add(Change.of(fact, other));
        }
      }
      case "footingStrength" -> {
        boolean rubble = sketch.is("foundationKind", "mass-rubble");
        if (!rubble && !piled) {
          changes.add(Change.of(fact, other));
        }
      }
      case "edgeGround" -> {
        if (other.equals("rock")) {
          Map<String, String> rock = new LinkedHashMap<>();
          rock.put(fact, other);
          rock.put("rockJoints", "favourable");
          if (sketch.value("rockJoints").isPresent()) {
            changes.add(new Change(rock, List.of()));
          } else {
            changes.add(new Change(rock, layers(GroundKind.ROCK)));
          }
        } else {
          changes.add(Change.of(fact, other));
        }
      }
      default -> changes.add(Change.of(fact, other));
    }
  }

  private Stream<String> amounts(String fact) {
    Typing typing = sketch.typing();
    double founding = sketch.metres("foundingDepth").orElse(1.0);
    double dig = sketch.metres("excavationDepth").orElse(founding + 2);
    return switch (fact) {
      case "groundWaterDepth" ->
          Stream.of(typing.length(dig + 3), typing.length(founding + 0.3 * (dig - founding)));
      case "clearSpan" -> Stream.of(typing.length(0.5), typing.length(0.8), typing.length(1.8));
      case "seatSpan" ->
          Stream.of(typing.length(24), typing.length(27), typing.length(8), typing.length(16));
      case "seatBearingDepth" -> Stream.of(typing.length(1.5), typing.length(9));
      case "clearShaft" -> Stream.of(typing.length(0.9), typing.length(2.2));
      case "outsideHeadroom", "insideHeadroom" -> Stream.of(typing.length(1.6), typing.length(3.2));
      case "outsideWidth", "insideWidth" -> Stream.of(typing.length(0.8), typing.length(2.5));
      case "loadOffset" -> Stream.of(typing.fineLength(1.3), typing.fineLength(0.25));
      case "gapToExcavation" ->
          Stream.of(
              typing.length(0), typing.length(0.6), typing.length(3), typing.length(2.2 * dig));
      case "excavationDepth" ->
          Stream.of(typing.length(founding + 1.2), typing.length(founding + 4.2));
      case "foundingDepth" ->
          Stream.of(typing.length(dig - 0.3), typing.length(Math.max(0.6, founding - 0.6)));
      case "predictedMovement" -> {
        double limit =
            1000
                * sketch.value("movementLimit").map(v -> Typing.si(v, Measure.LENGTH)).orElse(0.01);
        yield Stream.of(typing.movement(0.4 * limit), typing.movement(1.8 * limit));
      }
      case "movementLimit" ->
          Stream.of(
              typing.movement(2), typing.movement(5), typing.movement(12), typing.movement(20));
      default -> Stream.empty();
    };
  }

  /** Other ground: for the theme of rock, rock for earth or earth for rock; else poor for good. */
  private void ground(Theme theme, List<Change> changes) {
    String main = sketch.layers().get(1).soil();
    boolean rock = main.equals("rock");
    boolean good = GOOD.stream().anyMatch(kind -> kind.main().equals(main));
    boolean edge = sketch.value("edgeGround").isPresent();
    if (theme == Theme.ROCK && edge) {
      return;
    }
    List<GroundKind> others =
        theme == Theme.ROCK ? (rock ? GOOD_ONES : ROCKS) : good || rock ? POOR_ONES : GOOD_ONES;
    others.stream()
        .filter(kind -> !kind.main().equals(main))
        .forEach(kind -> changes.add(Change.ground(layers(kind))));
  }

  private List<Layer> layers(GroundKind kind) {
    return kind.layers(sketch.draw(), sketch.metres("foundingDepth").orElse(1.0));
  }
}
