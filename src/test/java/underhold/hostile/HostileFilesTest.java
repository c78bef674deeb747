package underhold.hostile;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import underhold.quantity.Seeds;

/**
 * No file makes a reader throw, hang or print what could steer a terminal, and every refusal names
 * file and place. The build sends a few hundred files through each door; {@code -Dhostile.tries=N}
 * sends N, and {@code -Dhostile.seed=S} begins elsewhere.
 */
class HostileFilesTest {
  private static final int USUAL_TRIES = 150;
  private static final int TRIES = Integer.getInteger("hostile.tries", USUAL_TRIES);
  private static final long SEED = Long.getLong("hostile.seed", Long.parseLong(Seeds.BUILD));

  /** Doors whose files take long to read get fewer of them. */
  private static final Map<String, Integer> ONE_IN = Map.of("case", 10, "advice", 4, "fact", 2);

  /** One door for each way of reading; the long run takes all. */
  private static final Set<String> HUGE_IN_THE_BUILD = Set.of("answers", "pack limits.json");

  @TempDir Path folder;

  @Test
  void sound_files_pass_so_that_the_rest_means_something() {
    for (Door door : new Doors(folder).all()) {
      assertThat(Hunt.run(door, door.seeds().iterator())).as(door.name()).isEmpty();
    }
  }

  @Test
  void mutated_files_are_read_or_refused_in_words() {
    Map<String, Object> findings = new TreeMap<>();
    long sent = 0;
    for (Door door : new Doors(folder).all()) {
      int tries = Math.max(1, TRIES / oneIn(door));
      Mutator mutator = new Mutator(new Random(SEED), door.seeds(), TRIES > USUAL_TRIES);
      Iterator<byte[]> files =
          IntStream.range(0, tries).mapToObj(number -> mutator.next()).iterator();
      long began = System.nanoTime();
      Map<String, String> found = Hunt.run(door, files);
      sent += tries;
      if (TRIES > USUAL_TRIES) {
        long each = (System.nanoTime() - began) / 1000 / tries;
        System.out.println(door.name() + ": " + tries + " files, " + each + " microseconds each");
        found.values().forEach(System.out::println);
      }
      if (!found.isEmpty()) {
        findings.put(door.name(), String.join("\n  ", found.values()));
      }
    }
    assertThat(findings).as("%d files sent", sent).isEmpty();
  }

  private static int oneIn(Door door) {
    return ONE_IN.getOrDefault(door.name().split(" ", -1)[0], door.name().contains(".") ? 8 : 1);
  }

  /** Values of a million signs, and nests of a hundred thousand, whole and in place of a value. */
  @Test
  void huge_values_are_refused_in_words() {
    Map<String, Object> findings = new TreeMap<>();
    for (Door door : new Doors(folder).all()) {
      if (TRIES <= USUAL_TRIES && !HUGE_IN_THE_BUILD.contains(door.name())) {
        continue;
      }
      Map<String, String> found = Hunt.run(door, huge(door).iterator());
      if (!found.isEmpty()) {
        findings.put(door.name(), String.join("\n  ", found.values()));
      }
    }
    assertThat(findings).isEmpty();
  }

  private static List<byte[]> huge(Door door) {
    List<byte[]> files = new ArrayList<>();
    String seed = new String(door.seeds().get(0), StandardCharsets.UTF_8);
    List<JsonSpans.Span> spans = JsonSpans.of(seed).values();
    for (String huge : HostileWords.huge()) {
      files.add(Seedlings.bytes(huge));
      if (spans.size() > 2 && door.name().indexOf(' ') < 0) {
        Stream.of(spans.size() / 3, spans.size() - 2)
            .map(spans::get)
            .map(span -> seed.substring(0, span.from()) + huge + seed.substring(span.to()))
            .map(Seedlings::bytes)
            .forEach(files::add);
      }
    }
    return files;
  }
}
