package underhold.report.drawing.edgepits;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import underhold.report.drawing.edgepits.EdgeWallNumbers.Level;
import underhold.report.drawing.numbers.SheetNumbers;

/** What the section of the wall of pits says in words. */
record EdgeWallWords(SheetNumbers numbers, EdgeWallNumbers wall) {
  /** What is drawn, in words. */
  List<String> told() {
    List<String> words = new ArrayList<>();
    words.add(
        "Wall "
            + numbers.length(wall.height())
            + " high and "
            + numbers.length(wall.thickness())
            + " thick; excavation "
            + numbers.length(wall.excavation())
            + " below the structure.");
    for (int i = 0; i < wall.levels().size(); i++) {
      Level level = wall.levels().get(i);
      words.add(
          "Level %d of %ss, %s below the structure: %s of wall, %s in each; the ground in front is then at %s."
              .formatted(
                  i + 1,
                  wall.kind(),
                  numbers.length(level.depth()),
                  level.line().in(numbers.units()),
                  level.brace().in(numbers.units()),
                  level.ground().in(numbers.units())));
    }
    if (wall.levels().isEmpty()) {
      words.add("No braces or ties are on the sheet.");
    }
    numbers
        .result("toe-force")
        .ifPresent(force -> words.add("Force left to the toe: " + force.in(numbers.units()) + "."));
    return words;
  }

  /** What is written below the drawing. */
  List<String> below(PressureDiagram diagram, double height) {
    List<String> words = new ArrayList<>();
    words.add(diagram.words("At the top", 0));
    words.add(diagram.words("At the base", height));
    Optional<String> share =
        numbers.symbol("pressure-top-design", "s").map(value -> value.in(numbers.units()));
    words.add(
        "Earth pressure "
            + numbers.word("earth-pressure")
            + ", with "
            + share.orElse("")
            + " of the structure's load on the soil. Brace forces are the greatest of all stages. "
            + numbers
                .check("brace-capacity")
                .map(check -> "Braces: " + check.verdict().label() + ".")
                .orElse("No braces are on the sheet."));
    return words;
  }
}
