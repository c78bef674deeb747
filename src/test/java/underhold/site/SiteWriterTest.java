package underhold.site;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.stream.Stream;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import underhold.quantity.UnitSystem;
import underhold.site.SiteWriting.Reason;

/** A site is written whole or not at all and comes back as it was; own cases. */
class SiteWriterTest {
  @TempDir private Path directory;

  @ParameterizedTest
  @ValueSource(strings = {Sites.FULL})
  void what_is_written_reads_back_equal(String text) {
    Site site = Sites.valid(text);

    assertThat(Sites.valid(SiteWriter.toText(site))).isEqualTo(site);
  }

  @Test
  void equal_sites_have_equal_texts_whatever_the_order_typed() {
    Site one = Sites.valid(Sites.oneZone("\"clearSpan\": \"1 m\", \"heritage\": \"none\","));
    Site other = Sites.valid(Sites.oneZone("\"heritage\": \"none\", \"clearSpan\": \"1 m\","));

    assertThat(SiteWriter.toText(one)).isEqualTo(SiteWriter.toText(other));
  }

  @Test
  void the_text_keeps_what_was_typed_and_noted() {
    String text = SiteWriter.toText(Sites.valid(Sites.FULL));

    assertThat(text)
        .contains("\"groundWaterDepth\": { \"value\": \"3 m\", \"note\": \"standpipe, March\" }")
        .contains("\"heritage\": \"unknown\"")
        .contains("\"note\": \"two\\nlines\"")
        .contains("\"storeys\": 4")
        .contains("\"pitWidth\": \"1.2 m\"");
  }

  @Test
  void odd_signs_in_names_and_notes_survive() {
    Site site = Sites.valid(Sites.LEAST.replace("Dock Row", "A \\\"B\\\" \\\\ 墙 😀 é"));

    assertThat(site.name()).isEqualTo("A \"B\" \\ 墙 😀 é");
    assertThat(Sites.valid(SiteWriter.toText(site))).isEqualTo(site);
  }

  @Test
  void units_follow_the_majority_typed_and_si_where_even() {
    assertThat(Sites.valid(Sites.LEAST).units()).isEqualTo(UnitSystem.SI);
    assertThat(Sites.valid(Sites.oneZone("\"clearSpan\": \"3 ft\",")).units())
        .isEqualTo(UnitSystem.US);
    assertThat(
            Sites.valid(Sites.oneZone("\"clearSpan\": \"3 ft\", \"footingWidth\": \"1 m\","))
                .units())
        .isEqualTo(UnitSystem.SI);
    String usLayers =
        "\"ground\": {\"layers\": [{\"top\": \"0 ft\", \"soil\": \"silt\","
            + " \"unitWeight\": \"115 pcf\"}]},";
    assertThat(Sites.valid(Sites.file("\"clearSpan\": \"1 m\",", usLayers)).units())
        .isEqualTo(UnitSystem.US);
  }

  @Test
  void a_new_file_is_written_whole_and_leaves_nothing_else() throws IOException {
    Path file = directory.resolve("new.site.json");
    Site site = Sites.valid(Sites.FULL);

    SiteWriting writing = SiteWriter.write(site, file);

    assertThat(writing).isInstanceOf(SiteWriting.Written.class);
    assertThat(Files.readString(file)).isEqualTo(SiteWriter.toText(site));
    try (Stream<Path> files = Files.list(directory)) {
      assertThat(files).containsExactly(file);
    }
  }

  @Test
  void a_new_file_never_replaces_one_that_is_there() throws IOException {
    Path file = Files.writeString(directory.resolve("old.site.json"), "precious");

    assertThat(refused(SiteWriter.write(Sites.valid(Sites.LEAST), file)))
        .isEqualTo(Reason.EXISTS_ALREADY);
    assertThat(file).hasContent("precious");
  }

  @Test
  void a_file_read_is_written_again_and_again() {
    Path file = directory.resolve("again.site.json");
    SiteWriter.write(Sites.valid(Sites.LEAST), file);
    SiteReading.Valid read = (SiteReading.Valid) SiteReader.read(file);

    SiteWriting first = SiteWriter.write(Sites.valid(Sites.FULL), file, read.savedState());
    SavedState state = ((SiteWriting.Written) first).savedState();

    assertThat(SiteWriter.write(read.site(), file, state)).isInstanceOf(SiteWriting.Written.class);
  }

  @Test
  void a_file_changed_by_somebody_else_is_left_alone() throws IOException {
    Path file = directory.resolve("shared.site.json");
    SiteWriter.write(Sites.valid(Sites.LEAST), file);
    SavedState state = ((SiteReading.Valid) SiteReader.read(file)).savedState();
    Files.writeString(file, "theirs");

    SiteWriting writing = SiteWriter.write(Sites.valid(Sites.FULL), file, state);

    assertThat(refused(writing)).isEqualTo(Reason.CHANGED_SINCE_READ);
    assertThat(((SiteWriting.Refused) writing).message()).contains("has changed since it was read");
    assertThat(file).hasContent("theirs");
    Files.delete(file);
    assertThat(refused(SiteWriter.write(Sites.valid(Sites.FULL), file, state)))
        .isEqualTo(Reason.CHANGED_SINCE_READ);
    assertThat(file).doesNotExist();
  }

  @Test
  void a_directory_or_a_missing_directory_cannot_be_written() {
    Site site = Sites.valid(Sites.LEAST);

    assertThat(refused(SiteWriter.write(site, directory))).isEqualTo(Reason.CANNOT_WRITE);
    assertThat(refused(SiteWriter.write(site, directory.resolve("no/such.site.json"))))
        .isEqualTo(Reason.CANNOT_WRITE);
  }

  @Test
  void rights_and_links_stay_as_they_were() throws IOException {
    Path file = directory.resolve("real.site.json");
    Path link = directory.resolve("link.site.json");
    SiteWriter.write(Sites.valid(Sites.LEAST), file);
    Assumptions.assumeTrue(file.getFileSystem().supportedFileAttributeViews().contains("posix"));
    Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rw-r-----"));
    Files.createSymbolicLink(link, file);
    SavedState state = ((SiteReading.Valid) SiteReader.read(link)).savedState();

    SiteWriter.write(Sites.valid(Sites.FULL), link, state);

    assertThat(Files.isSymbolicLink(link)).isTrue();
    assertThat(Files.readString(file)).contains("Mill Lane");
    assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(file)))
        .isEqualTo("rw-r-----");
  }

  private static Reason refused(SiteWriting writing) {
    return ((SiteWriting.Refused) writing).reason();
  }
}
