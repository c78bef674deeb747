package underhold.shell;

import java.nio.file.Path;
import underhold.site.SavedState;
import underhold.site.Site;

/**
 * A site and the file it belongs to.
 *
 * @param file as the user named it
 * @param site the site
 * @param saved the state of the file when it was last read or written
 * @param changed whether the site has changes that the file has not
 */
record OpenSite(Path file, Site site, SavedState saved, boolean changed) {
  OpenSite with(Site other) {
    return new OpenSite(file, other, saved, changed || !other.equals(site));
  }

  OpenSite savedAs(SavedState state) {
    return new OpenSite(file, site, state, false);
  }

  /** The name of the file alone. */
  String fileName() {
    Path name = file.getFileName();
    return name == null ? file.toString() : name.toString();
  }
}
