package underhold.hostile;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Collections;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;

/**
 * Sends files through a door and notes each kind of failure once, with the file that shows it: a
 * throw, a message that does not help, or a reading that does not come to an end.
 */
final class Hunt {
  /** Processor time that no file may take, in nanoseconds. */
  private static final long LONGEST_WORK = TimeUnit.SECONDS.toNanos(10);

  /** Time on the clock that no file may take: something waits that should not. */
  private static final long LONGEST_WAIT = TimeUnit.MINUTES.toNanos(10);

  private static final Path KEPT = Path.of("target", "hostile");

  private final Door door;
  private final Map<String, String> findings = Collections.synchronizedMap(new LinkedHashMap<>());
  private volatile byte[] present = new byte[0];
  private volatile long began = System.nanoTime();
  private volatile long workBefore;
  private volatile long done;
  private volatile long work;

  /**
   * What came of a hunt.
   *
   * @param findings each kind of failure once; empty where every file was read or refused as it
   *     should be
   * @param sent how many files were sent
   * @param micros processor time that one took, in microseconds, making it included
   */
  record Found(Map<String, String> findings, long sent, long micros) {}

  private Hunt(Door door) {
    this.door = door;
  }

  /** Sends the files. */
  static Found run(Door door, Iterator<byte[]> files) {
    Hunt hunt = new Hunt(door);
    Thread worker = new Thread(() -> hunt.all(files), "hunt at " + door.name());
    worker.setDaemon(true);
    worker.start();
    hunt.watch(worker);
    return new Found(hunt.findings, hunt.done, hunt.work / 1000 / Math.max(1, hunt.done));
  }

  private void all(Iterator<byte[]> files) {
    long before = work();
    files.forEachRemaining(this::one);
    work = work() - before;
  }

  private static long work() {
    return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
  }

  private void one(byte[] file) {
    present = file;
    workBefore = work();
    began = System.nanoTime();
    try {
      Optional<String> wrong = door.open().apply(file);
      wrong.ifPresent(what -> found(what.replaceAll("[0-9]+", "0"), what));
    } catch (RuntimeException | Error fault) {
      found(place(fault), fault + " at " + place(fault));
    }
    done++;
  }

  /** The first of our own lines of a fault: many files show one fault. */
  private static String place(Throwable fault) {
    return fault.getClass().getName()
        + Arrays.stream(fault.getStackTrace())
            .map(StackTraceElement::toString)
            .filter(line -> line.contains("underhold."))
            .findFirst()
            .orElse("");
  }

  private void found(String kind, String what) {
    String shown = what.length() > 600 ? what.substring(0, 600) + "..." : what;
    findings.computeIfAbsent(
        kind, key -> "file " + done + ": " + shown + " (kept as " + keep() + ")");
  }

  private Path keep() {
    try {
      Files.createDirectories(KEPT);
      return Files.write(KEPT.resolve(door.name().replace(' ', '-') + "-" + done), present);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private void watch(Thread worker) {
    try {
      while (worker.isAlive()) {
        worker.join(200);
        long now = ManagementFactory.getThreadMXBean().getThreadCpuTime(worker.getId());
        boolean working = now - workBefore > LONGEST_WORK;
        if (worker.isAlive() && (working || System.nanoTime() - began > LONGEST_WAIT)) {
          String where =
              Arrays.stream(worker.getStackTrace())
                  .limit(25)
                  .map(StackTraceElement::toString)
                  .collect(Collectors.joining("\n    "));
          found("endless", "does not come to an end:\n    " + where);
          return;
        }
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }
}
