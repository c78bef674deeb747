package underhold.hostile;

import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import underhold.hostile.JsonSpans.Span;

/**
 * Makes hostile files out of sound ones: bits turned, pieces cut, doubled and swapped, values put
 * in that do not belong, other encodings, and noise. The same random source makes the same files.
 */
final class Mutator {
  private static final int MOST_CHANGES = 4;
  private static final int HUGE_IN = 5000;

  private final Random random;
  private final List<byte[]> seeds;
  private final Map<Integer, JsonSpans> spans = new HashMap<>();
  private final boolean withHuge;

  /**
   * Makes files out of the seeds.
   *
   * @param withHuge whether one file in some thousands holds a value of a million signs
   */
  Mutator(Random random, List<byte[]> seeds, boolean withHuge) {
    this.random = random;
    this.seeds = seeds;
    this.withHuge = withHuge;
  }

  /** The next file. */
  byte[] next() {
    int which = random.nextInt(seeds.size());
    int way = random.nextInt(20);
    if (way < 11) {
      return text(which).getBytes(StandardCharsets.UTF_8);
    }
    if (way < 13) {
      return encoded(random.nextBoolean() ? text(which) : string(which));
    }
    return way < 19 ? broken(seeds.get(which).clone()) : noise();
  }

  private String string(int which) {
    return new String(seeds.get(which), StandardCharsets.UTF_8);
  }

  /** One or some values of the text changed. */
  private String text(int which) {
    String text = string(which);
    JsonSpans known = spans.computeIfAbsent(which, key -> JsonSpans.of(text));
    if (known.values().size() < 2) {
      return lines(text);
    }
    List<Span> chosen = apart(known, 1 + random.nextInt(MOST_CHANGES));
    StringBuilder changed = new StringBuilder(text);
    for (Span span : chosen) {
      changed.replace(span.from(), span.to(), instead(span, text, known));
    }
    return changed.toString();
  }

  /** Spans that do not overlap, the last first, so that a change moves none of the others. */
  private List<Span> apart(JsonSpans known, int count) {
    List<Span> drawn = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      List<Span> kind =
          switch (random.nextInt(6)) {
            case 0 -> known.names();
            case 1 -> known.members();
            default -> known.values();
          };
      drawn.add(one(kind.isEmpty() ? known.values() : kind));
    }
    drawn.sort(Comparator.comparingInt(Span::from).reversed());
    List<Span> apart = new ArrayList<>();
    for (Span span : drawn) {
      if (apart.isEmpty() || span.to() <= apart.get(apart.size() - 1).from()) {
        apart.add(span);
      }
    }
    return apart;
  }

  private String instead(Span span, String text, JsonSpans known) {
    String was = span.of(text);
    if (withHuge && random.nextInt(HUGE_IN) == 0) {
      return one(HostileWords.huge());
    }
    return switch (random.nextInt(10)) {
      case 0 -> "";
      case 1 -> was + ", " + was;
      case 2 -> one(known.values()).of(text);
      case 3 -> one(known.members().isEmpty() ? known.values() : known.members()).of(text);
      case 4 -> "[" + was + "]";
      case 5 -> "{ \"value\": " + was + " }";
      case 6 -> inside(was);
      default -> HostileWords.value(random);
    };
  }

  /** A text with something put into it, so that it stays a text. */
  private String inside(String was) {
    if (was.length() < 2 || was.charAt(0) != '"') {
      return HostileWords.value(random);
    }
    String put = HostileWords.quoted(HostileWords.text(random), true);
    int at = 1 + random.nextInt(was.length() - 1);
    return was.substring(0, at) + put.substring(1, put.length() - 1) + was.substring(at);
  }

  /** A text that is no JSON, such as rules: lines and words changed. */
  private String lines(String text) {
    List<String> words = new ArrayList<>(Arrays.asList(text.split("(?<=[\\s(),;])", -1)));
    int changes = 1 + random.nextInt(MOST_CHANGES);
    for (int i = 0; i < changes; i++) {
      int at = random.nextInt(words.size());
      switch (random.nextInt(5)) {
        case 0 -> words.set(at, "");
        case 1 -> words.add(at, words.get(at));
        case 2 -> words.set(at, one(words));
        case 3 -> words.set(at, HostileWords.text(random));
        default -> words.add(at, HostileWords.text(random));
      }
    }
    return String.join("", words);
  }

  byte[] encoded(String text) {
    List<Charset> charsets =
        List.of(
            StandardCharsets.UTF_16LE,
            StandardCharsets.UTF_16BE,
            StandardCharsets.UTF_16,
            StandardCharsets.ISO_8859_1);
    return switch (random.nextInt(3)) {
      case 0 -> ("\ufeff" + text).getBytes(StandardCharsets.UTF_8);
      case 1 -> ("\ufeff".repeat(2) + text).getBytes(one(charsets));
      default -> text.replace("e", "\u00e9").getBytes(one(charsets));
    };
  }

  byte[] broken(byte[] bytes) {
    if (bytes.length == 0) {
      return noise();
    }
    byte[] now = bytes;
    int changes = 1 + random.nextInt(MOST_CHANGES);
    for (int i = 0; i < changes && now.length > 0; i++) {
      int at = random.nextInt(now.length);
      int length = Math.min(now.length - at, 1 + random.nextInt(random.nextBoolean() ? 4 : 200));
      switch (random.nextInt(7)) {
        case 0, 1 -> now[at] ^= (byte) (1 << random.nextInt(8));
        case 2 -> now[at] = (byte) random.nextInt(256);
        case 3 -> now = Arrays.copyOf(now, at);
        case 4 -> now = joined(now, at, at + length, new byte[0]);
        case 5 -> now = joined(now, at, at, Arrays.copyOfRange(now, at, at + length));
        default -> now = joined(now, at, at + length, piece());
      }
    }
    return now;
  }

  /** A piece of another file, or noise. */
  private byte[] piece() {
    byte[] other = one(seeds);
    if (other.length == 0 || random.nextInt(3) == 0) {
      byte[] noise = new byte[1 + random.nextInt(20)];
      random.nextBytes(noise);
      return noise;
    }
    int from = random.nextInt(other.length);
    return Arrays.copyOfRange(other, from, Math.min(other.length, from + random.nextInt(300)));
  }

  private static byte[] joined(byte[] bytes, int from, int to, byte[] between) {
    byte[] all = Arrays.copyOf(bytes, from + between.length + bytes.length - to);
    System.arraycopy(between, 0, all, from, between.length);
    System.arraycopy(bytes, to, all, from + between.length, bytes.length - to);
    return all;
  }

  byte[] noise() {
    byte[] noise = new byte[random.nextInt(400)];
    random.nextBytes(noise);
    if (random.nextBoolean()) {
      byte[] signs = "{}[]\",:\\ue0123456789-+. \n".getBytes(StandardCharsets.US_ASCII);
      for (int i = 0; i < noise.length; i++) {
        noise[i] = signs[Math.floorMod(noise[i], signs.length)];
      }
    }
    return noise;
  }

  private <T> T one(List<T> all) {
    return all.get(random.nextInt(all.size()));
  }
}
