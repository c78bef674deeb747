package underhold.review.record;

import java.util.ArrayList;
import java.util.List;

/**
 * An entry as plain words, for tables. The texts are as typed: a view that prints them makes them
 * safe.
 *
 * @param number its number
 * @param round its round
 * @param when when, UTC
 * @param who name, and role if told
 * @param what what it does, in words
 * @param about the part it speaks of, or the entry it refers to; may be empty
 * @param original what the consultation says there; empty where it speaks of no part
 * @param text what is said, with the reason; may be empty
 * @param state what became of it; may be empty
 */
public record ReviewRow(
    int number,
    int round,
    String when,
    String who,
    String what,
    String about,
    String original,
    String text,
    String state) {

  /** The rows of a record, in the order written. */
  public static List<ReviewRow> of(ReviewRecord record) {
    List<ReviewRow> rows = new ArrayList<>();
    for (Entry entry : record.entries()) {
      rows.add(
          new ReviewRow(
              entry.number(),
              entry.round(),
              when(entry),
              entry.by() + entry.role().map(role -> ", " + role).orElse(""),
              what(entry),
              about(entry),
              entry.original().orElse(""),
              text(entry),
              state(record, entry)));
    }
    return rows;
  }

  /** {@code 2026-03-05 14:30:00 UTC}. */
  public static String when(Entry entry) {
    return entry.when().toString().replace('T', ' ').replace("Z", " UTC");
  }

  private static String what(Entry entry) {
    return switch (entry.does()) {
      case START -> "begins the review";
      case COMMENT -> "comments";
      case QUERY -> "asks";
      case ANSWER -> "answers";
      case OVERRIDE -> "overrides: " + entry.instead().orElse("");
      case WITHDRAW -> "withdraws";
      case SIGN ->
          "signs: " + entry.statement().flatMap(Statement::find).map(Statement::meaning).orElse("");
      case REOPEN -> "opens round " + entry.round();
    };
  }

  private static String about(Entry entry) {
    return entry.target().or(() -> entry.refers().map(number -> "entry " + number)).orElse("");
  }

  private static String text(Entry entry) {
    List<String> parts = new ArrayList<>();
    entry.text().ifPresent(parts::add);
    entry.why().ifPresent(why -> parts.add("Reason: " + why));
    return String.join("\n", parts);
  }

  private static String state(ReviewRecord record, Entry entry) {
    boolean withdrawn = record.withdrawal(entry).isPresent();
    return switch (entry.does()) {
      case QUERY ->
          record.queries().stream()
              .filter(query -> query.asked().equals(entry))
              .map(query -> query.withdrawn() ? "withdrawn" : query.open() ? "open" : "answered")
              .findFirst()
              .orElse("");
      case OVERRIDE ->
          record.overrides().stream()
              .filter(override -> override.entry().equals(entry))
              .map(override -> override.state().words())
              .findFirst()
              .orElse("");
      case SIGN ->
          entry.round() == record.round() ? "covers all before it" : "covers a round before";
      case COMMENT, ANSWER -> withdrawn ? "withdrawn" : "";
      case START, WITHDRAW, REOPEN -> "";
    };
  }
}
