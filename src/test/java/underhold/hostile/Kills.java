package underhold.hostile;

import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import underhold.hostile.KillTargets.Target;

/**
 * Kills the whole program, as {@code kill -9} does, at random moments while it writes, and looks at
 * what is left: the old file whole or the new one whole, every answer of an interview whose next
 * question was shown, and not ever more temporary files. Not part of the build; started by {@code
 * src/bench/kills.sh}.
 */
public final class Kills {
  private static final int MOST_WAITED_SECONDS = 120;

  private static final String WRITER = "writer";

  private final Random random;
  private final Path folder;
  private final List<String> program;
  private final Set<String> names = new LinkedHashSet<>();
  private final Map<String, Integer> killed = new HashMap<>();
  private final Map<String, Integer> caught = new HashMap<>();
  private final Map<String, Integer> over = new HashMap<>();
  private final List<String> losses = new ArrayList<>();

  private int answers;

  private Kills(long seed, Path folder, List<String> program) {
    this.random = new Random(seed);
    this.folder = folder;
    this.program = program;
  }

  /**
   * Kills and looks.
   *
   * @param arguments how many kills of commands, of interviews by pipe and at a terminal, and of a
   *     process that does nothing but write; a seed; then the words that start the program
   */
  public static void main(String[] arguments) throws Exception {
    Path folder = Files.createTempDirectory("underhold-kills");
    List<String> program = List.of(arguments).subList(5, arguments.length);
    Kills kills = new Kills(Long.parseLong(arguments[4]), folder, program);
    kills.writers(Integer.parseInt(arguments[3]));
    kills.interviews(Integer.parseInt(arguments[1]), false);
    kills.interviews(Integer.parseInt(arguments[2]), true);
    kills.commands(Integer.parseInt(arguments[0]));
    System.out.printf(
        "%-26s %7s %20s %12s%n", "what", "killed", "while it was writing", "over before");
    for (String name : kills.names) {
      System.out.printf(
          "%-26s %7d %20d %12d%n",
          name,
          kills.killed.getOrDefault(name, 0),
          kills.caught.getOrDefault(name, 0),
          kills.over.getOrDefault(name, 0));
    }
    int all = kills.killed.values().stream().mapToInt(Integer::intValue).sum();
    System.out.println(all + " killed; " + kills.answers + " accepted answers looked for");
    kills.losses.forEach(System.out::println);
    System.out.println(kills.losses.isEmpty() ? "Nothing was lost." : "LOST");
    System.exit(kills.losses.isEmpty() ? 0 : 1);
  }

  /** Each command that writes, killed when its temporary file appears, or at any time. */
  private void commands(int count) throws Exception {
    if (count == 0) {
      return;
    }
    KillTargets targets = new KillTargets(folder, this::complete);
    List<Target> all = targets.all();
    for (int i = 0; i < count; i++) {
      Target target = all.get(i % all.size());
      targets.layOut(target, i);
      Process process = start(target.words(i), target.log());
      boolean watching = random.nextInt(3) > 0;
      long limit = target.usualMillis();
      long moment = watching ? limit * 4 : limit / 2 + random.nextInt((int) limit);
      if (target.goesOn()) {
        watching = random.nextInt(4) == 0;
        moment = limit / 5 + random.nextInt((int) limit);
      }
      waitFor(process, target.file(), watching, moment);
      end(process, target.name(), target.file());
      String wrong = target.check().apply(i);
      note(target.name(), wrong);
      if (target.goesOn()) {
        complete(target.words(i));
        note(target.name() + ", gone on with", target.fault().apply(target.file()));
      }
    }
  }

  /** Waits for the moment, or for the temporary file and a moment more. */
  private void waitFor(Process process, Path file, boolean watching, long millis)
      throws IOException {
    long began = System.nanoTime();
    while (process.isAlive() && System.nanoTime() - began < millis * 1_000_000) {
      if (watching && temporaries(file) > 0) {
        pause(random.nextInt(3000));
        return;
      }
      pause(200);
    }
  }

  /**
   * One answer after the other; killed once so many are taken, or while the next one is. Of three
   * terminals one is closed in place of the kill.
   */
  private void interviews(int count, boolean terminal) throws Exception {
    String name = terminal ? "interview at a terminal" : "interview by pipe";
    Path file = folder.resolve(terminal ? "tell.site.json" : "talk.site.json");
    for (int i = 0; i < count; i++) {
      if (i % 5 == 0) {
        Files.deleteIfExists(file);
      }
      Conversation talk =
          terminal ? Conversation.atTerminal(program, file) : Conversation.byPipe(program, file);
      String last = talk.converse(1 + random.nextInt(6), "n" + i);
      pause(random.nextInt(40_000));
      boolean alive = !talk.over();
      if (terminal && i % 3 == 2) {
        boolean ended = talk.hangUp();
        count("terminal closed", alive, file);
        note(name, ended ? "" : "does not end when its terminal is closed");
      } else {
        talk.kill();
        count(name, alive, file);
      }
      String wrong = Files.exists(file) ? KillTargets.siteFault(file) : "";
      if (wrong.isEmpty() && !last.isEmpty() && !Files.readString(file).contains(last)) {
        wrong = "the answer \"" + last + "\" is lost, though the next question was shown";
      }
      note(name, talk.questions() == 0 && alive ? "asked nothing" : wrong);
      answers += last.isEmpty() ? 0 : 1;
    }
  }

  /** A process that writes one file over and over, so that nearly every kill meets a writing. */
  private void writers(int count) throws Exception {
    Path file = folder.resolve("over.site.json");
    for (int i = 0; i < count; i++) {
      ProcessBuilder builder =
          new ProcessBuilder(
              System.getProperty("java.home") + "/bin/java",
              "-XX:TieredStopAtLevel=1",
              "-XX:+UseSerialGC",
              "-cp",
              System.getProperty("java.class.path"),
              WriteOnAndOn.class.getName(),
              file.toString(),
              String.valueOf(i));
      Process process = builder.redirectErrorStream(true).start();
      process.getInputStream().read();
      pause(random.nextInt(20_000));
      end(process, WRITER, file);
      note(WRITER, WriteOnAndOn.fault(file));
    }
    System.out.println("writers left " + temporaries(file) + " temporary files");
    clear(file);
  }

  /** Starts the program; words after {@link KillTargets#TYPED} are lines typed into it. */
  private Process start(List<String> words, Path log) throws IOException {
    int typed = words.indexOf(KillTargets.TYPED);
    List<String> line = new ArrayList<>(program);
    line.addAll(typed < 0 ? words : words.subList(0, typed));
    List<String> lines = typed < 0 ? List.of() : words.subList(typed + 1, words.size());
    Path input = Files.write(log.resolveSibling("typed"), lines);
    ProcessBuilder builder = new ProcessBuilder(line);
    builder.environment().put("XDG_STATE_HOME", folder.toString());
    builder.redirectInput(input.toFile());
    return builder.redirectErrorStream(true).redirectOutput(log.toFile()).start();
  }

  /** Runs a command to its end and says how long it took, in milliseconds. */
  private long complete(List<String> words) {
    try {
      long began = System.nanoTime();
      Path log = folder.resolve("log");
      Process process = start(words, log);
      if (!process.waitFor(MOST_WAITED_SECONDS, TimeUnit.SECONDS) || process.exitValue() != 0) {
        throw new IllegalStateException(words + " did not run: " + Files.readString(log));
      }
      return (System.nanoTime() - began) / 1_000_000;
    } catch (IOException | InterruptedException e) {
      throw new IllegalStateException(e);
    }
  }

  private void end(Process process, String name, Path file) throws Exception {
    boolean alive = process.isAlive();
    process.destroyForcibly().waitFor();
    count(name, alive, file);
  }

  private void count(String name, boolean alive, Path file) throws IOException {
    names.add(name);
    (alive ? killed : over).merge(name, 1, Integer::sum);
    if (temporaries(file) > 0) {
      caught.merge(name, 1, Integer::sum);
      if (!name.equals(WRITER)) {
        clear(file);
      }
    }
  }

  private void note(String name, String wrong) {
    if (!wrong.isEmpty()) {
      losses.add(name + ": " + wrong);
      System.out.println(losses.get(losses.size() - 1));
    }
  }

  private static DirectoryStream<Path> hidden(Path file) throws IOException {
    return Files.newDirectoryStream(file.getParent(), "." + file.getFileName() + ".*");
  }

  private static int temporaries(Path file) throws IOException {
    int count = 0;
    try (DirectoryStream<Path> files = hidden(file)) {
      for (Path one : files) {
        count += Files.exists(one) ? 1 : 0;
      }
    }
    return count;
  }

  private static void clear(Path file) throws IOException {
    try (DirectoryStream<Path> files = hidden(file)) {
      for (Path one : files) {
        Files.deleteIfExists(one);
      }
    }
  }

  private static void pause(long micros) {
    java.util.concurrent.locks.LockSupport.parkNanos(micros * 1000);
  }
}
