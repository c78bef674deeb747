package underhold.report.dossier;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Which calculation sheets a package sets whole; it gives a short account of the others. */
public enum WhichSheets {
  /** Those of the method of each zone. */
  CHOSEN,
  /** Every sheet of every option still in play. */
  ALL;

  /** The word of the command line. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** That of this word. */
  public static Optional<WhichSheets> find(String word) {
    return Arrays.stream(values()).filter(one -> one.word().equalsIgnoreCase(word)).findFirst();
  }

  /** All words. */
  public static List<String> words() {
    return Arrays.stream(values()).map(WhichSheets::word).toList();
  }

  /**
   * The sheets set whole. Where a zone has no method with a sheet, it is the first sheet of its
   * ranking that has numbers: what the engineer will most likely weigh.
   */
  List<ZoneSheet> of(Material material) {
    return this == ALL
        ? material.sheets()
        : material.zones().stream().flatMap(zone -> chosen(material, zone).stream()).toList();
  }

  private static Optional<ZoneSheet> chosen(Material material, ZonePart zone) {
    return material
        .chosen(zone)
        .or(
            () ->
                material.sheets(zone).stream()
                    .filter(sheet -> sheet.sheet().complete())
                    .findFirst());
  }
}
