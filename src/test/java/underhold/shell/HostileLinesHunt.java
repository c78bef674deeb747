package underhold.shell;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import underhold.hostile.HostileWords;
import underhold.hostile.Messages;
import underhold.report.Look;
import underhold.shell.ShellClient.Ran;

/**
 * Runs hostile command lines in one folder and notes each kind of failure once, with the line that
 * shows it.
 */
public final class HostileLinesHunt {
  /** Processor time, so that a busy machine makes no finding. */
  private static final long LONGEST_MILLIS = 20_000;

  private static final String ONE_ZONE =
      """
      { "underhold": "site/1", "name": "Cooper's Yard", "units": "SI",
        "facts": { "structureKind": "building-wall", "excavationDepth": "4.2 m" },
        "zones": [ { "name": "wall", "facts": {
              "loadPattern": "continuous", "excavationPosition": "beside",
              "foundingDepth": "1.8 m", "gapToExcavation": "0.3 m" } } ] }
      """;

  private final Map<String, String> findings = new LinkedHashMap<>();
  private final Path folder;
  private final long seed;
  private long run;

  /**
   * Lays out what the lines speak of.
   *
   * @param folder an empty one; whatever a line makes is made in it
   * @param seed the same seed runs the same lines
   */
  public HostileLinesHunt(Path folder, long seed) throws IOException {
    this.folder = folder;
    this.seed = seed;
    Files.createDirectories(folder.resolve("made"));
    Files.createDirectories(folder.resolve("cases"));
    Files.createDirectories(folder.resolve("pack"));
    Path study = Path.of("cases/classroom/first/larch-terrace.case.json");
    Files.copy(study, folder.resolve("cases/larch-terrace.case.json"));
    Files.writeString(
        folder.resolve("pack/pack.json"),
        "{ \"name\": \"House\", \"version\": \"1\", \"extends\": \"built-in\", \"files\": [],"
            + " \"remove\": [\"PIT-26\"] }");
    renew();
  }

  /** Files that lines may have changed or taken away. */
  private void renew() throws IOException {
    Files.writeString(folder.resolve("one.site.json"), ONE_ZONE);
    Files.deleteIfExists(folder.resolve("two.site.json"));
    Files.writeString(
        folder.resolve("one.zones.csv"),
        "zone,loadPattern,excavationPosition,lineLoad [kN/m],excavationDepth,note\r\n"
            + "a,continuous,beside,120,4 m,=1+1\r\n=b,concentrated,beside,,14 ft,\r\n");
    Files.writeString(
        folder.resolve("one.answers.json"),
        "{ \"underhold\": \"answers/1\", \"student\": \"A\", \"of\": \"larch-terrace\","
            + " \"zones\": [ { \"zone\": \"end wall\", \"method\": \"pits\", \"because\": [],"
            + " \"check\": [], \"danger\": [] } ] }");
    String in = folder + "/";
    if (!Files.exists(folder.resolve("one.advice.json"))) {
      ShellClient.oneShot().run("advise", in + "one.site.json", "--save", in + "one.advice.json");
      ShellClient.oneShot().run("review", "start", in + "one.advice.json", "--by", "Ines");
      ShellClient.oneShot()
          .run("class", "start", in + "one.class.json", in + "cases", "--students", "A, B");
    }
  }

  /** Runs the lines that the hostile ones are made of; each must be what the program takes. */
  public void sound() throws IOException {
    for (List<String> line : new HostileLines(new Random(seed), folder).sound()) {
      Ran ran = ShellClient.oneShot().run(line.toArray(String[]::new));
      if (ran.code() == Exit.USAGE && !ran.err().contains("interactive shell only")) {
        found("is no sound line: " + String.join(" ", line), line, ran.err());
      }
    }
  }

  /** Runs that many lines. */
  public void lines(int tries) throws IOException {
    Random random = new Random(seed);
    HostileLines lines = new HostileLines(random, folder);
    for (int i = 0; i < tries; i++) {
      List<String> line = lines.next();
      Look look = random.nextBoolean() ? Look.PLAIN : odd(random);
      check(line, () -> client(random, look).run(line.toArray(String[]::new)));
      if (i % 50 == 0) {
        renew();
      }
    }
  }

  /** Runs that many sessions of eight lines each. */
  public void sessions(int sessions) {
    Random random = new Random(seed);
    HostileLines lines = new HostileLines(random, folder);
    for (int i = 0; i < sessions; i++) {
      List<String> typed = new ArrayList<>();
      for (int j = 0; j < 8; j++) {
        typed.add(
            random.nextInt(3) == 0
                ? HostileWords.text(random)
                : String.join(random.nextBoolean() ? " " : "\" ", lines.next()));
      }
      check(typed, () -> ShellClient.interactive(typed.toArray(String[]::new)).loop());
    }
  }

  /** Types every nonsense into one interview. */
  void interview() {
    List<String> typed = new ArrayList<>(HostileWords.texts());
    typed.removeIf(text -> text.strip().equals("stop"));
    check(
        typed,
        () ->
            ShellClient.typing(typed.toArray(String[]::new))
                .run("interview", folder + "/made/x.site.json"));
  }

  /** Each kind of failure with the line that showed it first. */
  public Map<String, String> findings() {
    return findings;
  }

  /** How many lines and sessions were run. */
  public long run() {
    return run;
  }

  /** Narrow terminals, and terminals of few signs. */
  private static Look odd(Random random) {
    return new Look(
        random.nextInt(200),
        random.nextBoolean(),
        random.nextBoolean() ? StandardCharsets.US_ASCII : StandardCharsets.UTF_8);
  }

  /** Nobody answers, or somebody types nonsense at whatever is asked. */
  private static ShellClient client(Random random, Look look) {
    return random.nextInt(4) == 0
        ? ShellClient.typing(HostileWords.text(random), HostileWords.text(random), "stop")
        : ShellClient.oneShot(look);
  }

  private interface Running {
    Ran run();
  }

  private void check(List<String> line, Running running) {
    long began = work();
    Ran ran;
    try {
      ran = running.run();
    } catch (RuntimeException | Error fault) {
      found(
          "throws " + fault.getClass().getName(), line, fault + " at " + fault.getStackTrace()[0]);
      return;
    }
    run++;
    String all = ran.out() + ran.err();
    if (ran.code() == Exit.FAULT || all.contains("this is a fault")) {
      found(all.replaceAll("(?s).*?(this is a fault.{90}).*", "$1"), line, ran.err());
    } else if (all.contains("\tat ") || all.contains("Exception")) {
      found("shows its insides", line, all);
    } else if (ran.code() < 0 || ran.code() > Exit.USAGE && ran.code() != Exit.INTERRUPTED) {
      found("ends with " + ran.code(), line, all);
    } else if (ran.code() != Exit.DONE && all.isBlank()) {
      found("refuses without a word", line, "");
    } else if (Messages.unprintable(untinted(all).replace("\r\n", "\n").replace('\t', ' '), true)) {
      found("prints what could steer a terminal", line, all);
    } else if ((work() - began) / 1_000_000 > LONGEST_MILLIS) {
      found("takes too long", line, "");
    }
  }

  private static long work() {
    return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
  }

  /** Without the tints that the program itself may print, and no others. */
  private static String untinted(String page) {
    return page.replaceAll("\u001B\\[[0-9;]{0,8}m", "");
  }

  private void found(String kind, List<String> line, String said) {
    findings.computeIfAbsent(
        kind,
        key ->
            Messages.visible(String.join(" | ", line)) + "  ->  " + Messages.visible(said.strip()));
  }
}
