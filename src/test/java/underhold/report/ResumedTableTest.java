package underhold.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileTime;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import underhold.advice.BuiltInPack;
import underhold.consult.Consultant;
import underhold.consult.ZoneTables;
import underhold.consult.screening.BegunTable;
import underhold.consult.screening.ScreeningRun;
import underhold.consult.screening.TableForm;
import underhold.consult.screening.ZoneInput;
import underhold.consult.screening.ZoneScreen;

/** A table that was stopped, or cut at any byte, and gone on with, is the table made in one go. */
class ResumedTableTest {
  private static final int ZONES = 24;
  private static final int CUTS = 12;
  private static final Consultant CONSULTANT = Consultant.standard();
  private static final ScreeningBasis BASIS = new ScreeningBasis(BuiltInPack.pack(), 0, 1);

  @TempDir Path folder;
  private Path input;

  @BeforeEach
  void a_table_of_zones_with_two_bad_rows() throws IOException {
    input = ZoneTables.of(ZONES, 11).write(folder.resolve("estate.csv"));
    List<String> lines = new ArrayList<>(Files.readAllLines(input));
    lines.add(5, "bad row,too short");
    lines.add("last row,too short");
    Files.write(input, lines);
  }

  private static TableForm form(String name) {
    return name.endsWith(".csv") ? new ScreeningCsv(BASIS) : new ScreeningJson(BASIS);
  }

  /** Stops after some rows; every row that is skipped is told to the list. */
  private class Watch implements ScreeningRun.Watcher {
    private final int stopAfter;
    private final List<String> told = new ArrayList<>();
    private int seen;

    Watch(int stopAfter) {
      this.stopAfter = stopAfter;
    }

    @Override
    public void skipped(List<String> messages) {
      told.addAll(messages);
    }

    @Override
    public void at(double taken, ScreeningRun.Count count) {
      seen = count.done();
    }

    boolean stop() {
      return seen >= stopAfter;
    }
  }

  private ScreeningRun.Ended run(Path table, TableForm form, Watch watch) throws IOException {
    try (ZoneInput zones = ZoneInput.of(List.of(input)).input().orElseThrow();
        BegunTable begun = BegunTable.open(table, form, false).table().orElseThrow()) {
      ZoneScreen screen = new ZoneScreen(CONSULTANT, 0, 1);
      return new ScreeningRun(zones, begun, form, screen, watch, watch::stop).run(2);
    }
  }

  private byte[] wholeAtOnce(String name) throws IOException {
    Path table = folder.resolve(name);
    Watch watch = new Watch(Integer.MAX_VALUE);
    ScreeningRun.Ended ended = run(table, form(name), watch);
    assertThat(ended.whole()).isTrue();
    assertThat(ended.count()).isEqualTo(new ScreeningRun.Count(0, ZONES, 2, 0));
    assertThat(watch.told).hasSize(2);
    byte[] whole = Files.readAllBytes(table);
    Files.delete(table);
    return whole;
  }

  @ParameterizedTest
  @ValueSource(strings = {"t.csv", "t.json"})
  @DisplayName(
      "Cut at random bytes, as a kill or a power cut may leave it: gone on with, the table is the same byte by byte")
  void a_run_cut_anywhere_goes_on(String name) throws IOException {
    byte[] whole = wholeAtOnce(name);
    Path table = folder.resolve(name);
    Path begun = BegunTable.begun(table, form(name));
    Random random = new Random(5);
    for (int i = 0; i < CUTS; i++) {
      run(table, form(name), new Watch(1 + random.nextInt(ZONES - 2)));
      assertThat(table).doesNotExist();
      try (RandomAccessFile file = new RandomAccessFile(begun.toFile(), "rw")) {
        file.setLength(i == 0 ? 0 : (long) (random.nextDouble() * file.length()));
      }
      Watch watch = new Watch(Integer.MAX_VALUE);
      ScreeningRun.Ended ended = run(table, form(name), watch);
      assertThat(ended.problem()).isEmpty();
      assertThat(ended.count().zones()).isEqualTo(ZONES);
      assertThat(watch.told).hasSize(2); // told again, also those in the part done before
      assertThat(Files.readAllBytes(table)).isEqualTo(whole);
      assertThat(begun).doesNotExist();
      Files.delete(table);
    }
  }

  @Test
  @DisplayName(
      "An input changed since, before or at the last row done, is refused and nothing is written")
  void a_changed_input_is_refused() throws IOException {
    Path table = folder.resolve("u.csv");
    TableForm form = form("u.csv");
    run(table, form, new Watch(9));
    byte[] begun = Files.readAllBytes(BegunTable.begun(table, form));
    List<String> lines = Files.readAllLines(input);
    lines.add(3, lines.get(3));
    Files.write(input, lines);

    ScreeningRun.Ended ended = run(table, form, new Watch(Integer.MAX_VALUE));

    assertThat(ended.whole()).isFalse();
    assertThat(ended.problem()).contains("u.part.csv").contains("estate.csv:").contains("--anew");
    assertThat(table).doesNotExist();
    assertThat(Files.readAllBytes(BegunTable.begun(table, form))).isEqualTo(begun);
  }

  @Test
  void a_table_begun_with_other_draws_is_refused() throws IOException {
    Path table = folder.resolve("v.csv");
    run(table, form("v.csv"), new Watch(4));
    TableForm other = new ScreeningCsv(new ScreeningBasis(BuiltInPack.pack(), 7, 1));

    ScreeningRun.Ended ended = run(table, other, new Watch(Integer.MAX_VALUE));

    assertThat(ended.problem()).contains("not with this program, these rules and these draws");
  }

  @Test
  void a_begun_table_of_other_bytes_is_told() throws IOException {
    for (String name : List.of("s.csv", "s.json")) {
      Path table = folder.resolve(name);
      run(table, form(name), new Watch(4));
      Path begun = BegunTable.begun(table, form(name));
      Files.write(begun, new byte[] {'"', (byte) 0xFF, '\n'}, StandardOpenOption.APPEND);

      ScreeningRun.Ended ended = run(table, form(name), new Watch(Integer.MAX_VALUE));

      assertThat(ended.problem()).contains("no UTF-8 text").contains("--anew");
      assertThat(begun).exists();
    }
  }

  @Test
  void two_runs_do_not_write_one_table() throws IOException {
    Path table = folder.resolve("w.csv");
    try (BegunTable first = BegunTable.open(table, form("w.csv"), false).table().orElseThrow()) {
      assertThat(first.begun()).exists();
      assertThat(BegunTable.open(table, form("w.csv"), false).problem())
          .contains("being written by another run");
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"no line end", "a line\nand half a", "", "source,lin"})
  @DisplayName("A file of that name that is no table under way stays as it is, also with --anew")
  void a_foreign_file_is_left_alone(String text) throws IOException {
    for (String name : List.of("x.csv", "x.json")) {
      Path table = folder.resolve(name);
      Path begun = Files.writeString(BegunTable.begun(table, form(name)), text);
      boolean anew = text.length() % 2 == 0;
      boolean ours = form(name).head().startsWith(text);
      BegunTable.Opened opened = BegunTable.open(table, form(name), anew);
      if (ours) {
        opened.table().orElseThrow().close();
        assertThat(begun).hasContent(form(name).head());
      } else {
        assertThat(opened.problem()).contains("is no table under way").contains("--out");
        assertThat(begun).hasContent(text);
      }
      Files.delete(begun);
    }
  }

  @Test
  @DisplayName("Another program finds the begun table locked until the table is whole")
  void the_lock_is_held_to_the_end() throws IOException {
    Path table = folder.resolve("l.csv");
    run(table, form("l.csv"), new Watch(4));
    List<String> found = new ArrayList<>();
    Watch watch =
        new Watch(Integer.MAX_VALUE) {
          @Override
          public void at(double taken, ScreeningRun.Count count) {
            if (count.done() == 2) {
              found.add(LockProbe.ask(BegunTable.begun(table, form("l.csv"))));
            }
          }
        };

    assertThat(run(table, form("l.csv"), watch).whole()).isTrue();

    assertThat(found).containsExactly("held");
  }

  @Test
  void a_table_that_another_program_put_there_meanwhile_is_not_replaced() throws IOException {
    for (boolean stoodBefore : List.of(false, true)) {
      Path table = folder.resolve("y" + stoodBefore + ".csv");
      if (stoodBefore) {
        run(table, form("y.csv"), new Watch(Integer.MAX_VALUE));
      }
      try (ZoneInput zones = ZoneInput.of(List.of(input)).input().orElseThrow();
          BegunTable begun = BegunTable.open(table, form("y.csv"), false).table().orElseThrow()) {
        Watch watch = new Watch(Integer.MAX_VALUE);
        ZoneScreen screen = new ZoneScreen(CONSULTANT, 0, 1);
        ScreeningRun run =
            new ScreeningRun(zones, begun, form("y.csv"), screen, watch, watch::stop);
        Files.writeString(table, "another's");

        assertThatThrownBy(() -> run.run(1)).hasMessageContaining("by another program");

        assertThat(table).hasContent("another's");
        assertThat(Files.readAllLines(begun.begun())).hasSize(ZONES + 1);
      }
    }
  }

  @Test
  void what_a_kill_left_is_cleared_and_a_link_leads_to_the_table() throws IOException {
    Path kept = Files.createDirectory(folder.resolve("kept")).resolve("z.csv");
    run(kept, form("z.csv"), new Watch(Integer.MAX_VALUE));
    byte[] whole = Files.readAllBytes(kept);
    Path link = Files.createSymbolicLink(folder.resolve("z.csv"), kept);
    Path left = Files.createFile(kept.resolveSibling(".z.csv." + UUID.randomUUID()));
    Files.setLastModifiedTime(left, FileTime.from(Instant.now().minusSeconds(600)));

    run(link, form("z.csv"), new Watch(Integer.MAX_VALUE));

    assertThat(link).isSymbolicLink();
    assertThat(Files.readAllBytes(kept)).isEqualTo(whole);
    assertThat(left).doesNotExist();
  }
}
