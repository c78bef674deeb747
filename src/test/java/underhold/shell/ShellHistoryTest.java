package underhold.shell;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A damaged file of earlier lines is told and passed over; it does not keep the shell from us. */
class ShellHistoryTest {
  @TempDir private Path folder;

  @Test
  void a_file_that_can_be_read_or_is_not_there_yet_is_used() throws IOException {
    assertThat(ShellHistory.fault(folder.resolve("none"))).isEmpty();
    assertThat(ShellHistory.fault(Files.writeString(folder.resolve("h"), "1:advise \u00e9\n")))
        .isEmpty();
  }

  @Test
  void a_damaged_one_is_told_with_its_name_and_what_to_do() throws IOException {
    Path bytes = Files.write(folder.resolve("bytes"), new byte[] {'a', (byte) 0xFF, '\n'});
    Path large = Files.write(folder.resolve("large"), new byte[9 * 1024 * 1024]);
    Path directory = Files.createDirectory(folder.resolve("directory"));

    assertThat(ShellHistory.fault(bytes).orElseThrow())
        .contains("no UTF-8 text")
        .contains("Move it away");
    assertThat(ShellHistory.fault(large).orElseThrow()).contains("larger than 8 MiB");
    assertThat(ShellHistory.fault(directory).orElseThrow()).contains("no ordinary file");
  }

  @Test
  void it_stands_where_the_environment_says() {
    assertThat(ShellHistory.folder(Map.of("XDG_STATE_HOME", "/s")))
        .isEqualTo(Path.of("/s/underhold"));
    assertThat(ShellHistory.folder(Map.of()).toString()).contains(".local");
  }
}
