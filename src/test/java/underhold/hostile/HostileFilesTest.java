package underhold.hostile;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import underhold.quantity.Seeds;

/**
 * No file makes a reader throw, hang or print what could steer a terminal, and every refusal names
 * file and place. The build sends some of each kind; {@link LongRun} sends as many as one likes.
 */
class HostileFilesTest {
  private static final int USUAL_TRIES = 150;
  private static final int USUAL_SHARE = 10_000;
  private static final int FEWEST = 15;

  /** One door for each way of reading; the long run takes all. */
  private static final Set<String> HUGE_IN_THE_BUILD = Set.of("answers", "pack limits.json");

  @TempDir Path folder;

  @Test
  void sound_files_pass_so_that_the_rest_means_something() {
    for (Door door : new Doors(folder).all()) {
      assertThat(Hunt.run(door, door.seeds().iterator()).findings()).as(door.name()).isEmpty();
    }
  }

  @Test
  void mutated_files_are_read_or_refused_in_words() {
    Map<String, Object> findings = new TreeMap<>();
    long sent = 0;
    for (Door door : new Doors(folder).all()) {
      int tries = Math.max(FEWEST, USUAL_TRIES * LongRun.share(door) / USUAL_SHARE);
      Supplier<byte[]> files = door.files(new Random(Long.parseLong(Seeds.BUILD)), false);
      Map<String, String> found =
          Hunt.run(door, Stream.generate(files).limit(tries).iterator()).findings();
      sent += tries;
      if (!found.isEmpty()) {
        findings.put(door.name(), String.join("\n  ", found.values()));
      }
    }
    assertThat(findings).as("%d files sent", sent).isEmpty();
  }

  /** Values of a million signs, and nests of a hundred thousand, whole and in place of a value. */
  @Test
  void huge_values_are_refused_in_words() {
    Map<String, Object> findings = new TreeMap<>();
    for (Door door : new Doors(folder).all()) {
      if (!HUGE_IN_THE_BUILD.contains(door.name())) {
        continue;
      }
      Map<String, String> found = Hunt.run(door, door.huge().iterator()).findings();
      if (!found.isEmpty()) {
        findings.put(door.name(), String.join("\n  ", found.values()));
      }
    }
    assertThat(findings).isEmpty();
  }
}
