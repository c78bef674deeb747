package underhold.shell;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicBoolean;
import org.jspecify.annotations.Nullable;
import underhold.consult.Consultation;
import underhold.report.AdviceJson;
import underhold.report.AdviceText;
import underhold.report.Look;
import underhold.report.TextPage;
import underhold.site.SavedState;
import underhold.site.Site;

/** {@code interview}: asks, saves every answer at once, and ends with the advice. */
final class InterviewCommand {
  private static final String NOT_KEPT = "The last answer was not kept; the interview ends here.";
  private static final String PROMPT = "> ";

  private final Session session;

  private InterviewCommand(Session session) {
    this.session = session;
  }

  static ShellCommand of(Session session) {
    return SiteCommands.command(
        "interview",
        "asks for the facts that matter, saving every answer; goes on where it stopped",
        List.of(Parameter.file()),
        Options.PACK,
        call -> new InterviewCommand(session).run(call));
  }

  private int run(Call call) {
    Path file = file(call);
    @Nullable OpenSite open = Files.exists(file) ? SiteFiles.readDraft(file) : null;
    if (open != null) {
      session.open(open);
    }
    Agenda agenda =
        new Agenda(session.pack(), (site, zone) -> session.consultant().advise(site, zone));
    Interview interview = open == null ? new Interview(agenda) : new Interview(agenda, open.site());
    AtomicBoolean asking = new AtomicBoolean(true);
    Thread farewell = new Thread(() -> farewell(file, asking));
    if (!session.interactive()) {
      Runtime.getRuntime().addShutdownHook(farewell);
    }
    try {
      greet(file, open != null);
      return ask(interview, file, open);
    } catch (Lines.Interrupted interrupted) {
      farewell(file, asking);
      return Exit.INTERRUPTED;
    } finally {
      asking.set(false);
    }
  }

  private Path file(Call call) {
    if (call.word(0).isPresent()) {
      Path file = SiteFiles.path(call.needed(0));
      boolean other = session.current().map(open -> !open.file().equals(file)).orElse(true);
      if (other) {
        session.keepChanges();
      }
      return file;
    }
    return session
        .current()
        .map(OpenSite::file)
        .orElseThrow(
            () -> Refusal.usage("interview needs a FILE; a new one is made if there is none."));
  }

  private void greet(Path file, boolean resumed) {
    TextPage page = new TextPage(session.output().look());
    page.para(
        0,
        (resumed ? "Going on with " : "A new site, kept in ")
            + file
            + ". Every answer is saved at once. Type ? to learn why a question matters, unknown if"
            + " nobody knows, back to correct the answer before, stop to go on another day.");
    show(session.output().heading().take(look()) + page.text());
  }

  private int ask(Interview interview, Path file, @Nullable OpenSite begun) {
    @Nullable OpenSite open = begun;
    while (!interview.finished()) {
      Question question = interview.question();
      if (question.topic() == Question.Topic.GO_ON) {
        interview.site().ifPresent(site -> show(AdviceText.summary(advice(site), look())));
      }
      show("\n" + QuestionText.of(question, look()));
      Optional<String> typed = session.lines().read(PROMPT, QuestionText.completions(question));
      Reply reply = typed.map(interview::answer).orElseGet(() -> new Reply(Reply.Kind.STOP, ""));
      switch (reply.kind()) {
        case STOP -> {
          return stop(file);
        }
        case EXPLAIN -> show(QuestionText.why(question, look()));
        case REFUSED -> show(new TextPage(look()).para(2, reply.text()).text());
        case BACK -> {}
        case TAKEN -> open = save(interview, file, open);
      }
    }
    return end(interview);
  }

  /** Writes the whole file anew where the answer changed the site. */
  private @Nullable OpenSite save(Interview interview, Path file, @Nullable OpenSite open) {
    Optional<Site> site = interview.site();
    if (site.isEmpty() || (open != null && open.site().equals(site.get()))) {
      return open;
    }
    OpenSite changed =
        open == null
            ? new OpenSite(file, site.get(), SavedState.NO_FILE, true)
            : open.with(site.get());
    OpenSite saved =
        SiteFiles.tryWrite(changed)
            .fold(
                written -> changed.savedAs(written.savedState()),
                refused -> {
                  throw Refusal.site(List.of(refused.message() + ".", NOT_KEPT));
                });
    session.open(saved);
    return saved;
  }

  private int end(Interview interview) {
    Site site = interview.site().orElseThrow();
    Consultation consultation = advice(site);
    session
        .output()
        .answer(
            look -> "\n" + AdviceText.summary(consultation, look),
            () -> AdviceJson.of(consultation));
    return Exit.DONE;
  }

  private Consultation advice(Site site) {
    return session.advise(site);
  }

  private int stop(Path file) {
    show("\n" + new TextPage(look()).para(0, "Stopped. " + where(file)).text());
    return Exit.DONE;
  }

  private void farewell(Path file, AtomicBoolean asking) {
    if (asking.getAndSet(false)) {
      show("\n" + new TextPage(look()).para(0, "Interrupted. " + where(file)).text());
    }
  }

  private static String where(Path file) {
    return Files.exists(file)
        ? "All your answers are in " + file + "; go on with: interview " + file
        : "Nothing was answered yet, and no file was made.";
  }

  private Look look() {
    return session.output().look();
  }

  private void show(String text) {
    session.output().show(text);
  }
}
