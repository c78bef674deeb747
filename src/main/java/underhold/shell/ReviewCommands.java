package underhold.shell;

import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.springframework.shell.core.command.CommandOption;
import underhold.report.Json;
import underhold.report.ReviewJson;
import underhold.report.ReviewText;
import underhold.review.record.Draft;
import underhold.review.record.Entering;
import underhold.review.record.Entry;
import underhold.review.record.EntryKind;
import underhold.review.record.ReviewDesk;
import underhold.review.record.ReviewFile;
import underhold.review.record.ReviewRecord;
import underhold.review.record.ReviewRow;
import underhold.review.record.Statement;
import underhold.review.record.Target;
import underhold.review.saved.SavedAdvice;
import underhold.site.SavedState;

/** {@code review ...}: the review of a saved consultation. */
final class ReviewCommands {
  private static final String WHOLE = "whole";

  private final Session session;
  private final Clock clock = Clock.systemUTC();

  private ReviewCommands(Session session) {
    this.session = session;
  }

  static List<ShellCommand> of(Session session) {
    ReviewCommands commands = new ReviewCommands(session);
    Parameter review = Parameter.needed("FILE.review.json", ReviewFiles::here);
    Parameter text = Parameter.several("TEXT", List::of);
    Parameter number = Parameter.needed("NUMBER", List::of);
    CommandOption by = Options.BY_OPTION;
    CommandOption role = Options.ROLE_OPTION;
    CommandOption why = Options.WHY_OPTION;
    return List.of(
        command(
            "review start",
            "begins the review of a saved consultation",
            List.of(Parameter.needed("FILE.advice.json", AdviceFiles::here)),
            List.of(by, role),
            commands::start),
        command(
            "review targets",
            "lists the parts that a review can speak of, or those with a word in them",
            List.of(review, Parameter.optional("WORD", List::of)),
            List.of(),
            commands::targets),
        command(
            "review comment",
            "remarks on a part of the consultation",
            List.of(review, text),
            List.of(Options.ON_OPTION, by, role),
            call -> commands.say(call, EntryKind.COMMENT)),
        command(
            "review query",
            "asks about a part; open until answered or withdrawn",
            List.of(review, text),
            List.of(Options.ON_OPTION, by, role),
            call -> commands.say(call, EntryKind.QUERY)),
        command(
            "review answer",
            "answers the query of that number",
            List.of(review, number, text),
            List.of(by, role),
            commands::answer),
        command(
            "review override",
            "sets the reviewer's judgement beside a finding, a verdict or a ranking",
            List.of(
                review,
                Parameter.needed("TARGET", List::of),
                Parameter.needed("INSTEAD", List::of)),
            List.of(why, by, role),
            commands::override),
        command(
            "review withdraw",
            "takes back an entry of one's own; it stays in the record",
            List.of(review, number),
            List.of(why, by),
            commands::withdraw),
        command(
            "review sign",
            "signs what was reviewed and the record so far",
            List.of(review, Parameter.needed("STATEMENT", Statement::words)),
            List.of(by, role, why),
            commands::sign),
        command(
            "review reopen",
            "opens a new round, which no signature before it covers",
            List.of(review),
            List.of(why, by, role),
            commands::reopen),
        command(
            "review status",
            "what is open, overridden and signed, and whether the record is whole",
            List.of(review),
            List.of(Options.HEAD_OPTION),
            commands::status),
        command(
            "review show", "every entry of a review", List.of(review), List.of(), commands::show));
  }

  private static ShellCommand command(
      String name,
      String summary,
      List<Parameter> parameters,
      List<CommandOption> options,
      ShellCommand.Action action) {
    return new ShellCommand(name, Commands.REVIEW, summary, parameters, options, action);
  }

  private int start(Call call) {
    Path file = SiteFiles.path(call.needed(0));
    SavedAdvice advice = AdviceFiles.read(file);
    String name = String.valueOf(file.getFileName());
    String stem =
        name.endsWith(SavedAdvice.ENDING)
            ? name.substring(0, name.length() - SavedAdvice.ENDING.length())
            : name;
    Path review = file.resolveSibling(stem + ReviewFile.ENDING);
    Entering entering =
        new ReviewDesk(advice, clock).start(name, by(call), call.option(Options.ROLE));
    ReviewFile made = done(entering);
    ReviewFiles.write(review, made, SavedState.NO_FILE);
    return written(review, made);
  }

  private int targets(Call call) {
    ReviewFiles.Opened opened = ReviewFiles.read(call.needed(0));
    String word = call.word(1).orElse("").toLowerCase(Locale.ROOT);
    List<Target> found =
        desk(opened).targets().all().stream()
            .filter(
                target ->
                    (target.path() + " " + target.label()).toLowerCase(Locale.ROOT).contains(word))
            .toList();
    if (found.isEmpty()) {
      throw Refusal.usage("No part of the consultation has \"" + call.needed(1) + "\" in it.");
    }
    session
        .output()
        .answer(look -> ReviewText.targets(found, look), () -> ReviewJson.targets(found));
    return Exit.DONE;
  }

  private int say(Call call, EntryKind kind) {
    Draft draft =
        Draft.of(kind, by(call))
            .as(call.option(Options.ROLE))
            .on(call.option(Options.ON).orElse(WHOLE))
            .saying(rest(call, 1));
    return enter(call, draft);
  }

  private int answer(Call call) {
    Draft draft =
        Draft.of(EntryKind.ANSWER, by(call))
            .as(call.option(Options.ROLE))
            .to(number(call))
            .saying(rest(call, 2));
    return enter(call, draft);
  }

  private int override(Call call) {
    Draft draft =
        Draft.of(EntryKind.OVERRIDE, by(call))
            .as(call.option(Options.ROLE))
            .on(call.needed(1))
            .instead(call.needed(2).toLowerCase(Locale.ROOT))
            .because(call.option(Options.WHY));
    return enter(call, draft);
  }

  private int withdraw(Call call) {
    Draft draft =
        Draft.of(EntryKind.WITHDRAW, by(call)).to(number(call)).because(call.option(Options.WHY));
    return enter(call, draft);
  }

  private int sign(Call call) {
    Draft draft =
        Draft.of(EntryKind.SIGN, by(call))
            .as(call.option(Options.ROLE))
            .stating(call.needed(1).toLowerCase(Locale.ROOT))
            .because(call.option(Options.WHY));
    return enter(call, draft);
  }

  private int reopen(Call call) {
    Draft draft =
        Draft.of(EntryKind.REOPEN, by(call))
            .as(call.option(Options.ROLE))
            .because(call.option(Options.WHY));
    return enter(call, draft);
  }

  private int status(Call call) {
    ReviewFiles.Opened opened = ReviewFiles.read(call.needed(0));
    ReviewRecord record = opened.record();
    String advice = ReviewFiles.ofAdvice(opened);
    Optional<String> head = call.option(Options.HEAD);
    Optional<Entry> found = head.flatMap(record::entryOfHead);
    String noted = head.map(typed -> noted(record, typed, found)).orElse("");
    session
        .output()
        .answer(
            look -> ReviewText.status(record, advice, noted, look),
            () -> ReviewJson.of(record, advice, noted));
    boolean held = head.isEmpty() || found.isPresent();
    return record.intact() && advice.isEmpty() && held ? Exit.DONE : Exit.SITE;
  }

  /** What a head noted elsewhere says. */
  private static String noted(ReviewRecord record, String typed, Optional<Entry> found) {
    String digits = typed.replaceAll("\\s", "");
    if (!digits.matches("[0-9a-fA-F]{" + ReviewRecord.FEWEST_DIGITS + ",64}")) {
      throw Refusal.usage(
          "--head is \""
              + typed
              + "\"; it must be a head or its first "
              + ReviewRecord.FEWEST_DIGITS
              + " digits at least, 0 to 9 and a to f.");
    }
    int entries = record.entries().size();
    return found
        .map(
            entry -> {
              int since = entries - 1 - record.entries().indexOf(entry);
              return since == 0
                  ? "the head noted is the present one"
                  : "the head noted was that of entry "
                      + entry.number()
                      + "; entries written since: "
                      + since;
            })
        .orElse(
            "NO ENTRY HAS THE HEAD NOTED: the record was written anew, or entries were taken off its"
                + " end");
  }

  private int show(Call call) {
    ReviewFiles.Opened opened = ReviewFiles.read(call.needed(0));
    String advice = ReviewFiles.ofAdvice(opened);
    session
        .output()
        .answer(
            look -> ReviewText.all(opened.record(), advice, look),
            () -> ReviewJson.of(opened.record(), advice, ""));
    return opened.record().intact() && advice.isEmpty() ? Exit.DONE : Exit.SITE;
  }

  private int enter(Call call, Draft draft) {
    ReviewFiles.Opened opened = ReviewFiles.read(call.needed(0));
    ReviewFile more = done(desk(opened).enter(opened.record(), draft));
    ReviewFiles.write(opened.file(), more, opened.state());
    return written(opened.file(), more);
  }

  private ReviewDesk desk(ReviewFiles.Opened opened) {
    return new ReviewDesk(AdviceFiles.read(opened.advice()), clock);
  }

  private static ReviewFile done(Entering entering) {
    if (entering instanceof Entering.Refused refused) {
      throw refused.state().isEmpty()
          ? Refusal.usage(refused.typed().toArray(String[]::new))
          : Refusal.site(refused.problems());
    }
    return ((Entering.Done) entering).file();
  }

  private int written(Path file, ReviewFile review) {
    List<ReviewRow> rows = ReviewRow.of(ReviewRecord.of(review, ""));
    ReviewRow row = rows.get(rows.size() - 1);
    session
        .output()
        .answer(
            look -> ReviewText.written(file.toString(), row, review.head(), look),
            () ->
                Json.object("file", file.toString(), "entry", row.number(), "head", review.head()));
    return Exit.DONE;
  }

  private static String by(Call call) {
    return call.option(Options.BY)
        .orElseThrow(() -> Refusal.usage("Who writes it? --by NAME is needed."));
  }

  private static String rest(Call call, int from) {
    return String.join(" ", call.words().subList(from, call.words().size()));
  }

  private static int number(Call call) {
    String typed = call.needed(1);
    if (!typed.matches("[0-9]{1,6}")) {
      throw Refusal.usage(
          "NUMBER is \"" + typed + "\"; it must be the number of an entry, such as 2.");
    }
    return Integer.parseInt(typed);
  }
}
