package underhold.shell;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import underhold.quantity.Seeds;

/**
 * No command line makes the program fail, hang or print what could steer a terminal. The build runs
 * some hundred; {@code underhold.hostile.LongRun} runs as many as one likes.
 */
class HostileLinesTest {
  private static final int LINES = 250;
  private static final int SESSIONS = 4;

  private List<String> before = List.of();
  private HostileLinesHunt hunt;

  @TempDir Path folder;

  @BeforeEach
  void layOut() throws IOException {
    before = here();
    hunt = new HostileLinesHunt(folder, Long.parseLong(Seeds.BUILD));
  }

  @AfterEach
  void nothingWasMadeElsewhere() throws IOException {
    assertThat(here()).isEqualTo(before);
  }

  private static List<String> here() throws IOException {
    try (Stream<Path> files = Files.list(Path.of(""))) {
      return files.map(Path::toString).sorted().collect(Collectors.toList());
    }
  }

  @Test
  void command_lines_are_run_or_refused_in_words() throws IOException {
    hunt.lines(LINES);
    assertThat(hunt.findings()).as("%d lines run", hunt.run()).isEmpty();
  }

  @Test
  void the_interactive_shell_outlives_any_line() {
    hunt.sessions(SESSIONS);
    assertThat(hunt.findings()).as("%d sessions run", hunt.run()).isEmpty();
  }

  @Test
  void every_nonsense_is_asked_again_in_an_interview() {
    hunt.interview();
    assertThat(hunt.findings()).isEmpty();
  }
}
