package underhold.site;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;

/** Writes site files: whole or not at all, and never over what somebody else has changed. */
public final class SiteWriter {
  private SiteWriter() {}

  /** The text of the site's file; equal sites have equal texts. */
  public static String toText(Site site) {
    return new SiteText(FactDictionary.standard()).of(site);
  }

  /** Writes a new file; refused if there is one of that name. */
  public static SiteWriting write(Site site, Path file) {
    return write(site, file, SavedState.NO_FILE);
  }

  /**
   * Writes the file again; refused if it is no longer what it was.
   *
   * @param expected the state of the file when it was read or last written
   */
  public static SiteWriting write(Site site, Path file, SavedState expected) {
    return WholeFile.write(file, toText(site).getBytes(StandardCharsets.UTF_8), expected);
  }
}
