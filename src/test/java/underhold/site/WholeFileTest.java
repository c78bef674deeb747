package underhold.site;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileTime;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import underhold.site.SiteWriting.Reason;

/** Nothing is lost between two programs with one file, nor by a program that was killed. */
class WholeFileTest {
  @TempDir private Path folder;

  private static byte[] bytes(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }

  private List<Path> files() throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.sorted().toList();
    }
  }

  @Test
  void of_many_that_write_over_one_reading_one_alone_succeeds() throws IOException {
    Path file = Files.writeString(folder.resolve("a.site.json"), "old");
    SavedState read = FileText.state(file);

    List<SiteWriting> done =
        IntStream.range(0, 8)
            .parallel()
            .mapToObj(i -> WholeFile.write(file, bytes("new " + i), read))
            .toList();

    assertThat(done).filteredOn(SiteWriting.Written.class::isInstance).hasSize(1);
    int winner = new ArrayList<>(done).indexOf(written(done));
    assertThat(file).hasContent("new " + winner);
    assertThat(files()).containsExactly(file);
  }

  @Test
  void of_many_that_create_one_file_one_alone_succeeds() throws IOException {
    Path file = folder.resolve("a.site.json");

    List<SiteWriting> done =
        IntStream.range(0, 8)
            .parallel()
            .mapToObj(i -> WholeFile.write(file, bytes("new " + i), SavedState.NO_FILE))
            .toList();

    assertThat(done).filteredOn(SiteWriting.Written.class::isInstance).hasSize(1);
    assertThat(done)
        .filteredOn(SiteWriting.Refused.class::isInstance)
        .extracting(one -> ((SiteWriting.Refused) one).reason())
        .containsOnly(Reason.EXISTS_ALREADY);
    assertThat(file).hasContent("new " + new ArrayList<>(done).indexOf(written(done)));
    assertThat(files()).containsExactly(file);
  }

  private static SiteWriting written(List<SiteWriting> done) {
    return done.stream().filter(SiteWriting.Written.class::isInstance).findFirst().orElseThrow();
  }

  /** Our own state, not that of a file which another program has put there since. */
  @Test
  void the_state_given_back_is_that_of_what_was_written() throws IOException {
    Path file = folder.resolve("a.site.json");
    SiteWriting done = WholeFile.write(file, bytes("mine"), SavedState.NO_FILE);

    SavedState state = ((SiteWriting.Written) done).savedState();
    assertThat(state.sameContents(FileText.state(file))).isTrue();
    Files.writeString(file, "theirs");
    assertThat(WholeFile.write(file, bytes("mine again"), state))
        .isInstanceOf(SiteWriting.Refused.class);
    assertThat(file).hasContent("theirs");
  }

  @Test
  void a_file_that_another_program_holds_is_left_alone_and_said_so() throws IOException {
    Path file = Files.writeString(folder.resolve("a.site.json"), "old");
    SavedState read = FileText.state(file);

    try (FileChannel held = FileChannel.open(file, StandardOpenOption.WRITE)) {
      assertThat(held.lock().isValid()).isTrue();
      SiteWriting done = WholeFile.write(file, bytes("new"), read);
      assertThat(((SiteWriting.Refused) done).message()).contains("another program holds it");
    }

    assertThat(file).hasContent("old");
    assertThat(files()).containsExactly(file);
    assertThat(WholeFile.write(file, bytes("new"), read)).isInstanceOf(SiteWriting.Written.class);
  }

  @Test
  void what_killed_programs_left_is_swept_away_by_the_next_writing() throws IOException {
    Path file = Files.writeString(folder.resolve("a.site.json"), "old");
    Path left = leftover("a.site.json", Duration.ofMinutes(2));
    Path atWork = leftover("a.site.json", Duration.ZERO);
    Path ofAnother = leftover("b.site.json", Duration.ofDays(9));
    Path theirs = Files.writeString(folder.resolve(".a.site.json.bak"), "mine");
    Files.setLastModifiedTime(theirs, FileTime.from(Instant.EPOCH));

    assertThat(WholeFile.replace(file, bytes("new"))).isInstanceOf(SiteWriting.Written.class);

    assertThat(left).doesNotExist();
    assertThat(files()).contains(file, atWork, ofAnother, theirs);
  }

  private Path leftover(String name, Duration age) throws IOException {
    Path file = folder.resolve("." + name + "." + UUID.randomUUID());
    Files.writeString(file, "half");
    Files.setLastModifiedTime(file, FileTime.from(Instant.now().minus(age)));
    return file;
  }

  @Test
  void a_long_name_has_room_for_the_temporary_one() throws IOException {
    Path file = folder.resolve("n".repeat(240) + ".site.json");

    assertThat(WholeFile.write(file, bytes("new"), SavedState.NO_FILE))
        .isInstanceOf(SiteWriting.Written.class);
    assertThat(files()).containsExactly(file);
  }

  @Test
  void the_reason_of_the_system_is_told_and_no_path_hides_it() {
    Path file = folder.resolve("n".repeat(300) + ".site.json");

    SiteWriting done = WholeFile.write(file, bytes("new"), SavedState.NO_FILE);

    assertThat(((SiteWriting.Refused) done).message()).endsWith("File name too long");
  }
}
