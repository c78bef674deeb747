package underhold.shell;

import java.io.PrintWriter;
import java.time.Duration;
import java.util.Locale;
import java.util.function.LongSupplier;

/**
 * A bar on one line of a terminal that tells how far a run is and how long it may still take. It is
 * drawn again a few times a second, and wiped before anything else is said.
 */
final class ProgressBar {
  private static final int CELLS = 24;
  private static final int WIDEST = 76;
  private static final long REDRAW_NANOS = Duration.ofMillis(200).toNanos();
  private static final double LEAST_SHARE = 0.01;
  private static final int HUNDRED = 100;

  private final PrintWriter terminal;
  private final LongSupplier nanos;
  private final long began;
  private long drawn;
  private double beganAt = -1;
  private int width;

  /**
   * A bar.
   *
   * @param nanos a clock, in nanoseconds
   */
  ProgressBar(PrintWriter terminal, LongSupplier nanos) {
    this.terminal = terminal;
    this.nanos = nanos;
    this.began = nanos.getAsLong();
    this.drawn = began - REDRAW_NANOS;
  }

  /**
   * Tells how far the run is.
   *
   * @param share done, from 0 to 1
   * @param words what is done, in short
   */
  void at(double share, String words) {
    long now = nanos.getAsLong();
    if (beganAt < 0) {
      beganAt = share;
    }
    if (now - drawn < REDRAW_NANOS) {
      return;
    }
    drawn = now;
    int full = (int) Math.round(share * CELLS);
    String line =
        "["
            + "#".repeat(full)
            + "-".repeat(CELLS - full)
            + "] "
            + (int) Math.floor(share * HUNDRED)
            + " %  "
            + words
            + left(share, now);
    draw(line.length() > WIDEST ? line.substring(0, WIDEST) : line);
  }

  /** How long it may still take, once enough is done to tell. */
  private String left(double share, long now) {
    double done = share - beganAt;
    if (done < LEAST_SHARE) {
      return "";
    }
    long seconds = Math.round((now - began) / 1e9 * (1 - share) / done);
    return seconds < HUNDRED
        ? String.format(Locale.ROOT, ", %d s left", seconds)
        : String.format(Locale.ROOT, ", %d min left", Math.round(seconds / 60.0));
  }

  private void draw(String line) {
    terminal.print("\r" + line + " ".repeat(Math.max(0, width - line.length())));
    terminal.flush();
    width = line.length();
  }

  /** Takes the bar away. */
  void wipe() {
    if (width > 0) {
      terminal.print("\r" + " ".repeat(width) + "\r");
      terminal.flush();
      width = 0;
    }
  }
}
