package underhold.site;

import java.nio.file.Path;
import java.util.Optional;

/**
 * Reads site files. A file gives a valid site or all problems found in it; whatever the file holds,
 * nothing is thrown.
 */
public final class SiteReader {
  private SiteReader() {}

  /** Reads a file. */
  public static SiteReading read(Path file) {
    Path name = file.getFileName();
    Problems problems = new Problems(name == null ? file.toString() : name.toString());
    return FileText.read(file, problems)
        .map(text -> read(text.text(), problems, text.state()))
        .orElseGet(() -> new SiteReading.Invalid(problems.all()));
  }

  /**
   * Reads a text.
   *
   * @param text what a site file holds
   * @param fileName the name that problems show
   */
  public static SiteReading read(String text, String fileName) {
    return read(text, new Problems(fileName), SavedState.NO_FILE);
  }

  /**
   * Reads what stands in a file of another form, its entries laid out as in a site file.
   *
   * @param root what a site file would hold; its lines and columns are those that problems show
   * @param fileName the name that problems show
   */
  public static SiteReading read(FileNode root, String fileName) {
    return read(Optional.of(root), new Problems(fileName), SavedState.NO_FILE);
  }

  private static SiteReading read(String text, Problems problems, SavedState state) {
    return read(JsonFile.read(text, problems), problems, state);
  }

  private static SiteReading read(Optional<FileNode> root, Problems problems, SavedState state) {
    FactDictionary dictionary = FactDictionary.standard();
    Optional<Site> site = root.flatMap(node -> new SiteSection(dictionary, problems).read(node));
    site.ifPresent(found -> SiteChecks.check(found, dictionary, problems));
    return site.isPresent() && problems.isEmpty()
        ? new SiteReading.Valid(site.get(), state)
        : new SiteReading.Invalid(problems.all());
  }
}
