package underhold.shell;

import java.util.List;
import underhold.site.SiteProblem;
import underhold.site.SiteReader;
import underhold.site.SiteReading;
import underhold.site.SiteWriter;

/** Checks a site that is at hand, as it would be checked in its file. */
final class SiteChecking {
  private SiteChecking() {}

  /** All problems in one line each, in the order of the file. */
  static List<String> problems(underhold.site.Site site, String fileName) {
    return SiteReader.read(SiteWriter.toText(site), fileName)
        .fold(valid -> List.<SiteProblem>of(), SiteReading.Invalid::problems)
        .stream()
        .map(SiteProblem::text)
        .toList();
  }
}
