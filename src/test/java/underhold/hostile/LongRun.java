package underhold.hostile;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.function.Supplier;
import java.util.stream.Stream;
import underhold.shell.HostileLinesHunt;

/**
 * The long run of hostile files and command lines: as many as are asked for, spread over all doors,
 * with a count and the processor time of each. Not part of the build; started by {@code
 * src/bench/hostile.sh}.
 */
public final class LongRun {
  /** In what proportion files go through the doors; what is slow gets fewer. */
  private static final Map<String, Integer> SHARES = shares();

  private LongRun() {}

  private static Map<String, Integer> shares() {
    Map<String, Integer> shares = new LinkedHashMap<>();
    shares.put("site", 11_000);
    shares.put("draft", 6_000);
    shares.put("review", 8_000);
    shares.put("class", 9_000);
    shares.put("answers", 10_000);
    shares.put("case", 5_000);
    shares.put("advice", 3_000);
    shares.put("table", 9_000);
    shares.put("screened table", 2_000);
    shares.put("quantity", 10_000);
    shares.put("fact", 5_000);
    shares.put("limit", 10_000);
    return shares;
  }

  static int share(Door door) {
    boolean usual = door.name().startsWith("begun") || door.name().startsWith("notes");
    return SHARES.getOrDefault(door.name(), usual ? 3_000 : 2_500);
  }

  /**
   * Sends files and lines.
   *
   * @param arguments how many files, how many command lines, a seed
   */
  public static void main(String[] arguments) throws IOException {
    long files = Long.parseLong(arguments[0]);
    int lines = Integer.parseInt(arguments[1]);
    long seed = Long.parseLong(arguments[2]);
    Path folder = Files.createTempDirectory("underhold-hostile");
    Map<String, String> findings = new LinkedHashMap<>();
    System.out.printf("%-24s %9s %9s%n", "door", "files", "us each");
    long sent = files(files, seed, folder, findings);
    long run = 0;
    if (lines > 0) {
      HostileLinesHunt hunt =
          new HostileLinesHunt(Files.createDirectory(folder.resolve("l")), seed);
      hunt.sound();
      hunt.lines(lines);
      hunt.sessions(lines / 100);
      findings.putAll(hunt.findings());
      hunt.findings().forEach((kind, what) -> System.out.println(kind + "\n  " + what));
      run = hunt.run();
    }
    System.out.println(
        sent
            + " files and "
            + run
            + " command lines from seed "
            + seed
            + ", "
            + findings.size()
            + " kinds of failure");
    System.exit(findings.isEmpty() ? 0 : 1);
  }

  private static long files(long files, long seed, Path folder, Map<String, String> findings) {
    List<Door> doors = new Doors(folder).all();
    long whole = doors.stream().mapToLong(LongRun::share).sum();
    long sent = 0;
    for (Door door : doors) {
      long tries = Math.max(1, files * share(door) / whole);
      Supplier<byte[]> next = door.files(new Random(seed), true);
      Stream<byte[]> all = Stream.concat(door.huge().stream(), Stream.generate(next).limit(tries));
      Hunt.Found found = Hunt.run(door, all.iterator());
      System.out.printf("%-24s %9d %9d%n", door.name(), found.sent(), found.micros());
      found.findings().forEach((kind, what) -> findings.put(door.name() + ": " + kind, what));
      found.findings().values().forEach(what -> System.out.println("  " + what));
      sent += found.sent();
    }
    return sent;
  }
}
