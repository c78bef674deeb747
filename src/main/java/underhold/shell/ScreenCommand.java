package underhold.shell;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import underhold.consult.firmness.FirmnessFinder;
import underhold.consult.screening.BegunTable;
import underhold.consult.screening.ScreeningRun;
import underhold.consult.screening.TableForm;
import underhold.consult.screening.ZoneInput;
import underhold.consult.screening.ZoneScreen;
import underhold.report.Json;
import underhold.report.Program;
import underhold.report.ScreeningBasis;
import underhold.report.ScreeningCsv;
import underhold.report.ScreeningJson;

/** {@code screen}: many zones into one table. */
final class ScreenCommand {
  private static final int MOST_DRAWS = 1000;
  private static final int BEGINNING = 4096;
  private static final long STOP_SECONDS = 20;

  private final Session session;
  private final boolean terminal;

  /**
   * The command.
   *
   * @param terminal whether messages go to a terminal, which can show a bar
   */
  ScreenCommand(Session session, boolean terminal) {
    this.session = session;
    this.terminal = terminal;
  }

  static ShellCommand of(Session session) {
    return new ShellCommand(
            "screen",
            Commands.ADVICE,
            "many zones into one table, .csv or .json: site files, folders, or a .csv of zones",
            List.of(new Parameter("NAME", false, true, SiteFiles::here)),
            List.of(
                Options.OUT_OPTION,
                Options.DRAWS_OPTION,
                Options.SEED_OPTION,
                Options.ANEW_OPTION,
                Options.TEMPLATE_OPTION),
            call -> new ScreenCommand(session, Console.messagesAtTerminal()).run(call))
        .noting(ScreenHelp.NOTES);
  }

  int run(Call call) {
    if (call.has(Options.TEMPLATE)) {
      session.output().print(ScreenTemplate.text());
      return Exit.DONE;
    }
    int draws = (int) number(call, Options.DRAWS, ZoneScreen.USUAL_DRAWS, MOST_DRAWS);
    long seed = number(call, Options.SEED, FirmnessFinder.USUAL_SEED, Integer.MAX_VALUE);
    Path out = out(call);
    ScreeningBasis basis = new ScreeningBasis(session.pack(), draws, seed);
    TableForm form = form(out, basis);
    try (ZoneInput input = input(call, out)) {
      refuseForeign(out, form);
      BegunTable.Opened opened = BegunTable.open(out, form, call.has(Options.ANEW));
      try (BegunTable table = opened.table().orElseThrow(() -> Refusal.site(opened.problem()))) {
        ZoneScreen screen = new ZoneScreen(session.consultant(), draws, seed);
        return run(call, out, input, table, form, screen);
      }
    } catch (IOException | UncheckedIOException e) {
      throw Refusal.site(
          "The table could not be written on ("
              + e.getMessage()
              + "). What is done is kept; put this right and run the same command again.");
    }
  }

  private int run(
      Call call, Path out, ZoneInput input, BegunTable table, TableForm form, ZoneScreen screen)
      throws IOException {
    AtomicBoolean stop = new AtomicBoolean();
    CountDownLatch ended = new CountDownLatch(1);
    Thread hook = new Thread(() -> stop(stop, ended), "stop of screen");
    Runtime.getRuntime().addShutdownHook(hook);
    Runnable asBefore = session.lines().onInterrupt(() -> stop.set(true));
    ScreenWatcher watcher = new ScreenWatcher(session.output(), terminal);
    try {
      ScreeningRun.Ended end =
          new ScreeningRun(input, table, form, screen, watcher, stop::get)
              .run(Runtime.getRuntime().availableProcessors());
      watcher.wipe();
      if (!end.problem().isEmpty()) {
        throw Refusal.site(end.problem());
      }
      return end.whole() ? whole(out, end.count()) : stopped(call, table, end.count());
    } finally {
      watcher.wipe();
      asBefore.run();
      ended.countDown();
      forget(hook);
    }
  }

  /** Lets the rows that are done be written before the program ends. */
  private static void stop(AtomicBoolean stop, CountDownLatch ended) {
    stop.set(true);
    try {
      ended.await(STOP_SECONDS, TimeUnit.SECONDS);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  private static void forget(Thread hook) {
    try {
      Runtime.getRuntime().removeShutdownHook(hook);
    } catch (IllegalStateException e) {
      // the program is ending, and this is why
    }
  }

  private int whole(Path out, ScreeningRun.Count count) {
    if (session.output().json()) {
      session.output().tree(tree(out, count));
    } else {
      session
          .output()
          .say(
              out
                  + " is written: "
                  + zones(count.zones())
                  + (count.before() > 0 ? ", " + count.before() + " of them done before" : "")
                  + skipped(count)
                  + ". "
                  + Program.CAUTION);
    }
    return count.faults() > 0 ? Exit.FAULT : count.skipped() > 0 ? Exit.SITE : Exit.DONE;
  }

  private static Object tree(Path out, ScreeningRun.Count count) {
    return Json.object(
        "written", out.toString(),
        "zones", count.zones(),
        "doneBefore", count.before(),
        "skipped", count.skipped(),
        "faults", count.faults());
  }

  private int stopped(Call call, BegunTable table, ScreeningRun.Count count) {
    session
        .output()
        .say(
            "Stopped. "
                + zones(count.zones())
                + (count.zones() == 1 ? " is kept in " : " are kept in ")
                + table.begun()
                + ". To go on: "
                + ScreenHelp.line(call));
    return Exit.INTERRUPTED;
  }

  private static String zones(int count) {
    return String.format(Locale.ROOT, "%,d", count) + (count == 1 ? " zone" : " zones");
  }

  private static String skipped(ScreeningRun.Count count) {
    return count.skipped() == 0
        ? ""
        : ", " + count.skipped() + " skipped (each is told above; put it right and run again)";
  }

  private ZoneInput input(Call call, Path out) {
    if (call.words().isEmpty()) {
      throw Refusal.usage(
          "The command \"screen\" needs a site file, a folder of them, or a .csv of zones.",
          "screen --template prints such a .csv to begin with.");
    }
    List<Path> paths = new ArrayList<>();
    for (String word : call.words()) {
      Path path = SiteFiles.path(word);
      if (path.toAbsolutePath().normalize().equals(out.toAbsolutePath().normalize())) {
        throw Refusal.usage("--out is " + out + ", which is to be read; name another file.");
      }
      paths.add(path);
    }
    ZoneInput.Opened opened = ZoneInput.of(paths);
    return opened.input().orElseThrow(() -> Refusal.site(opened.problems()));
  }

  private static Path out(Call call) {
    Path out =
        call.option(Options.OUT)
            .map(SiteFiles::path)
            .orElseThrow(
                () -> Refusal.usage("Where to? Name the table to write: --out TABLE.csv or .json"));
    Path folder = out.toAbsolutePath().getParent();
    if (Files.isDirectory(out)) {
      throw Refusal.site("--out is " + out + ", a folder; name a file in it.");
    }
    if (folder == null || !Files.isDirectory(folder)) {
      throw Refusal.site(
          "--out is " + out + ", but there is no folder " + folder + "; make it first.");
    }
    return out;
  }

  private static TableForm form(Path out, ScreeningBasis basis) {
    String name = String.valueOf(out.getFileName()).toLowerCase(Locale.ROOT);
    if (name.endsWith(".csv")) {
      return new ScreeningCsv(basis);
    }
    if (name.endsWith(".json") && !name.endsWith(SiteFiles.ENDING)) {
      return new ScreeningJson(basis);
    }
    throw Refusal.usage(
        "--out is " + out + "; a table ends in .csv or .json, and is no site file.");
  }

  /** A file that is there already is only replaced where it is an earlier table. */
  private static void refuseForeign(Path out, TableForm form) {
    if (!Files.exists(out)) {
      return;
    }
    if (!Files.isRegularFile(out)) {
      throw Refusal.site("--out is " + out + ", a device or pipe; name a file.");
    }
    try (var in = Files.newInputStream(out)) {
      String beginning = new String(in.readNBytes(BEGINNING), StandardCharsets.UTF_8);
      if (!beginning.isEmpty() && !form.isTable(beginning)) {
        throw Refusal.site(
            out
                + " is there already and is no table of screened zones, so nothing was written."
                + " Choose another name, or move it away.");
      }
    } catch (IOException e) {
      throw Refusal.site(out + " is there already and cannot be read, so nothing was written.");
    }
  }

  private static long number(Call call, String option, long usual, long most) {
    Optional<String> typed = call.option(option).map(String::strip);
    if (typed.isEmpty()) {
      return usual;
    }
    if (typed.get().matches("[0-9]{1,10}") && Long.parseLong(typed.get()) <= most) {
      return Long.parseLong(typed.get());
    }
    throw Refusal.usage(
        "--"
            + option
            + " is \""
            + typed.get()
            + "\"; it must be a whole number from 0 to "
            + most
            + ", such as --"
            + option
            + " "
            + usual
            + ".");
  }
}
