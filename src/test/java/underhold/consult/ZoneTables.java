package underhold.consult;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.apache.commons.csv.CSVFormat;
import underhold.site.Site;

/** Tables of plausible zones, and the sites that their rows stand for. */
public final class ZoneTables {
  private final List<Map<String, String>> rows = new ArrayList<>();

  private ZoneTables() {}

  /** That many zones, from all facts known to a share of them forgotten. */
  public static ZoneTables of(int count, long seed) {
    ZoneTables tables = new ZoneTables();
    PlausibleSites sites = new PlausibleSites(seed);
    for (int i = 0; i < count; i++) {
      tables.rows.add(sites.forget(sites.next(), (i % 4) * 0.2));
    }
    return tables;
  }

  public List<Site> sites() {
    return rows.stream().map(PlausibleSites::site).toList();
  }

  /** Writes the table; the zones are called {@code zone 1} and so on. */
  public Path write(Path file) {
    Set<String> names = new LinkedHashSet<>();
    rows.forEach(row -> names.addAll(row.keySet()));
    StringBuilder text = new StringBuilder();
    List<String> head = new ArrayList<>(List.of("zone"));
    head.addAll(names);
    text.append(CSVFormat.RFC4180.format(head.toArray())).append("\r\n");
    for (int i = 0; i < rows.size(); i++) {
      Map<String, String> row = new LinkedHashMap<>(rows.get(i));
      List<String> cells = new ArrayList<>(List.of("zone " + (i + 1)));
      names.forEach(name -> cells.add(row.getOrDefault(name, "")));
      text.append(CSVFormat.RFC4180.format(cells.toArray())).append("\r\n");
    }
    try {
      return Files.writeString(file, text);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
