package underhold.hostile;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.stream.Stream;

/**
 * A way into the program for what somebody else wrote.
 *
 * @param name what is read there
 * @param seeds sound files of that kind
 * @param tables whether they are tables of comma-separated values
 * @param open reads a file and gives what is wrong with the reading, in words; it may throw, which
 *     is always wrong
 */
record Door(
    String name, List<byte[]> seeds, boolean tables, Function<byte[], Optional<String>> open) {
  Door {
    seeds = List.copyOf(seeds);
    if (seeds.isEmpty()) {
      throw new IllegalArgumentException(name + " has no sound file to begin with");
    }
  }

  Door(String name, List<byte[]> seeds, Function<byte[], Optional<String>> open) {
    this(name, seeds, false, open);
  }

  /**
   * Hostile files for this door, without end.
   *
   * @param withHuge whether one in some thousands is huge
   */
  Supplier<byte[]> files(Random random, boolean withHuge) {
    Mutator mutator = new Mutator(random, seeds, withHuge);
    return tables ? new TableMutator(random, seeds, mutator, withHuge)::next : mutator::next;
  }

  /** Files with values of a million signs, and nests of a hundred thousand. */
  List<byte[]> huge() {
    String seed = new String(seeds.get(0), StandardCharsets.UTF_8);
    List<byte[]> files = new ArrayList<>(tables ? TableMutator.huge(seeds.get(0)) : List.of());
    List<JsonSpans.Span> spans = JsonSpans.of(seed).values();
    for (String huge : HostileWords.huge()) {
      files.add(Seedlings.bytes(huge));
      if (spans.size() > 2 && name.indexOf(' ') < 0) {
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
