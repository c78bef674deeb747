package underhold.consult.screening;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import underhold.site.Site;
import underhold.site.SiteProblem;
import underhold.site.SiteReader;
import underhold.site.SiteReading;
import underhold.site.Zone;

/** The zones of one site file; the file is read when the first one is asked for. */
final class SiteFileSource implements Source {
  private final Path file;
  private final String name;
  private final Deque<ZoneEntry> entries = new ArrayDeque<>();
  private long bytesRead;
  private boolean read;

  /**
   * The zones of a file.
   *
   * @param file the file
   * @param name the name that messages and the table show
   */
  SiteFileSource(Path file, String name) {
    this.file = file;
    this.name = name;
  }

  @Override
  public Optional<ZoneEntry> next() {
    if (!read) {
      read = true;
      bytesRead = size();
      SiteReader.read(file).fold(this::keep, this::keep);
    }
    return Optional.ofNullable(entries.poll());
  }

  private boolean keep(SiteReading.Valid valid) {
    Site site = valid.site();
    for (Zone zone : site.zones()) {
      entries.add(
          new ZoneEntry(
              new Place(name, 0, zone.name()),
              Digest.id(List.of(valid.savedState().sha256(), zone.name())),
              () -> new ZoneReading.Read(site, zone)));
    }
    return true;
  }

  private boolean keep(SiteReading.Invalid invalid) {
    List<String> messages = invalid.problems().stream().map(SiteProblem::text).toList();
    return entries.add(
        new ZoneEntry(
            new Place(name, 0, ""), Digest.id(messages), () -> new ZoneReading.Refused(messages)));
  }

  private long size() {
    try {
      return Files.size(file);
    } catch (IOException e) {
      return 0; // reading the file tells what is wrong with it
    }
  }

  @Override
  public long bytesRead() {
    return bytesRead;
  }

  @Override
  public void close() {}
}
