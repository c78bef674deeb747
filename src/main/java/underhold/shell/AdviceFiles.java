package underhold.shell;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import underhold.consult.Consultation;
import underhold.report.Program;
import underhold.review.file.FileReading;
import underhold.review.saved.AdviceSaver;
import underhold.review.saved.SavedAdvice;
import underhold.review.saved.SavedMaking;
import underhold.site.SavedState;
import underhold.site.Site;
import underhold.site.SiteProblem;

/** Reads and writes saved consultations for the commands. */
final class AdviceFiles {
  private static final Clock CLOCK = Clock.systemUTC();

  private AdviceFiles() {}

  /** Saved consultations of this folder, for completion. */
  static List<String> here() {
    return SiteFiles.here(SavedAdvice.ENDING);
  }

  /** Which program answers now. */
  static SavedMaking making() {
    return new SavedMaking(Program.NAME, Program.version(), CLOCK.instant(), Program.CAUTION);
  }

  /**
   * The file that a consultation shall be saved to; looked at before the work begins.
   *
   * @throws Refusal if it cannot be, with all reasons
   */
  static Optional<Path> saveTo(Call call) {
    Optional<Path> file = call.option(Options.SAVE).map(SiteFiles::path);
    List<String> reasons = new ArrayList<>();
    file.filter(path -> !path.toString().endsWith(SavedAdvice.ENDING))
        .ifPresent(
            path ->
                reasons.add(
                    "--save is \""
                        + path
                        + "\"; the name of a saved consultation ends with "
                        + SavedAdvice.ENDING
                        + ", such as --save my"
                        + SavedAdvice.ENDING));
    if (file.isPresent() && call.has(Options.ZONE)) {
      reasons.add("A consultation is saved with all its zones: leave --zone out.");
    }
    if (!reasons.isEmpty()) {
      throw Refusal.usage(reasons.toArray(String[]::new));
    }
    file.filter(Files::exists)
        .ifPresent(
            path -> {
              throw Refusal.site(
                  "There is a file "
                      + path
                      + " already, and a review may rest on it: choose another name.");
            });
    return file;
  }

  /** Saves a consultation to a new file, whole or not at all. */
  static void save(Session session, Consultation answer, Path file) {
    SavedAdvice saved = new AdviceSaver(session.consultant().engine()).save(answer, making());
    SavedAdvice.FILES
        .write(file, saved, SavedState.NO_FILE)
        .fold(
            written -> {
              session
                  .output()
                  .say(
                      file
                          + " is saved. To run it again: recheck "
                          + file
                          + ". To review it: review start "
                          + file
                          + " --by NAME");
              return file;
            },
            refused -> {
              throw Refusal.site(refused.message() + ".");
            });
  }

  /**
   * Reads a saved consultation.
   *
   * @throws Refusal with all its problems
   */
  static SavedAdvice read(Path file) {
    SiteFiles.existing(file);
    FileReading<SavedAdvice> reading = SavedAdvice.FILES.read(file);
    return reading.content().orElseThrow(() -> Refusal.site(reading.messages()));
  }

  /**
   * The site of a saved consultation.
   *
   * @throws Refusal with all its problems
   */
  static Site site(SavedAdvice saved, Path file) {
    Site site =
        saved
            .readSite(file + ", site")
            .fold(
                valid -> valid.site(),
                invalid -> {
                  List<String> messages =
                      new ArrayList<>(
                          invalid.problems().stream().map(problem -> at(file, problem)).toList());
                  messages.add(
                      "The saved site cannot be read by this program: the file was edited, or its"
                          + " facts have other names now.");
                  throw Refusal.site(messages);
                });
    List<String> problems = saved.problems();
    if (!problems.isEmpty()) {
      throw Refusal.site(problems.stream().map(one -> file + ": " + one).toList());
    }
    return site;
  }

  /** Without lines: the site is a part of the file, and its lines are others there. */
  private static String at(Path file, SiteProblem problem) {
    String place = problem.place().isEmpty() ? "site" : "site." + problem.place();
    String advice = problem.suggestion().isEmpty() ? "" : "; " + problem.suggestion();
    return file + ": " + place + ": " + problem.message() + advice;
  }
}
