package underhold.consult.screening;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import underhold.site.PlainText;

/**
 * Screens all zones of an input into a table. Rows are written in the order of the input, whichever
 * thread is done first, so that the table is the same however often the run is stopped and gone on
 * with.
 */
public final class ScreeningRun {
  private final ZoneInput input;
  private final BegunTable table;
  private final TableForm form;
  private final ZoneScreen screen;
  private final Watcher watcher;
  private final BooleanSupplier stopped;
  private int before;
  private int done;
  private int skipped;
  private int faults;

  /** Is told what happens, by one thread. */
  public interface Watcher {
    /** A zone is skipped. */
    void skipped(List<String> messages);

    /**
     * How far the run is.
     *
     * @param taken the share of the input that was taken, from 0 to 1
     */
    void at(double taken, Count count);
  }

  /**
   * What was done.
   *
   * @param before zones that stood in the begun table already
   * @param done zones screened now
   * @param skipped zones skipped, in the part gone over again too
   * @param faults those of them that were skipped because the program failed
   */
  public record Count(int before, int done, int skipped, int faults) {
    /** The zones in the table. */
    public int zones() {
      return before + done;
    }
  }

  /**
   * How a run ended.
   *
   * @param count what was done
   * @param whole whether all zones are done and the table is written
   * @param problem why the run could not go on; empty where it could, or was stopped
   */
  public record Ended(Count count, boolean whole, String problem) {}

  /** What came of one zone. */
  private record Done(Optional<String> row, List<String> messages, boolean fault, double taken) {}

  /** A zone, and the share of the input that was taken with it. */
  private record Piece(ZoneEntry entry, double taken) {}

  /**
   * A run.
   *
   * @param stopped whether the user wants to stop; asked often
   */
  public ScreeningRun(
      ZoneInput input,
      BegunTable table,
      TableForm form,
      ZoneScreen screen,
      Watcher watcher,
      BooleanSupplier stopped) {
    this.input = input;
    this.table = table;
    this.form = form;
    this.screen = screen;
    this.watcher = watcher;
    this.stopped = stopped;
  }

  /**
   * Runs to the end, or until it is stopped.
   *
   * @param threads how many threads screen
   * @throws IOException if the table cannot be written; what is done stays
   */
  public Ended run(int threads) throws IOException {
    String problem = goOverDone();
    if (problem.isEmpty() && !stopped.getAsBoolean()) {
      try {
        new OrderedWork<>(this::screened, this::take, stopped).run(this::next, threads);
      } catch (UncheckedIOException e) {
        throw e.getCause();
      }
    }
    boolean whole = problem.isEmpty() && !stopped.getAsBoolean();
    if (whole) {
      table.finish();
    }
    return new Ended(count(), whole, problem);
  }

  private Optional<Piece> next() {
    return input.next().map(entry -> new Piece(entry, input.taken()));
  }

  private Count count() {
    return new Count(before, done, skipped, faults);
  }

  /** Passes over the zones whose rows stand in the table; says why where they do not fit. */
  private String goOverDone() throws IOException {
    try (BegunTable.Rows rows = table.rows()) {
      Optional<String> row = rows.next();
      while (row.isPresent() && !stopped.getAsBoolean()) {
        Optional<Piece> piece = next();
        if (piece.isEmpty()) {
          return changed(rows, "the input ends before it");
        }
        ZoneEntry entry = piece.get().entry();
        if (entry.id().equals(row.get())) {
          before++;
          row = rows.next();
        } else {
          Done skippedBefore = screened(piece.get());
          if (skippedBefore.row().isPresent()) {
            return changed(rows, "it is not what " + entry.place().text() + " holds now");
          }
          take(skippedBefore);
        }
      }
      return rows.problem();
    }
  }

  private String changed(BegunTable.Rows rows, String how) {
    return "Line "
        + rows.line()
        + " of the begun table "
        + table.begun()
        + " does not fit the input: "
        + how
        + ". Either the input was changed since, or other files were named; begin again with --anew,"
        + " or name another --out.";
  }

  private Done screened(Piece piece) {
    ZoneEntry entry = piece.entry();
    try {
      ZoneReading reading = entry.reading().get();
      if (reading instanceof ZoneReading.Read read) {
        ScreenedZone zone = screen.screen(entry.place(), entry.id(), read.site(), read.zone());
        return new Done(Optional.of(form.row(zone)), List.of(), false, piece.taken());
      }
      return new Done(
          Optional.empty(), ((ZoneReading.Refused) reading).messages(), false, piece.taken());
    } catch (RuntimeException e) {
      return new Done(Optional.empty(), fault(entry, e), true, piece.taken());
    }
  }

  private static List<String> fault(ZoneEntry entry, RuntimeException e) {
    List<String> messages = new ArrayList<>();
    messages.add(
        entry.place().text()
            + ": "
            + PlainText.quoted(entry.place().zone())
            + " is skipped: Underhold failed; this is a fault of the program, not of the zone: "
            + e.getClass().getSimpleName()
            + ": "
            + PlainText.shown(String.valueOf(e.getMessage())));
    return messages;
  }

  private void take(Done zone) {
    if (zone.row().isPresent()) {
      try {
        table.add(zone.row().get());
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
      done++;
    } else {
      skipped++;
      faults += zone.fault() ? 1 : 0;
      watcher.skipped(zone.messages());
    }
    watcher.at(zone.taken(), count());
  }
}
