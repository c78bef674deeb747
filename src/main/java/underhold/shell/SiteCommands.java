package underhold.shell;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.springframework.shell.core.command.CommandOption;
import tools.jackson.databind.json.JsonMapper;
import underhold.report.Json;
import underhold.report.SiteText;
import underhold.site.Site;
import underhold.site.SiteProblem;
import underhold.site.SiteReader;
import underhold.site.SiteReading;
import underhold.site.SiteWriter;
import underhold.site.Zone;

/** The commands that make, show and check a site by hand. */
final class SiteCommands {
  private static final String FIRST_ZONE = "zone 1";

  private final Session session;

  private SiteCommands(Session session) {
    this.session = session;
  }

  static List<ShellCommand> of(Session session) {
    SiteCommands commands = new SiteCommands(session);
    List<ShellCommand> all = new ArrayList<>();
    Parameter file = Parameter.file();
    Parameter needed = Parameter.needed("FILE", SiteFiles::here);
    all.add(
        command(
            "site new",
            "makes a site file with one zone",
            List.of(needed),
            List.of(Options.NAME_OPTION, Options.ZONE_OPTION),
            commands::create));
    all.add(
        command(
            "site open",
            "opens a site in the interactive shell",
            List.of(needed),
            List.of(),
            commands::open));
    all.add(command("site save", "saves the open site", List.of(file), List.of(), commands::save));
    all.add(
        command(
            "site drop",
            "lets the open site go, with its changes",
            List.of(),
            List.of(),
            commands::drop));
    all.add(command("site show", "shows what is known", List.of(file), List.of(), commands::show));
    all.add(
        command(
            "site check",
            "lists every problem of a site",
            List.of(file),
            List.of(),
            commands::check));
    all.addAll(SiteEditCommands.of(session));
    return all;
  }

  static ShellCommand command(
      String name,
      String summary,
      List<Parameter> parameters,
      List<CommandOption> options,
      ShellCommand.Action action) {
    return new ShellCommand(name, Commands.SITE, summary, parameters, options, action);
  }

  private int create(Call call) {
    Path file = SiteFiles.path(call.needed(0));
    String name =
        call.option(Options.NAME)
            .orElseThrow(() -> Refusal.usage("A new site needs a name: --name NAME"));
    String zone = call.option(Options.ZONE).orElse(FIRST_ZONE);
    Names.check("the site", name);
    Names.check("the zone", zone);
    if (Files.exists(file)) {
      throw Refusal.site("There is a file " + file + " already; nothing was written.");
    }
    session.keepChanges();
    OpenSite made =
        SiteFiles.write(
            new OpenSite(file, Edits.fresh(name, zone), underhold.site.SavedState.NO_FILE, false));
    session.open(made);
    session.output().say(file + " is made, with the zone \"" + zone + "\".");
    return Exit.DONE;
  }

  private int open(Call call) {
    if (!session.interactive()) {
      throw Refusal.usage(
          "site open works in the interactive shell only.", "To check a file: site check FILE");
    }
    session.keepChanges();
    OpenSite opened = SiteFiles.readDraft(SiteFiles.path(call.needed(0)));
    session.open(opened);
    Site site = opened.site();
    session
        .output()
        .say(
            site.name()
                + " is open: "
                + String.join(", ", site.zones().stream().map(Zone::name).toList())
                + ".");
    return Exit.DONE;
  }

  private int save(Call call) {
    if (!session.interactive()) {
      throw Refusal.usage(
          "site save works in the interactive shell only; elsewhere every change is saved.");
    }
    OpenSite open = session.draft(Optional.empty());
    Optional<Path> other = call.word(0).map(SiteFiles::path);
    OpenSite target =
        other
            .map(f -> new OpenSite(f, open.site(), underhold.site.SavedState.NO_FILE, true))
            .orElse(open);
    session.open(SiteFiles.write(target));
    session.output().say(target.file() + " is saved.");
    return Exit.DONE;
  }

  private int drop(Call call) {
    session.close();
    return Exit.DONE;
  }

  private int show(Call call) {
    Site site = session.draft(call.word(0)).site();
    session
        .output()
        .answer(
            look -> SiteText.of(site, look),
            () -> JsonMapper.shared().readTree(SiteWriter.toText(site)));
    return Exit.DONE;
  }

  private int check(Call call) {
    List<SiteProblem> problems = problems(call);
    if (session.output().json()) {
      session.output().print(Json.text(Json.object("problems", trees(problems))));
    } else if (problems.isEmpty()) {
      session.output().print("No problems.\n");
    } else {
      problems.forEach(problem -> session.output().say(problem.text()));
    }
    return problems.isEmpty() ? Exit.DONE : Exit.SITE;
  }

  private List<SiteProblem> problems(Call call) {
    Optional<Path> file = call.word(0).map(SiteFiles::path);
    if (file.isPresent()) {
      SiteFiles.existing(file.get());
      return SiteReader.read(file.get()).fold(v -> List.of(), SiteReading.Invalid::problems);
    }
    OpenSite open = session.draft(Optional.empty());
    return SiteReader.read(SiteWriter.toText(open.site()), open.fileName())
        .fold(v -> List.of(), SiteReading.Invalid::problems);
  }

  private static List<Object> trees(List<SiteProblem> problems) {
    return problems.stream()
        .<Object>map(
            p ->
                Json.object(
                    "code", p.code().name(),
                    "place", p.place(),
                    "line", p.line(),
                    "column", p.column(),
                    "value", p.value(),
                    "message", p.message(),
                    "suggestion", p.suggestion()))
        .toList();
  }

  /** The place of the zone of that name. */
  static int zone(Site site, String name) {
    List<String> names = site.zones().stream().map(Zone::name).toList();
    return Edits.find(site, name)
        .orElseThrow(
            () ->
                Refusal.usage(
                    "There is no zone \"" + name + "\"." + Nearest.question(name, names),
                    "There are: " + String.join(", ", names)));
  }
}
