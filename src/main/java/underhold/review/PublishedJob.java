package underhold.review;

import java.util.List;
import underhold.site.Site;
import underhold.site.Zone;

/**
 * A job that was built and published, as a site of facts and what it calls for.
 *
 * @param name the name of its file, without the ending
 * @param site the facts its source gives; each fact's note says whether the source states it,
 *     whether it was inferred from the source, or recalled and still to be verified
 * @param teaches the lesson, in a sentence
 * @param expectations zone by zone, in the order of the site
 */
public record PublishedJob(String name, Site site, String teaches, List<Expectation> expectations) {
  private static final String SOURCE = "Source: ";

  public PublishedJob {
    expectations = List.copyOf(expectations);
  }

  /** Where the job was published: the end of the site's note. */
  public String source() {
    int at = site.note().indexOf(SOURCE);
    return at < 0 ? "" : site.note().substring(at + SOURCE.length());
  }

  /** The zone that an expectation speaks of. */
  public Zone zone(Expectation expectation) {
    return site.zones().stream()
        .filter(zone -> zone.name().equals(expectation.zone()))
        .findFirst()
        .orElseThrow(() -> new IllegalStateException(name + " has no zone " + expectation.zone()));
  }
}
