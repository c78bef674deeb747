package underhold.consult.screening;

import java.io.Closeable;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * All zones to be screened, in the order of what was named: the zones of a site file, of every site
 * file in a folder by name, or the rows of a table. One file is open at a time.
 */
public final class ZoneInput implements Closeable {
  private static final String SITE_ENDING = ".site.json";

  private final List<Path> files;
  private final List<String> names;
  private final long bytes;
  private int at;
  private long bytesBefore;
  private @Nullable Source source;

  private ZoneInput(List<Path> files, List<String> names, long bytes) {
    this.files = List.copyOf(files);
    this.names = List.copyOf(names);
    this.bytes = bytes;
  }

  /** What became of looking at an input. */
  public record Opened(Optional<ZoneInput> input, List<String> problems) {
    public Opened {
      problems = List.copyOf(problems);
    }
  }

  /**
   * Looks at what was named: that each of it is there, and that the header of each table can be
   * used.
   *
   * @param typed files and folders, as typed
   */
  public static Opened of(List<Path> typed) {
    List<Path> files = new ArrayList<>();
    List<String> problems = new ArrayList<>();
    for (Path path : typed) {
      if (Files.isDirectory(path)) {
        addFolder(path, files, problems);
      } else if (!Files.isRegularFile(path)) {
        problems.add(
            Files.exists(path)
                ? path + " is a device or pipe, not a file."
                : "There is no file " + path + ".");
      } else {
        files.add(path);
      }
    }
    long bytes = 0;
    List<String> names = new ArrayList<>();
    for (Path file : files) {
      String name = file.toString();
      names.add(name);
      try {
        bytes += Files.size(file);
        if (isTable(file)) {
          CsvSource.Opened opened = CsvSource.open(file, name);
          problems.addAll(opened.problems());
          if (opened.source().isPresent()) {
            opened.source().get().close();
          }
        }
      } catch (IOException e) {
        problems.add(file + " cannot be read.");
      }
    }
    return problems.isEmpty()
        ? new Opened(Optional.of(new ZoneInput(files, names, bytes)), List.of())
        : new Opened(Optional.empty(), problems);
  }

  private static void addFolder(Path folder, List<Path> files, List<String> problems) {
    try (Stream<Path> all = Files.list(folder)) {
      List<Path> sites =
          all.filter(file -> file.toString().endsWith(SITE_ENDING)).sorted().toList();
      if (sites.isEmpty()) {
        problems.add("The folder " + folder + " holds no file whose name ends in " + SITE_ENDING);
      }
      files.addAll(sites);
    } catch (IOException e) {
      problems.add("The folder " + folder + " cannot be read.");
    }
  }

  /** Whether a file is a table of zones, by its name. */
  public static boolean isTable(Path file) {
    return file.toString().toLowerCase(Locale.ROOT).endsWith(CsvSource.ENDING);
  }

  /** The next zone, or what is wrong in its place; empty at the end. */
  Optional<ZoneEntry> next() {
    while (true) { // ends: each round opens another file
      Source open = source;
      if (open != null) {
        Optional<ZoneEntry> entry = open.next();
        if (entry.isPresent()) {
          return entry;
        }
        closeSource(open);
      }
      if (at == files.size()) {
        return Optional.empty();
      }
      Optional<ZoneEntry> failure = open(at++);
      if (failure.isPresent()) {
        return failure;
      }
    }
  }

  /** Opens a file; what is wrong where that fails. */
  private Optional<ZoneEntry> open(int number) {
    Path file = files.get(number);
    String name = names.get(number);
    if (!isTable(file)) {
      source = new SiteFileSource(file, name);
      return Optional.empty();
    }
    try {
      CsvSource.Opened opened = CsvSource.open(file, name);
      source = opened.source().orElse(null);
      return opened.problems().isEmpty()
          ? Optional.empty()
          : Optional.of(refused(name, String.join(" | ", opened.problems())));
    } catch (IOException e) {
      return Optional.of(refused(name, name + " cannot be read."));
    }
  }

  private static ZoneEntry refused(String name, String message) {
    return ZoneEntry.refused(new Place(name, 0, ""), message);
  }

  private void closeSource(Source open) {
    bytesBefore += open.bytesRead();
    source = null;
    try {
      open.close();
    } catch (IOException e) {
      // it was only read, and to its end
    }
  }

  /** The share of the input that was taken so far, from 0 to 1. */
  double taken() {
    Source open = source;
    long read = bytesBefore + (open == null ? 0 : open.bytesRead());
    return bytes == 0 ? 1 : Math.min(1, read / (double) bytes);
  }

  @Override
  public void close() {
    Source open = source;
    if (open != null) {
      closeSource(open);
    }
  }
}
