package underhold.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import underhold.review.file.RecordTree;
import underhold.review.record.Entry;
import underhold.review.record.ReviewRecord;
import underhold.review.record.ReviewRow;
import underhold.review.record.Target;

/** A review as a JSON tree. */
public final class ReviewJson {
  private ReviewJson() {}

  /**
   * The review as it stands, with every entry.
   *
   * @param advice what became of the consultation reviewed; empty where it is as it was
   * @param noted what a head noted elsewhere says; empty where none was given
   */
  public static Map<String, Object> of(ReviewRecord record, String advice, String noted) {
    return Json.object(
        "reviewed",
        RecordTree.of(record.file().of()),
        "consultation",
        advice,
        "whole",
        record.intact(),
        "faults",
        record.faults().stream()
            .map(
                fault ->
                    Json.object(
                        "kind", fault.kind().name().toLowerCase(Locale.ROOT),
                        "entry", fault.entry(),
                        "message", fault.message()))
            .toList(),
        "head",
        record.head(),
        "noted",
        noted,
        "round",
        record.round(),
        "signed",
        record.signed().words(),
        "openQueries",
        record.openQueries().stream().map(query -> query.asked().number()).toList(),
        "overrides",
        record.overrides().stream().map(ReviewJson::overridden).toList(),
        "signatures",
        record.signatures().stream()
            .map(
                one ->
                    Json.object(
                        "entry", one.entry().number(),
                        "by", one.entry().by(),
                        "role", one.entry().role().orElse(""),
                        "statement", one.entry().statement().orElse(""),
                        "covers", one.covers()))
            .toList(),
        "entries",
        entries(record),
        "caution",
        ReviewText.CAUTION);
  }

  private static Map<String, Object> overridden(ReviewRecord.Overridden one) {
    Entry entry = one.entry();
    return Json.object(
        "entry", entry.number(),
        "target", entry.target().orElse(""),
        "original", entry.original().orElse(""),
        "instead", entry.instead().orElse(""),
        "by", entry.by(),
        "why", entry.why().orElse(""),
        "againstSafety", one.againstSafety(),
        "state", one.state().words());
  }

  private static List<Map<String, Object>> entries(ReviewRecord record) {
    List<ReviewRow> rows = ReviewRow.of(record);
    List<Map<String, Object>> trees = new ArrayList<>();
    for (int i = 0; i < rows.size(); i++) {
      Map<String, Object> tree = new LinkedHashMap<>(RecordTree.of(record.entries().get(i)));
      tree.put("state", rows.get(i).state());
      trees.add(tree);
    }
    return trees;
  }

  /** Parts that entries can speak of. */
  public static Map<String, Object> targets(List<Target> targets) {
    return Json.object(
        "targets",
        targets.stream()
            .map(
                target ->
                    Json.object(
                        "target", target.path(),
                        "kind", target.kind().word(),
                        "label", target.label(),
                        "original", target.original(),
                        "overrides", target.instead()))
            .toList());
  }
}
