package underhold.report.handout;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import underhold.advice.Finding;
import underhold.classroom.Cited;
import underhold.report.document.Block;
import underhold.report.document.Prose;
import underhold.report.document.Section;

/** The sources that a key cites, with what each is worth and the rules that rest on it. */
final class Sources {
  private static final String NONE = "No source";

  private final Map<String, Set<String>> rules = new TreeMap<>();

  /** The reason of a finding with its rule and basis; its source is noted. */
  String cite(Finding finding) {
    return cite(finding, finding.reason());
  }

  /** The same with other words for the reason. */
  String cite(Finding finding, String reason) {
    String basis = finding.rule().basis().notice();
    String source = finding.source().isEmpty() ? NONE : finding.source();
    rules.computeIfAbsent(source + ": " + basis, key -> new TreeSet<>()).add(finding.rule().id());
    return Cited.words(finding, reason);
  }

  /** All of them. */
  Section section() {
    List<Block.Row> rows = new ArrayList<>();
    rules.forEach(
        (source, ids) ->
            rows.add(Block.Row.of(Prose.of(source), Prose.of(String.join(", ", ids)))));
    return Section.of(
        "sources",
        "Sources",
        List.of(
            Pieces.table(
                "What the rules of this key rest on, and what that is worth",
                Pieces.columns("Source: its basis", "Rules"),
                rows,
                "Nothing is cited.")));
  }
}
