package underhold.consult.screening;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import underhold.site.Site;
import underhold.site.Zone;

/** Reads tables that somebody else wrote, as {@code screen} does, for tests of other packages. */
public final class HostileTables {
  private HostileTables() {}

  /**
   * What came of a row.
   *
   * @param place file and line, as messages show them
   * @param id by which it is known again
   * @param messages why it is skipped; empty where it is a zone
   * @param screened the answer; empty where none was asked for
   * @param site the site that the row stands for
   */
  public record Row(
      String place,
      String id,
      List<String> messages,
      Optional<ScreenedZone> screened,
      Optional<Site> site) {}

  /**
   * What came of a table.
   *
   * @param problems what is wrong with its header
   */
  public record Told(List<String> problems, List<Row> rows) {}

  /**
   * Reads a table to its end.
   *
   * @param screen answers every zone that can be read; empty where they are only read
   */
  public static Told read(Path file, Optional<ZoneScreen> screen) {
    ZoneInput.Opened opened = ZoneInput.of(List.of(file));
    List<Row> rows = new ArrayList<>();
    if (opened.input().isEmpty()) {
      return new Told(opened.problems(), rows);
    }
    try (ZoneInput input = opened.input().get()) {
      Optional<ZoneEntry> entry = input.next();
      while (entry.isPresent()) {
        rows.add(row(entry.get(), screen));
        assertThat(input.taken()).isBetween(0.0, 1.0);
        entry = input.next();
      }
    }
    return new Told(List.of(), rows);
  }

  private static Row row(ZoneEntry entry, Optional<ZoneScreen> screen) {
    String place = entry.place().text();
    ZoneReading reading = entry.reading().get();
    if (reading instanceof ZoneReading.Refused refused) {
      return new Row(place, entry.id(), refused.messages(), Optional.empty(), Optional.empty());
    }
    Site site = ((ZoneReading.Read) reading).site();
    Zone zone = ((ZoneReading.Read) reading).zone();
    return new Row(
        place,
        entry.id(),
        List.of(),
        screen.map(with -> with.screen(entry.place(), entry.id(), site, zone)),
        Optional.of(site));
  }

  /**
   * Opens a begun table and reads the ids of its rows; gives what it says against it, empty where
   * it would be gone on with. A file that it does not go on with must stay as it is.
   */
  public static String begun(Path table, TableForm form) {
    Path begun = BegunTable.begun(table, form);
    try {
      byte[] before = Files.readAllBytes(begun);
      BegunTable.Opened opened = BegunTable.open(table, form, false);
      if (opened.table().isEmpty()) {
        assertThat(Files.readAllBytes(begun)).isEqualTo(before);
        return opened.problem();
      }
      try (BegunTable found = opened.table().get();
          BegunTable.Rows rows = found.rows()) {
        while (rows.next().isPresent()) {} // each row is read or told
        return rows.problem();
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
