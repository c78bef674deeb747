package underhold.hostile;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * A way into the program for what somebody else wrote.
 *
 * @param name what is read there
 * @param seeds sound files of that kind
 * @param open reads a file and gives what is wrong with the reading, in words; it may throw, which
 *     is always wrong
 */
record Door(String name, List<byte[]> seeds, Function<byte[], Optional<String>> open) {
  Door {
    seeds = List.copyOf(seeds);
    if (seeds.isEmpty()) {
      throw new IllegalArgumentException(name + " has no sound file to begin with");
    }
  }
}
