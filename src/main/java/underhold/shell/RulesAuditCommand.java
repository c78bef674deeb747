package underhold.shell;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import underhold.advice.PackFolder;
import underhold.advice.RulePack;
import underhold.report.AuditJson;
import underhold.report.AuditText;
import underhold.report.RulesAuditJson;
import underhold.report.RulesAuditText;
import underhold.review.Audit;
import underhold.review.PublishedJobs;
import underhold.review.audit.AuditNotes;
import underhold.review.audit.AuditSite;
import underhold.review.audit.Defect;
import underhold.review.audit.Effort;
import underhold.review.audit.RulesAudit;
import underhold.site.SiteWriter;

/**
 * {@code rules audit}: holds the rules to themselves, to what engineers expect, and to published
 * jobs. The exit code is 1 where a defect is open, so that a build can stand on it.
 */
final class RulesAuditCommand {
  private static final int OPEN_DEFECT = 1;
  private static final String PUBLISHED = "published";
  private static final String ENDING = ".site.json";

  /** Demo sites, tried where they are found. */
  private static final Path DEMOS = Path.of("cases", "demo");

  private final Session session;

  private RulesAuditCommand(Session session) {
    this.session = session;
  }

  static ShellCommand of(Session session) {
    RulesAuditCommand command = new RulesAuditCommand(session);
    return new ShellCommand(
        "rules audit",
        Commands.KNOWLEDGE,
        "audits the rules: dead, doubled and opposed ones, gaps, expectations, published jobs",
        List.of(),
        List.of(
            Options.SECTION_OPTION,
            Options.FOLDER_OPTION,
            Options.TRIES_OPTION,
            Options.SEED_OPTION),
        command::audit);
  }

  private int audit(Call call) {
    List<String> wanted = wanted(call);
    Effort effort =
        new Effort(
            (int) number(call, Options.TRIES, Effort.USUAL_TRIES, 1, Effort.MOST_TRIES),
            number(call, Options.SEED, Effort.USUAL_SEED, 0, Integer.MAX_VALUE));
    Optional<Path> out = call.option(Options.OUT).map(RulesAuditCommand::folder);
    RulePack pack = session.pack();
    AuditNotes notes =
        AuditNotes.of(pack, PackFolder.files(SiteFiles.path(pack.origin().folder())));
    RulesAudit rules =
        RulesAudit.of(pack, cases(), notes, effort, wanted, section -> done(call, section));
    Map<Defect, String> files = new LinkedHashMap<>();
    out.ifPresent(folder -> files.putAll(written(rules, folder)));
    Optional<Audit> published =
        wanted.contains(PUBLISHED) ? Optional.of(published(call)) : Optional.empty();
    session
        .output()
        .answer(
            look ->
                (rules.sections().isEmpty() ? "" : RulesAuditText.of(rules, files, look) + "\n")
                    + published.map(audit -> AuditText.of(audit, look)).orElse(""),
            () -> {
              Map<String, Object> tree =
                  new LinkedHashMap<>(published.map(AuditJson::of).orElse(Map.of()));
              tree.put("audit", RulesAuditJson.of(rules, files));
              return tree;
            });
    return rules.unaccepted().isEmpty() ? Exit.DONE : OPEN_DEFECT;
  }

  private Audit published(Call call) {
    Audit audit = Audit.of(session.consultant());
    done(call, PUBLISHED);
    return audit;
  }

  /** Says what is done, where one has to wait for it. */
  private void done(Call call, String section) {
    if (call.all(Options.SECTION).isEmpty()) {
      session.output().say("Audited: " + section);
    }
  }

  /** The sections asked for; all where none is named. */
  private static List<String> wanted(Call call) {
    List<String> all = new ArrayList<>(RulesAudit.names());
    all.add(PUBLISHED);
    List<String> named = call.all(Options.SECTION);
    for (String name : named) {
      if (!all.contains(name)) {
        throw Refusal.usage(
            "The audit has no section \"" + name + "\"." + Nearest.question(name, all),
            "Sections: " + String.join(", ", all) + ".");
      }
    }
    return named.isEmpty() ? all : named;
  }

  private static long number(Call call, String option, long usual, long least, long most) {
    Optional<String> typed = call.option(option);
    if (typed.isEmpty()) {
      return usual;
    }
    String text = typed.get().strip();
    if (text.matches("[0-9]{1,10}")) {
      long number = Long.parseLong(text);
      if (number >= least && number <= most) {
        return number;
      }
    }
    throw Refusal.usage(
        "--"
            + option
            + " is \""
            + text
            + "\"; it must be a number from "
            + least
            + " to "
            + most
            + ", such as --"
            + option
            + " "
            + usual
            + ".");
  }

  /** The published jobs, and the cases of a class and demo sites found beside. */
  private static List<AuditSite> cases() {
    List<AuditSite> cases = new ArrayList<>();
    PublishedJobs.builtIn()
        .forEach(job -> cases.add(new AuditSite(PUBLISHED, job.name(), job.site())));
    if (Files.isDirectory(Path.of(ClassFiles.USUAL_FOLDER))) {
      ClassFiles.cases(ClassFiles.USUAL_FOLDER)
          .values()
          .forEach(study -> cases.add(new AuditSite("class", study.name(), study.full())));
    }
    if (Files.isDirectory(DEMOS)) {
      names(DEMOS)
          .forEach(
              file ->
                  cases.add(
                      new AuditSite(
                          "demo",
                          String.valueOf(file.getFileName()),
                          SiteFiles.read(file).site())));
    }
    return cases;
  }

  private static List<Path> names(Path folder) {
    try (Stream<Path> files = Files.list(folder)) {
      return files.filter(file -> file.toString().endsWith(ENDING)).sorted().toList();
    } catch (IOException e) {
      throw Refusal.usage("The folder " + folder + " cannot be read.");
    }
  }

  private static Path folder(String typed) {
    Path folder = SiteFiles.path(typed);
    try {
      return Files.createDirectories(folder);
    } catch (IOException e) {
      throw Refusal.usage("The folder " + typed + " cannot be made; name another with --out.");
    }
  }

  /** Writes the sites that show defects; a file that is there already is left as it is. */
  private static Map<Defect, String> written(RulesAudit audit, Path folder) {
    Map<Defect, String> files = new LinkedHashMap<>();
    for (Defect defect : audit.defects()) {
      if (defect.witness().isEmpty()) {
        continue;
      }
      Path file =
          folder.resolve(defect.section() + "-" + String.join("-", defect.about()) + ENDING);
      SiteWriter.write(defect.witness().get(), file)
          .fold(
              done -> files.put(defect, file.toString()),
              refused -> {
                throw Refusal.site(
                    "The site " + file + " was not written: " + refused.message() + ".");
              });
    }
    return files;
  }
}
