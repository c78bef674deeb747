package underhold.report.dossier;

import java.util.ArrayList;
import java.util.List;
import underhold.report.PackLines;
import underhold.report.Program;
import underhold.report.Words;
import underhold.report.document.Document;
import underhold.report.document.Prose;

/** What stands on the cover. */
final class Cover {
  /** What every package may be used for. */
  static final String STATUS = "For review: not for construction";

  private Cover() {}

  static List<Document.Entry> of(Material material, Commission commission) {
    List<Document.Entry> lines = new ArrayList<>();
    lines.add(entry("Site", Prose.empty().strong(material.site().name())));
    lines.add(entry("Zones", Prose.of(zones(material))));
    commission
        .only()
        .ifPresent(
            zone ->
                lines.add(
                    entry(
                        "Only a part",
                        Prose.of(
                            "One zone taken alone, "
                                + zone
                                + ". What it does to the other zones of the site is not in here: the"
                                + " package of the whole site governs."))));
    lines.add(
        entry(
            "For",
            Prose.of(
                "the " + commission.audience().word() + ". " + commission.audience().holds())));
    lines.add(entry("Date", Prose.of(commission.date().toString())));
    lines.add(entry("Status", Prose.empty().strong(STATUS)));
    lines.add(entry("Program", Prose.of("Underhold " + Program.version())));
    lines.add(
        entry(
            "Rules",
            Prose.of(material.pack().name() + " " + material.pack().version() + ", fingerprint ")
                .typed(material.pack().fingerprint())));
    List<String> other = PackLines.of(material.pack());
    if (!other.isEmpty()) {
      lines.add(entry("Not the rules built in", Prose.empty().strong(String.join(" ", other))));
    }
    lines.add(
        entry("Units", Prose.of(material.units().name() + "; what was typed stands as typed")));
    commission
        .review()
        .ifPresent(
            reviewing ->
                lines.add(
                    entry(
                        "Review",
                        Prose.of(
                            "the record is "
                                + reviewing.record().signed().words()
                                + (reviewing.record().intact() ? "" : ", AND NOT WHOLE")
                                + "; head "
                                + reviewing.record().headForPaper()
                                + (reviewing.doubt().isEmpty()
                                    ? ""
                                    : ". It may not be of this package: " + reviewing.doubt())))));
    if (!commission.settings().isEmpty()) {
      Prose given = Prose.of("beside those of the site file: ");
      lines.add(
          entry(
              "Settings given",
              given.then(
                  Cells.joined(commission.settings().stream().map(Cells::typed).toList(), ", "))));
    }
    lines.add(entry("Caution", Prose.of(Program.CAUTION)));
    return lines;
  }

  private static String zones(Material material) {
    List<String> names =
        material.zones().stream().map(zone -> zone.number() + " " + zone.name()).toList();
    return Words.list(names);
  }

  private static Document.Entry entry(String label, Prose words) {
    return new Document.Entry(label, words);
  }
}
