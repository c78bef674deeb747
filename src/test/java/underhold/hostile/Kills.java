package underhold.hostile;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
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
  private static final String NOBODY_KNOWS = "unknown";
  private static final Pattern NUMBER = Pattern.compile("Question (\\d+)");

  private final Random random;
  private final Path folder;
  private final List<String> program;
  private final Map<String, Integer> killed = new TreeMap<>();
  private final Map<String, Integer> caught = new TreeMap<>();
  private final List<String> losses = new ArrayList<>();

  private Kills(long seed, Path folder, List<String> program) {
    this.random = new Random(seed);
    this.folder = folder;
    this.program = program;
  }

  /**
   * Kills and looks.
   *
   * @param arguments how many kills of commands, of interviews and of a process that does nothing
   *     but write; a seed; then the words that start the program
   */
  public static void main(String[] arguments) throws Exception {
    Path folder = Files.createTempDirectory("underhold-kills");
    List<String> program = List.of(arguments).subList(4, arguments.length);
    Kills kills = new Kills(Long.parseLong(arguments[3]), folder, program);
    kills.writers(Integer.parseInt(arguments[2]));
    kills.interviews(Integer.parseInt(arguments[1]));
    kills.commands(Integer.parseInt(arguments[0]));
    System.out.println(
        "killed " + kills.killed + ", of these while a temporary file stood " + kills.caught);
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
      long limit = watching ? target.usualMillis() * 4 : target.usualMillis();
      long moment = watching ? limit : limit / 2 + random.nextInt((int) limit);
      waitFor(process, target.file(), watching, moment);
      end(process, target.name(), target.file());
      String wrong = target.check().apply(i);
      note(target.name(), wrong);
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

  /** One answer after the other; killed once so many are taken, or while the next one is. */
  private void interviews(int count) throws Exception {
    Path file = folder.resolve("talk.site.json");
    for (int i = 0; i < count; i++) {
      if (i % 5 == 0) {
        Files.deleteIfExists(file);
      }
      Process process = start(List.of("interview", file.toString()), null);
      String last = converse(process, 1 + random.nextInt(6), "n" + i);
      end(process, "interview", file);
      String wrong = Files.exists(file) ? KillTargets.siteFault(file) : "";
      if (wrong.isEmpty() && !last.isEmpty() && !Files.readString(file).contains(last)) {
        wrong = "the answer \"" + last + "\" is lost, though the next question was shown";
      }
      note("interview", wrong);
    }
  }

  /** Answers questions and gives back the last answer after which another question came. */
  private String converse(Process process, int answers, String name) throws IOException {
    InputStream shown = process.getErrorStream();
    OutputStream typed = process.getOutputStream();
    String sent = "";
    String kept = "";
    int before = 0;
    for (int i = 0; i < answers; i++) {
      String question = untilPrompt(shown, process);
      if (question.isEmpty()) {
        return kept;
      }
      Matcher number = NUMBER.matcher(question);
      if (!number.find()) {
        return kept;
      }
      int now = Integer.parseInt(number.group(1));
      kept = now > before && !sent.equals(NOBODY_KNOWS) ? sent : kept;
      before = now;
      sent = KillTargets.answerTo(question.substring(number.start()), name + "-" + i);
      typed.write((sent + "\n").getBytes(StandardCharsets.UTF_8));
      typed.flush();
    }
    pause(random.nextInt(40_000));
    return kept;
  }

  private static String untilPrompt(InputStream shown, Process process) throws IOException {
    StringBuilder text = new StringBuilder();
    long began = System.nanoTime();
    while (System.nanoTime() - began < TimeUnit.SECONDS.toNanos(MOST_WAITED_SECONDS)) {
      if (shown.available() > 0) {
        text.append((char) shown.read());
      } else if (text.toString().endsWith("\n> ")) {
        return text.toString();
      } else if (!process.isAlive()) {
        return "";
      } else {
        pause(500);
      }
    }
    return "";
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

  private Process start(List<String> words, @Nullable Path log) throws IOException {
    List<String> line = new ArrayList<>(program);
    line.addAll(words);
    ProcessBuilder builder = new ProcessBuilder(line);
    if (log != null) {
      builder.redirectErrorStream(true).redirectOutput(log.toFile());
    } else {
      builder.redirectOutput(ProcessBuilder.Redirect.DISCARD);
    }
    return builder.start();
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
    killed.merge(alive ? name : name + " (over before)", 1, Integer::sum);
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
