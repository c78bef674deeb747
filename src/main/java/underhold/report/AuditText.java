package underhold.report;

import java.util.List;
import java.util.stream.Stream;
import underhold.advice.Effect;
import underhold.advice.Finding;
import underhold.advice.OptionAdvice;
import underhold.advice.SupportOption;
import underhold.review.Agreement;
import underhold.review.AgreementTable;
import underhold.review.Audit;
import underhold.review.Expectation;
import underhold.review.Outcome;

/** An audit of the rules, section by section. */
public final class AuditText {
  private static final int MARGIN = 2;
  private static final int COUNT = 17;
  private static final int LEADS = 19;
  private static final int NARROW = 60;

  private final TextPage page;
  private final int inner;

  private AuditText(Look look) {
    this.page = new TextPage(look);
    this.inner = MARGIN + (look.width() < NARROW ? MARGIN : LEADS);
  }

  public static String of(Audit audit, Look look) {
    AuditText text = new AuditText(look);
    text.publishedJobs(audit.publishedJobs());
    Program.foot(text.page, audit.pack());
    return text.page.text();
  }

  private void publishedJobs(AgreementTable table) {
    page.heading("Agreement with published jobs");
    page.para(
        0,
        Words.count(table.jobs(), "published job", "published jobs")
            + ", "
            + Words.count(table.rows().size(), "zone", "zones")
            + "; "
            + table.scored()
            + " call for a choice. What a source does not tell is unknown here too, so an option can"
            + " wait for it. Agreement shows that the rules keep to practice; it proves no answer. Nor is"
            + " it all independent: rules and jobs share some of their sources, and many first places"
            + " are ties.");
    page.blank();
    long byTie = table.rows().stream().filter(Agreement::byTieOnly).count();
    count(
        table,
        Outcome.FIRST_CHOICE,
        "what the job calls for leads, or is tied with the leader"
            + (byTie == 0 ? "" : " (only tied with another that leads: " + byTie + ")"));
    count(table, Outcome.FAIR, "an option leads that is fair as well");
    count(table, Outcome.NO_CHOICE, "nothing leads, which is no agreement");
    count(table, Outcome.MISS, "another option leads, or one that must not");
    count(table, Outcome.NOT_SCORED, "the source judges no way of support");
    page.item(
        MARGIN,
        (table.named() - table.letThrough()) + " of " + table.named(),
        COUNT,
        "options that must not lead are ruled out, held behind the leader, or without a point");
    for (Outcome outcome : Outcome.values()) {
      List<Agreement> rows = table.rows(outcome);
      if (!rows.isEmpty()) {
        page.heading(Words.sentence(outcome.word()) + ": we lead with, on the job");
        rows.forEach(this::row);
      }
    }
  }

  private void count(AgreementTable table, Outcome outcome, String meaning) {
    int rows = table.rows(outcome).size();
    page.item(MARGIN, rows + " " + outcome.word(), COUNT, meaning);
  }

  private void row(Agreement row) {
    page.item(
        tint(row.outcome()),
        MARGIN,
        leader(row),
        LEADS,
        row.job().site().name() + ": " + row.expected().zone() + ".");
    if (row.outcome() == Outcome.FIRST_CHOICE) {
      if (row.front().size() > 1) {
        page.para(inner, tied(row));
      }
    } else {
      page.para(inner, calledFor(row));
    }
    if (row.outcome() == Outcome.NO_CHOICE || row.outcome() == Outcome.MISS) {
      row.leadsBecause().forEach(f -> page.para(inner, "Leads: " + reason(f)));
      row.targets().forEach(this::target);
    }
    List<SupportOption> through = row.letThrough();
    if (!through.isEmpty()) {
      page.para(inner, "Must not lead, and is not kept back: " + ids(through) + ".");
    }
    row.expected()
        .known()
        .map(Expectation.Departure::because)
        .filter(because -> !row.outcome().agrees())
        .ifPresent(because -> page.para(inner, "On record: " + because));
    if (row.outcome() == Outcome.NOT_SCORED) {
      page.para(inner, row.expected().because());
    }
    if (!row.asRecorded()) {
      page.tinted(Tint.OPEN, inner, "Not as recorded: look into it.");
    }
    if (!row.silent().isEmpty()) {
      page.tinted(Tint.OPEN, inner, "Should speak and does not: " + Words.list(row.silent()) + ".");
    }
  }

  private static Tint tint(Outcome outcome) {
    return switch (outcome) {
      case FIRST_CHOICE, FAIR -> Tint.GOOD;
      case NO_CHOICE, NOT_SCORED -> Tint.OPEN;
      case MISS -> Tint.BAD;
    };
  }

  private static String leader(Agreement row) {
    return row.front().stream().findFirst().map(AuditText::scored).orElse("nothing");
  }

  private static String scored(OptionAdvice advice) {
    return advice.option().id() + " " + Words.score(advice.score());
  }

  private static String tied(Agreement row) {
    List<String> others = row.front().stream().skip(1).map(AuditText::scored).toList();
    return "Tied with "
        + Words.list(others)
        + (row.byTieOnly() ? "; the job calls for " + ids(row.expected().target()) + "." : ".");
  }

  private static String calledFor(Agreement row) {
    Expectation expected = row.expected();
    String done = "Done: " + expected.done();
    if (expected.target().isEmpty()) {
      return done;
    }
    String fair = expected.alsoFair().isEmpty() ? "" : ", also fair " + ids(expected.alsoFair());
    return done + " Calls for " + ids(expected.target()) + fair + ".";
  }

  private void target(OptionAdvice target) {
    String standing =
        Words.sentence(target.option().id())
            + " "
            + target.standing().word()
            + ", score "
            + Words.score(target.score())
            + ".";
    Stream<String> against =
        target.findings().stream()
            .filter(f -> f.effect() == Effect.RULE_OUT || f.effect() == Effect.AGAINST)
            .map(f -> Words.sentence(Words.verb(f.effect())) + ": " + reason(f));
    Stream<String> holds =
        target.holds().stream().map(h -> "Held by " + h.rule().id() + ": " + h.rule().sentence());
    List<String> parts =
        Stream.of(Stream.of(standing), against, holds).flatMap(part -> part).toList();
    page.para(inner, String.join(" ", parts));
  }

  private static String reason(Finding finding) {
    return finding.reason() + " " + Words.tag(finding, true);
  }

  private static String ids(List<SupportOption> options) {
    return Words.list(options.stream().map(SupportOption::id).toList());
  }
}
