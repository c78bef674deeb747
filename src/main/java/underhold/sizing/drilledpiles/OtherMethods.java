package underhold.sizing.drilledpiles;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.stream.Collectors;
import underhold.sizing.Amount;
import underhold.sizing.Choice;
import underhold.sizing.Phrase;
import underhold.sizing.drilledpiles.BondLayer.Kind;

/** What the other published methods make of the same shaft, so that a reader sees their spread. */
final class OtherMethods {
  private OtherMethods() {}

  static Phrase words(PileCase site, PileDesign design) {
    if (design.pieces().isEmpty()) {
      return Phrase.of("No ground that counts is reached.");
    }
    Map<String, Amount> others = new LinkedHashMap<>();
    if (Designer.meets(design.pieces(), Kind.CLAY)) {
      add(others, site, design, PileChoices.ALPHA, "alpha");
    }
    if (Designer.meets(design.pieces(), Kind.SAND)) {
      add(others, site, design, PileChoices.BETA, "beta");
    }
    if (Designer.meets(design.pieces(), Kind.ROCK)) {
      add(others, site, design, PileChoices.ROCK, "rock");
    }
    String list =
        others.keySet().stream()
            .map(name -> name + " {" + name + "}")
            .collect(Collectors.joining(", "));
    return Phrase.of("By the other methods that can be set: " + list + ".", others);
  }

  private static void add(
      Map<String, Amount> others, PileCase site, PileDesign design, Choice choice, String name) {
    for (String word : choice.words()) {
      if (!site.is(choice, word)) {
        PileCase other =
            new PileCase(
                site.inputs(), site.settings().with(choice, word), site.layers(), site.access());
        double side =
            new Ground(other)
                .pieces(design.toeMetres()).stream()
                    .mapToDouble(SidePiece::resistanceKilonewtons)
                    .sum();
        others.put(name + " " + word, Amount.force(side));
      }
    }
  }
}
