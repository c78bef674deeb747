package underhold.report.handout;

import java.util.ArrayList;
import java.util.List;
import underhold.classroom.Rubric;
import underhold.report.document.Block;
import underhold.report.document.Prose;

/** What is given points, as tables. */
final class RubricTables {
  private RubricTables() {}

  /** The rubric; that of all zones together only where there are several. */
  static List<Block> of(boolean together) {
    List<Block> blocks = new ArrayList<>();
    blocks.add(table("An answer for a zone, " + Rubric.ofZone() + " points", Rubric.zoneRows()));
    if (together) {
      blocks.add(
          table(
              "An answer for all zones together, " + Rubric.ofScheme() + " points",
              Rubric.schemeRows()));
    }
    blocks.add(table("A question of size or sequence", Rubric.questionRows()));
    blocks.add(Pieces.paragraph(Rubric.general() + " The weights are judgement."));
    return blocks;
  }

  private static Block table(String caption, List<Rubric.Row> rows) {
    return new Block.Table(
        caption,
        Pieces.columns("Part", "Points", "What they are given for"),
        rows.stream()
            .map(
                row ->
                    Block.Row.of(
                        Prose.of(row.part()),
                        Prose.of(String.valueOf(row.points())),
                        Prose.of(row.means())))
            .toList());
  }
}
