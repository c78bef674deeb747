package underhold.consult.screening;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import underhold.consult.Consultant;

/** Runs screenings for tests. The form writes only what tells rows apart. */
final class Tables {
  static final Consultant CONSULTANT = Consultant.standard();

  private Tables() {}

  /** Everything that a run told. */
  static final class Heard implements ScreeningRun.Watcher {
    final List<String> messages = new ArrayList<>();
    private final int stopAfter;
    private int rows;

    Heard(int stopAfter) {
      this.stopAfter = stopAfter;
    }

    @Override
    public void skipped(List<String> told) {
      messages.addAll(told);
      rows++;
    }

    @Override
    public void at(double taken, ScreeningRun.Count count) {
      assertThat(taken).isBetween(0.0, 1.0);
      rows = count.zones() + count.skipped();
    }

    boolean stop() {
      return rows >= stopAfter;
    }
  }

  /** A file in the folder with that text. */
  static Path file(Path folder, String name, String text) {
    try {
      return Files.writeString(folder.resolve(name), text);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static ZoneInput input(Path... files) {
    ZoneInput.Opened opened = ZoneInput.of(List.of(files));
    assertThat(opened.problems()).isEmpty();
    return opened.input().orElseThrow();
  }

  static BegunTable begun(Path table, TableForm form) {
    BegunTable.Opened opened = BegunTable.open(table, form, false);
    assertThat(opened.problem()).isEmpty();
    return opened.table().orElseThrow();
  }

  static ScreeningRun.Ended run(Path input, Path table, TableForm form, Heard heard) {
    try (ZoneInput zones = input(input);
        BegunTable begun = begun(table, form)) {
      ZoneScreen screen = new ZoneScreen(CONSULTANT, 0, 1);
      return new ScreeningRun(zones, begun, form, screen, heard, heard::stop).run(2);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** What is wrong with each row of a table; empty texts for rows that can be read. */
  static List<String> readings(Path input) {
    List<String> readings = new ArrayList<>();
    try (ZoneInput zones = input(input)) {
      Optional<ZoneEntry> entry = zones.next();
      while (entry.isPresent()) {
        ZoneReading reading = entry.get().reading().get();
        readings.add(
            reading instanceof ZoneReading.Refused refused
                ? String.join("\n", refused.messages())
                : "");
        entry = zones.next();
      }
    }
    return readings;
  }
}
