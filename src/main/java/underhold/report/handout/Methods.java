package underhold.report.handout;

import java.util.ArrayList;
import java.util.List;
import underhold.advice.SupportOption;
import underhold.report.document.Block;
import underhold.report.document.Prose;

/** The methods in plain words: the same for every case. */
final class Methods {
  private Methods() {}

  /** All of them in the order of the program, and the word for no choice. */
  static Block table() {
    List<Block.Row> rows = new ArrayList<>();
    for (SupportOption option : SupportOption.values()) {
      rows.add(
          Block.Row.of(
              Pieces.typed(option.id()), Prose.of(option.label()), Prose.of(means(option))));
    }
    rows.add(
        Block.Row.of(
            Pieces.typed("none"),
            Prose.of("no choice yet"),
            Prose.of("What is known does not carry a choice: say what must be found out first.")));
    return new Block.Table("The methods", Pieces.columns("Word", "Name", "The idea"), rows);
  }

  private static String means(SupportOption option) {
    return switch (option) {
      case PITS ->
          "Pits are dug by hand under the footing, lined with timber, a few at a time and far apart;"
              + " each is filled with concrete and packed dry up to the footing before the next.";
      case NEEDLES ->
          "Beams are put through or under the structure and carry its load to seats that stand clear"
              + " of the dig.";
      case DRILLED_PILES ->
          "Piles are drilled down below the dig; a cap or a beam brings the load to them.";
      case BRACKET_PILES ->
          "Small piles stand outside the structure; brackets on them are shimmed tight under its"
              + " edge.";
      case EDGE_PITS ->
          "Drilled piles carry the structure, and a line of pits at the edge of the dig makes the wall"
              + " that holds the soil where nothing else can build one.";
      case MONITOR ->
          "Nothing is put under the structure: it is surveyed, given limits, watched, and there is a"
              + " plan for what is done when a limit is reached.";
      case REFER ->
          "A specialist is asked: treated or frozen ground, jacked elements, or what else the site"
              + " calls for.";
    };
  }
}
