package underhold.site;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import underhold.site.SiteProblem.Code;

/** What is not an ordinary UTF-8 file of usual size gives a problem, never an exception. */
class FileProblemsTest {
  @TempDir private Path directory;

  @Test
  void a_missing_file_is_named() {
    assertThat(only(directory.resolve("none.site.json")))
        .satisfies(problem -> assertThat(problem.file()).isEqualTo("none.site.json"))
        .extracting(SiteProblem::code)
        .isEqualTo(Code.NOT_A_FILE);
  }

  @Test
  void a_directory_is_no_file() {
    assertThat(only(directory).message()).isEqualTo("this is a directory");
  }

  @Test
  void a_device_is_no_file_and_is_never_opened() {
    Path endless = Path.of("/dev/zero");
    Assumptions.assumeTrue(Files.exists(endless));

    assertThat(only(endless).code()).isEqualTo(Code.NOT_A_FILE);
  }

  @Test
  void a_file_larger_than_any_site_is_not_read() throws IOException {
    Path large = directory.resolve("large.site.json");
    try (RandomAccessFile file = new RandomAccessFile(large.toFile(), "rw")) {
      file.setLength(FileText.LARGEST_BYTES + 1L);
    }

    assertThat(only(large).code()).isEqualTo(Code.TOO_LARGE);
  }

  @Test
  void bytes_that_are_not_utf8_are_refused() throws IOException {
    Path latin = directory.resolve("latin.site.json");
    Files.write(latin, Sites.LEAST.replace("Dock", "Döck").getBytes(StandardCharsets.ISO_8859_1));

    assertThat(only(latin).code()).isEqualTo(Code.NOT_UTF8);
  }

  @Test
  void utf16_is_refused() throws IOException {
    Path wide = directory.resolve("wide.site.json");
    Files.write(wide, Sites.LEAST.getBytes(StandardCharsets.UTF_16));

    assertThat(only(wide).code()).isEqualTo(Code.NOT_UTF8);
  }

  @Test
  @DisplayName("RFC 8259, section 8.1: a reader may ignore a byte order mark")
  void a_byte_order_mark_is_passed_over() throws IOException {
    Path marked = directory.resolve("marked.site.json");
    Files.writeString(marked, "\uFEFF" + Sites.LEAST);

    assertThat(SiteReader.read(marked)).isInstanceOf(SiteReading.Valid.class);
  }

  @Test
  void a_file_without_rights_is_refused() throws IOException {
    Path secret = directory.resolve("secret.site.json");
    Files.writeString(secret, Sites.LEAST);
    Assumptions.assumeTrue(secret.toFile().setReadable(false) && !Files.isReadable(secret));

    assertThat(only(secret).code()).isEqualTo(Code.NOT_A_FILE);
  }

  private static SiteProblem only(Path file) {
    return SiteReader.read(file)
        .fold(
            valid -> {
              throw new AssertionError("valid");
            },
            invalid -> {
              assertThat(invalid.problems()).hasSize(1);
              return invalid.problems().get(0);
            });
  }
}
