package underhold.shell;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import underhold.quantity.UnitSystem;
import underhold.report.Json;
import underhold.report.document.Document;
import underhold.report.dossier.Audience;
import underhold.report.dossier.Commission;
import underhold.report.dossier.Dossier;
import underhold.report.dossier.Drawings;
import underhold.report.dossier.Gathering;
import underhold.report.dossier.Material;
import underhold.report.dossier.WhichSheets;
import underhold.site.Site;
import underhold.site.WholeFile;
import underhold.site.Zone;

/** {@code report}: the calculation package of a site as a file. */
final class ReportCommand {
  /** What is larger, in bytes, was no report. */
  private static final int LARGEST_REPORT = 64 * 1024 * 1024;

  private final Session session;
  private final Clock clock;

  /** The command, with the clock whose date stands on the cover. */
  ReportCommand(Session session, Clock clock) {
    this.session = session;
    this.clock = clock;
  }

  static ShellCommand of(Session session) {
    return new ShellCommand(
        "report",
        Commands.ADVICE,
        "the calculation package as .html, .pdf, .md or .json, by the ending of --out",
        List.of(Parameter.file()),
        List.of(
            Options.OUT_OPTION,
            Options.AUDIENCE_OPTION,
            Options.SHEETS_OPTION,
            Options.REVIEW_OPTION,
            Options.ZONE_OPTION,
            Options.UNITS_OPTION,
            Options.SET_OF_OPTION),
        call -> new ReportCommand(session, Clock.systemDefaultZone()).run(call));
  }

  int run(Call call) {
    Audience audience = audience(call);
    ReportSettings settings = ReportSettings.read(call.all(Options.SET));
    Optional<Path> file = call.option(Options.OUT).map(SiteFiles::path);
    WhichSheets sheets = sheets(call);
    Optional<ReviewFiles.Opened> review = call.option(Options.REVIEW).map(ReviewFiles::read);
    if (review.isPresent() && audience != Audience.REVIEWER) {
      throw Refusal.usage(
          "--review goes with --for reviewer: the record stands in no other package.");
    }
    ReportFormat format = file.map(ReportCommand::format).orElse(usual());
    file.ifPresent(target -> refuseForeign(target, format));
    Site site = site(call, settings);
    Material material = new Gathering(session.consultant()).of(site, settings.plan(), audience);
    Commission commission =
        new Commission(
            audience,
            LocalDate.now(clock),
            settings.words(),
            only(call, site),
            sheets,
            review.map(
                opened ->
                    new ReviewMatch(session.consultant(), opened)
                        .reviewing(session.site(call.word(0)).site(), site, settings)));
    Document document = Dossier.of(material, commission, new Drawings(session.pack()));
    byte[] bytes = bytes(format, material, document);
    if (file.isPresent()) {
      write(file.get(), format, bytes, audience, document);
    } else {
      session.output().print(new String(bytes, StandardCharsets.UTF_8));
    }
    return Exit.DONE;
  }

  private ReportFormat usual() {
    return session.output().json() ? ReportFormat.JSON : ReportFormat.MARKDOWN;
  }

  private static Audience audience(Call call) {
    String word = call.option(Options.FOR).orElse(Audience.REVIEWER.word());
    return Audience.find(word.strip())
        .orElseThrow(
            () ->
                Refusal.usage(
                    "--for is \""
                        + word
                        + "\"; it must be one of: "
                        + String.join(", ", Audience.words())
                        + "."
                        + Nearest.question(word, Audience.words())));
  }

  private static WhichSheets sheets(Call call) {
    String word = call.option(Options.SHEETS).orElse(WhichSheets.CHOSEN.word());
    return WhichSheets.find(word.strip())
        .orElseThrow(
            () ->
                Refusal.usage(
                    "--sheets is \""
                        + word
                        + "\"; it must be one of: "
                        + String.join(", ", WhichSheets.words())
                        + "."
                        + Nearest.question(word, WhichSheets.words())));
  }

  private static ReportFormat format(Path file) {
    String name = String.valueOf(file.getFileName());
    if (name.toLowerCase(Locale.ROOT).endsWith(SiteFiles.ENDING)) {
      throw Refusal.usage(
          "--out is "
              + file
              + ", the name of a site file; a report ends in "
              + ReportFormat.endings()
              + ".");
    }
    return ReportFormat.of(name)
        .orElseThrow(
            () ->
                Refusal.usage(
                    "--out is "
                        + file
                        + "; its ending says the format and must be "
                        + ReportFormat.endings()
                        + "."));
  }

  /** A file that is there already is only replaced where it is an earlier report. */
  static void refuseForeign(Path file, ReportFormat format) {
    Path folder = file.toAbsolutePath().getParent();
    if (Files.isDirectory(file)) {
      throw Refusal.site("--out is " + file + ", a folder; name a file in it.");
    }
    if (folder == null || !Files.isDirectory(folder)) {
      throw Refusal.site(
          "--out is " + file + ", but there is no folder " + folder + "; make it first.");
    }
    if (!Files.isWritable(folder)) {
      throw Refusal.site("--out is " + file + ", but nothing may be written in " + folder + ".");
    }
    if (!Files.exists(file)) {
      return;
    }
    if (!Files.isRegularFile(file)) {
      throw Refusal.site("--out is " + file + ", which is a device or pipe; name a file.");
    }
    try (InputStream in = Files.newInputStream(file)) {
      byte[] bytes = in.readNBytes(LARGEST_REPORT);
      if (bytes.length > 0 && !format.isReport(bytes)) {
        throw Refusal.site(
            file
                + " is there already and is no report of Underhold, so nothing was written. Choose"
                + " another name, or move it away.");
      }
    } catch (IOException e) {
      throw Refusal.site(file + " is there already and cannot be read, so nothing was written.");
    }
  }

  /** The site as the report reads it: one zone or all, in the units and with the settings given. */
  private Site site(Call call, ReportSettings settings) {
    Site site = session.site(call.word(0)).site();
    List<Zone> zones = AdviceCommands.zones(site, call.option(Options.ZONE));
    boolean whole = zones.size() == site.zones().size();
    return new Site(
        site.name(),
        units(call).orElse(site.units()),
        site.facts(),
        site.ground(),
        zones,
        whole ? site.relations() : List.of(),
        settings.over(site),
        site.note());
  }

  private static Optional<String> only(Call call, Site site) {
    return call.option(Options.ZONE).map(name -> site.zones().get(0).name());
  }

  private static Optional<UnitSystem> units(Call call) {
    return call.option(Options.UNITS)
        .map(
            asked ->
                Arrays.stream(UnitSystem.values())
                    .filter(system -> system.name().equalsIgnoreCase(asked))
                    .findFirst()
                    .orElseThrow(
                        () ->
                            Refusal.usage(
                                "--units is \""
                                    + asked
                                    + "\"; it must be SI or US, such as --units SI.")));
  }

  private static byte[] bytes(ReportFormat format, Material material, Document document) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try {
      format.writer(material).write(document, bytes);
    } catch (IOException e) {
      throw new UncheckedIOException("a report could not be made in memory", e);
    }
    return bytes.toByteArray();
  }

  private void write(
      Path file, ReportFormat format, byte[] bytes, Audience audience, Document document) {
    WholeFile.replace(file, bytes)
        .fold(
            written -> {
              said(file, format, bytes.length, audience, document);
              return true;
            },
            refused -> {
              throw Refusal.site(refused.message() + ".");
            });
  }

  private void said(
      Path file, ReportFormat format, int size, Audience audience, Document document) {
    if (session.output().json()) {
      session
          .output()
          .print(
              Json.text(
                  Json.object(
                      "written", file.toString(),
                      "format", format.ending(),
                      "for", audience.word(),
                      "title", document.title(),
                      "bytes", size)));
      return;
    }
    session
        .output()
        .say(file + " is written: " + document.title() + ". " + document.status() + ".");
  }
}
