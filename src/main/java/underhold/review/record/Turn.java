package underhold.review.record;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import underhold.site.NearestName;
import underhold.site.PlainText;

/** Whether an entry of a kind may come next, and refers to what it can refer to. */
final class Turn {
  private final ReviewRecord record;
  private final Draft draft;

  Turn(ReviewRecord record, Draft draft) {
    this.record = record;
    this.draft = draft;
  }

  void check(Reasons reasons) {
    boolean signed = record.signed() == ReviewRecord.Signed.YES;
    switch (draft.kind()) {
      case SIGN -> sign(reasons);
      case REOPEN -> {
        reason("a new round", reasons);
        if (!signed) {
          reasons.state("The round that goes on is not signed: just go on with it.");
        }
      }
      case START -> reasons.state("The review has begun already.");
      case COMMENT, QUERY, ANSWER, OVERRIDE, WITHDRAW -> {
        if (signed) {
          reasons.state(
              "The record is signed, and a signature covers what stood before it. To go on open a"
                  + " new round, which it does not cover: review reopen FILE --by NAME --why"
                  + " REASON.");
        }
        refers(reasons);
      }
    }
    if (draft.kind() == EntryKind.OVERRIDE) {
      reason("an override", reasons);
    }
  }

  private void reason(String what, Reasons reasons) {
    if (draft.why().isEmpty()) {
      reasons.typed(capital(what) + " needs a reason: --why REASON.");
    }
  }

  private static String capital(String what) {
    return Character.toUpperCase(what.charAt(0)) + what.substring(1);
  }

  private void sign(Reasons reasons) {
    if (draft.role().isEmpty()) {
      reasons.typed("A signature needs the role of the signer: --role ROLE, such as checker.");
    }
    String stated = draft.statement().orElse("");
    if (Statement.find(stated).isEmpty()) {
      String near =
          NearestName.of(stated, Statement.words()).map(w -> " Did you mean " + w + "?").orElse("");
      reasons.typed(
          PlainText.quoted(stated)
              + " is no statement that can be signed."
              + near
              + " There are: "
              + String.join(", ", Statement.words())
              + ".");
    }
    boolean twice =
        record.signatures().stream()
            .filter(ReviewRecord.Signature::covers)
            .anyMatch(one -> one.entry().by().equalsIgnoreCase(draft.by().strip()));
    if (twice) {
      reasons.state(draft.by().strip() + " has signed this round already.");
    }
    objections(stated, reasons);
    List<ReviewRecord.Query> open = record.openQueries();
    if (!open.isEmpty() && draft.why().isEmpty()) {
      String numbers =
          open.stream()
              .map(query -> String.valueOf(query.asked().number()))
              .collect(Collectors.joining(", "));
      reasons.state(
          (open.size() == 1 ? "Query " + numbers + " is" : "The queries " + numbers + " are")
              + " open. Answer or withdraw "
              + (open.size() == 1 ? "it" : "them")
              + ", or say why you sign all the same: --why REASON.");
    }
  }

  /** Who sets another judgement in place of what is said does not say that nothing is to object. */
  private void objections(String stated, Reasons reasons) {
    String numbers =
        record.overrides().stream()
            .filter(one -> one.state() == ReviewRecord.Overridden.State.IN_FORCE)
            .map(one -> String.valueOf(one.entry().number()))
            .collect(Collectors.joining(", "));
    if (stated.equals(Statement.CHECKED.word()) && !numbers.isEmpty() && draft.why().isEmpty()) {
      reasons.state(
          "In force are the overrides "
              + numbers
              + ", and \"checked\" means: no objection. Sign accepted-with-comments or"
              + " not-accepted, or say why there is no objection all the same: --why REASON.");
    }
  }

  private void refers(Reasons reasons) {
    EntryKind kind = draft.kind();
    if (kind != EntryKind.ANSWER && kind != EntryKind.WITHDRAW) {
      return;
    }
    int number = draft.refers().orElse(0);
    Optional<Entry> found = record.entry(number);
    if (found.isEmpty()) {
      reasons.typed(
          "There is no entry " + number + "; the last is " + record.file().last().number() + ".");
      return;
    }
    Entry entry = found.get();
    boolean gone = record.withdrawal(entry).isPresent();
    if (gone) {
      reasons.state("Entry " + number + " is withdrawn.");
    }
    if (kind == EntryKind.ANSWER) {
      if (entry.does() != EntryKind.QUERY) {
        reasons.typed("Entry " + number + " is no query but a " + entry.kind() + "." + queries());
      }
      return;
    }
    reason("a withdrawal", reasons);
    if (!entry.does().canBeWithdrawn()) {
      reasons.typed("A " + entry.kind() + " cannot be withdrawn.");
    } else if (!entry.by().equalsIgnoreCase(draft.by().strip())) {
      reasons.state(
          "Entry "
              + number
              + " is by "
              + entry.by()
              + ", who alone can withdraw it; a comment can speak against it.");
    }
  }

  private String queries() {
    List<ReviewRecord.Query> open = record.openQueries();
    return open.isEmpty()
        ? " No query is open."
        : " Open: "
            + open.stream()
                .map(query -> String.valueOf(query.asked().number()))
                .collect(Collectors.joining(", "))
            + ".";
  }
}
