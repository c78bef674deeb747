package underhold.sizing.drilledpiles;

import java.util.Map;
import underhold.sizing.Amount;
import underhold.sizing.Phrase;

/**
 * How many piles there are, in words that leave no column out.
 *
 * @param each piles of one group
 * @param columns groups, each under a column; 1 where there are no columns
 */
record PileCount(int each, int columns) {

  static PileCount of(PileCase site, PileDesign design) {
    return new PileCount(design.layout().piles(), WorkPlan.of(site, design).groups());
  }

  /** "every pile", under every column where there are several. */
  String everyPile(boolean first) {
    return (first ? "Every pile" : "every pile") + (columns > 1 ? " under every column" : "");
  }

  /** A sentence in which "{piles}" stands for all of them, with one more amount. */
  Phrase of(String template, String name, Amount amount) {
    return columns > 1
        ? Phrase.of(
            template.replace(
                "{piles}", "each of the {n} piles under each of the {c} columns, {all} in all,"),
            Map.of(
                "n",
                Amount.count(each),
                "c",
                Amount.count(columns),
                "all",
                Amount.count((double) each * columns),
                name,
                amount))
        : Phrase.of(
            template.replace("{piles}", each == 1 ? "the pile" : "each of the {n} piles"),
            each == 1 ? Map.of(name, amount) : Map.of("n", Amount.count(each), name, amount));
  }
}
