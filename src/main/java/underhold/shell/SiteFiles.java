package underhold.shell;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import underhold.site.SiteProblem;
import underhold.site.SiteReader;
import underhold.site.SiteReading;
import underhold.site.SiteWriter;
import underhold.site.SiteWriting;

/** Reads and writes site files for the commands. */
final class SiteFiles {
  static final String ENDING = ".site.json";

  private SiteFiles() {}

  /** The path typed. */
  static Path path(String typed) {
    try {
      return Path.of(typed);
    } catch (InvalidPathException e) {
      throw Refusal.usage("\"" + typed + "\" cannot be the name of a file.");
    }
  }

  /**
   * Reads a site that can be advised.
   *
   * @throws Refusal with every problem of the file
   */
  static OpenSite read(Path file) {
    existing(file);
    return SiteReader.read(file)
        .fold(valid -> open(file, valid), invalid -> fail(invalid.problems()));
  }

  /** Reads a site whose zones may still lack the facts that every zone needs. */
  static OpenSite readDraft(Path file) {
    existing(file);
    return SiteReader.read(file)
        .fold(
            valid -> open(file, valid),
            invalid -> DraftReader.read(file, invalid).orElseGet(() -> fail(invalid.problems())));
  }

  /** Writes the site to its file, whole or not at all. */
  static OpenSite write(OpenSite open) {
    return SiteWriter.write(open.site(), open.file(), open.saved())
        .fold(
            written -> open.savedAs(written.savedState()),
            refused -> {
              throw Refusal.site(refused.message() + ".");
            });
  }

  static SiteWriting tryWrite(OpenSite open) {
    return SiteWriter.write(open.site(), open.file(), open.saved());
  }

  private static OpenSite open(Path file, SiteReading.Valid valid) {
    return new OpenSite(file, valid.site(), valid.savedState(), false);
  }

  private static OpenSite fail(List<SiteProblem> problems) {
    throw Refusal.site(problems.stream().map(SiteProblem::text).toList());
  }

  static void existing(Path file) {
    if (!Files.exists(file) && Files.isSymbolicLink(file)) {
      throw Refusal.site(file + " is a link that leads to no file.");
    }
    if (!Files.exists(file)) {
      Path folder = file.toAbsolutePath().getParent();
      String name = String.valueOf(file.getFileName());
      List<String> near = folder == null ? List.of() : names(folder);
      String guess =
          near.stream()
              .filter(other -> Nearest.of(stem(name), List.of(stem(other))).isPresent())
              .findFirst()
              .map(other -> " Did you mean " + file.resolveSibling(other) + "?")
              .orElse("");
      throw Refusal.site("There is no file " + file + "." + guess);
    }
  }

  /** The name without its ending, which all site files share. */
  private static String stem(String name) {
    return name.replaceFirst("(\\.(site|advice|review))?\\.json$", "");
  }

  /** The site files of this folder, for completion. */
  static List<String> here() {
    return here(ENDING);
  }

  /** The files of this folder with that ending, for completion. */
  static List<String> here(String ending) {
    return names(Path.of("")).stream().filter(name -> name.endsWith(ending)).toList();
  }

  private static List<String> names(Path folder) {
    try (Stream<Path> files = Files.list(folder.toAbsolutePath())) {
      return files
          .map(file -> String.valueOf(file.getFileName()))
          .filter(name -> name.endsWith(".json"))
          .sorted()
          .limit(1000)
          .toList();
    } catch (IOException | UncheckedIOException e) {
      return List.of();
    }
  }
}
