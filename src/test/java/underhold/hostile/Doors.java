package underhold.hostile;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Function;
import underhold.advice.BuiltInPack;
import underhold.advice.LimitTrial;
import underhold.advice.PackFolder;
import underhold.advice.PackProblem;
import underhold.classroom.AnswerFile;
import underhold.classroom.CaseReader;
import underhold.classroom.ClassChecks;
import underhold.classroom.ClassFile;
import underhold.quantity.Measure;
import underhold.quantity.Quantity;
import underhold.review.audit.AuditNotes;
import underhold.review.file.FileReading;
import underhold.review.file.RecordFile;
import underhold.review.record.ReviewFile;
import underhold.review.record.ReviewRecord;
import underhold.review.saved.SavedAdvice;
import underhold.shell.HostileLinesDraft;
import underhold.site.FactDefinition;
import underhold.site.FactDictionary;
import underhold.site.FactReader;
import underhold.site.SiteProblem;
import underhold.site.SiteReader;
import underhold.site.SiteWriter;

/** Every reader of what somebody else wrote. */
final class Doors {
  /** The name that messages must begin with. */
  private static final String FILE = "input.json";

  private final Path folder;

  /**
   * The readers.
   *
   * @param folder where files can be written for readers that want them on the disk
   */
  Doors(Path folder) {
    this.folder = folder;
  }

  List<Door> all() {
    List<Door> doors = new ArrayList<>();
    doors.add(new Door("site", Seedlings.sites(), this::site));
    doors.add(
        record("advice", SavedAdvice.FILES, Seedlings.advice(), (file, text) -> advice(file)));
    doors.add(record("review", ReviewFile.FILES, Seedlings.reviews(), Doors::review));
    doors.add(record("class", ClassFile.FILES, Seedlings.classes(), (file, text) -> ofClass(file)));
    doors.add(record("answers", AnswerFile.FILES, Seedlings.answers(), (file, text) -> ""));
    doors.add(new Door("case", Seedlings.files("cases/classroom", ".case.json"), this::study));
    Seedlings.pack()
        .forEach(
            (name, seed) ->
                doors.add(new Door("pack " + name, List.of(seed), file -> pack(name, file))));
    for (String name : List.of("audit.json", "expectations.json")) {
      doors.add(new Door("notes " + name, Seedlings.files("rules", name), f -> notes(name, f)));
    }
    TableDoors tables = new TableDoors(folder);
    doors.add(new Door("table", TableDoors.seeds(2), true, tables::table));
    doors.add(new Door("screened table", TableDoors.seeds(1), true, tables::screened));
    for (String ending : List.of("csv", "json")) {
      doors.add(new Door("begun " + ending, tables.begun(ending), f -> tables.begun(ending, f)));
    }
    doors.add(new Door("draft", Seedlings.drafts(), file -> draft(onDisk(FILE, file))));
    doors.add(new Door("quantity", words(), file -> quantity(lenient(file))));
    doors.add(new Door("fact", words(), file -> fact(lenient(file))));
    doors.add(new Door("limit", words(), file -> limit(lenient(file))));
    return doors;
  }

  private static List<byte[]> words() {
    List<byte[]> words = new ArrayList<>();
    for (String typed :
        List.of(
            "1.2 m",
            "4 ft 6 in",
            "4' 6 1/2\"",
            "250 kN/m",
            "1 in 500",
            "-3/8 in",
            "1,200 kPa",
            "beside",
            "yes",
            "unknown",
            "needle-span=5 m",
            "12 kip/ft",
            "2e3 mm",
            "5 \u00b5m")) {
      words.add(Seedlings.bytes(typed));
    }
    return words;
  }

  private Optional<String> site(byte[] file) {
    return text(file)
        .map(text -> SiteReader.read(text, FILE))
        .orElseGet(() -> SiteReader.read(onDisk(FILE, file)))
        .fold(
            valid -> {
              String written = SiteWriter.toText(valid.site());
              boolean same =
                  SiteReader.read(written, FILE)
                      .fold(again -> again.site().equals(valid.site()), invalid -> false);
              return same ? Optional.empty() : Optional.of("is another site when written");
            },
            invalid -> problems(invalid.problems()));
  }

  private static Optional<String> draft(Path file) {
    return Messages.wrong(HostileLinesDraft.problems(file));
  }

  /** A file of records, and what is done with one that can be read. */
  private <T extends Record> Door record(
      String name, RecordFile<T> files, List<byte[]> seeds, BiFunction<T, String, String> use) {
    Function<byte[], Optional<String>> open =
        file -> {
          FileReading<T> reading =
              text(file)
                  .map(text -> files.read(text, FILE))
                  .orElseGet(() -> files.read(onDisk(FILE, file)));
          if (reading.content().isEmpty()) {
            return problems(reading.problems());
          }
          T content = reading.content().get();
          String written = files.text(content);
          if (!files.read(written, FILE).content().equals(reading.content())) {
            return Optional.of("is another record when written");
          }
          return Messages.wrong(use.apply(content, reading.text()));
        };
    return new Door(name, seeds, open);
  }

  private static String advice(SavedAdvice advice) {
    String site =
        advice.readSite(FILE).fold(valid -> "", invalid -> problems(invalid.problems()).orElse(""));
    return site + advice.fingerprint() + advice.intact() + String.join("; ", advice.problems());
  }

  private static String review(ReviewFile file, String text) {
    ReviewRecord record = ReviewRecord.of(file, text);
    int parts =
        record.queries().size()
            + record.overrides().size()
            + record.signatures().size()
            + record.datedBack().size();
    boolean headed = record.headForPaper().isEmpty(); // printed through the gate of all output
    return record.signed().words() + parts + record.faults().size() + headed;
  }

  private static String ofClass(ClassFile file) {
    return String.join("; ", ClassChecks.problems(file, Map.of()));
  }

  private Optional<String> study(byte[] file) {
    return problems(
        text(file)
            .map(text -> CaseReader.read(text, FILE))
            .orElseGet(() -> CaseReader.read(onDisk(FILE, file)))
            .problems());
  }

  private Optional<String> pack(String name, byte[] file) {
    Path pack = folder.resolve("pack");
    if (!Files.exists(pack)) {
      Seedlings.pack().forEach((other, sound) -> onDisk("pack/" + other, sound));
    }
    onDisk("pack/" + name, file);
    try {
      return PackFolder.read(pack, "pack")
          .fold(
              read -> Optional.empty(),
              problems -> Messages.wrong(problems.stream().map(PackProblem::text).toList()));
    } finally {
      onDisk("pack/" + name, Seedlings.pack().get(name));
    }
  }

  private static Optional<String> notes(String name, byte[] file) {
    AuditNotes notes = AuditNotes.read(asked -> asked.equals(name) ? text(file) : Optional.empty());
    return Messages.wrong(String.join("; ", notes.problems()));
  }

  private static Optional<String> quantity(String typed) {
    for (Measure measure : Measure.values()) {
      Optional<String> wrong =
          Quantity.parse(typed, measure)
              .fold(
                  parsed ->
                      Double.isFinite(parsed.quantity().si())
                          ? Optional.empty()
                          : Optional.of("is not finite"),
                  rejected -> Messages.wrong(List.of(rejected.message() + rejected.suggestion())));
      if (wrong.isPresent()) {
        return wrong;
      }
    }
    return Optional.empty();
  }

  private static Optional<String> fact(String typed) {
    for (FactDefinition fact : FactDictionary.standard().all()) {
      Optional<String> wrong =
          FactReader.read(fact, typed)
              .fold(
                  value -> Messages.wrong(value.text()),
                  () -> Optional.empty(),
                  rejected -> Messages.wrong(List.of(rejected.explanation())));
      if (wrong.isPresent()) {
        return wrong;
      }
    }
    return Optional.empty();
  }

  private static Optional<String> limit(String typed) {
    return LimitTrial.of(BuiltInPack.pack(), List.of(typed))
        .fold(
            pack -> Optional.empty(),
            problems -> Messages.wrong(problems.stream().map(PackProblem::text).toList()));
  }

  private static Optional<String> problems(List<SiteProblem> problems) {
    return Messages.wrong(problems, FILE);
  }

  private static Optional<String> text(byte[] bytes) {
    try {
      return Optional.of(
          StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString());
    } catch (CharacterCodingException e) {
      return Optional.empty();
    }
  }

  /** As a terminal would hand it on, halves of characters and all. */
  private static String lenient(byte[] bytes) {
    return text(bytes).orElseGet(() -> new String(bytes, StandardCharsets.UTF_16));
  }

  private Path onDisk(String name, byte[] bytes) {
    try {
      Path file = folder.resolve(name);
      Files.createDirectories(file.getParent());
      return Files.write(file, bytes);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
