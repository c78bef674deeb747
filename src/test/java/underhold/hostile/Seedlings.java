package underhold.hostile;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import tools.jackson.databind.json.JsonMapper;
import underhold.classroom.Answer;
import underhold.classroom.AnswerFile;
import underhold.classroom.Asked;
import underhold.classroom.CaseRef;
import underhold.classroom.ClassFile;
import underhold.classroom.Given;
import underhold.classroom.Mark;
import underhold.classroom.MarkLine;
import underhold.review.record.Draft;
import underhold.review.record.Entering;
import underhold.review.record.EntryKind;
import underhold.review.record.ReviewDesk;
import underhold.review.record.ReviewFile;
import underhold.review.record.ReviewRecord;
import underhold.review.saved.SavedAdvice;
import underhold.review.saved.SavedSamples;

/** Sound files of every kind that the program reads; the sites and names are our own. */
final class Seedlings {
  private static final int FEW = 2;

  private Seedlings() {}

  static byte[] bytes(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }

  /** The files below a folder whose names end so. */
  static List<byte[]> files(String folder, String ending) {
    try (Stream<Path> files = Files.walk(Path.of(folder))) {
      List<byte[]> all = new ArrayList<>();
      for (Path file : files.filter(one -> one.toString().endsWith(ending)).sorted().toList()) {
        all.add(Files.readAllBytes(file));
      }
      return all;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The sites of the demos, and one whose relations, layers and sizing are short. */
  static List<byte[]> sites() {
    List<byte[]> all = new ArrayList<>(files("cases/demo", ".site.json"));
    all.add(
        bytes(
            """
            { "underhold": "site/1", "name": "Cooper's Yard", "units": "US", "note": "one",
              "facts": { "structureKind": "building-wall", "excavationDepth": "14 ft" },
              "ground": [ { "to": "4 ft", "soil": "fill" }, { "to": "20 ft", "soil": "stiff-clay" } ],
              "zones": [ { "name": "a", "facts": { "loadPattern": "continuous",
                "excavationPosition": "beside", "lineLoad": { "value": "12 kip/ft", "note": "x" } } },
                { "name": "b", "facts": { "loadPattern": "concentrated",
                "excavationPosition": "partly-under", "columnLoad": "unknown" } } ],
              "relations": [ { "zones": [ "a", "b" ], "facts": { "distance": "3 ft" } } ] }
            """));
    return all;
  }

  /** Sites that lack what every zone needs, as an interview leaves them when it is stopped. */
  static List<byte[]> drafts() {
    return List.of(
        bytes(
            """
            { "underhold": "site/1", "name": "Cooper's Yard", "units": "SI",
              "facts": { "structureKind": "building-wall", "excavationDepth": "4.2 m" },
              "zones": [ { "name": "a", "facts": { "lineLoad": "120 kN/m" } }, { "name": "b" } ] }
            """),
        bytes(
            """
            { "underhold": "site/1", "name": "Cooper's Yard",
              "zones": [ { "name": "a", "facts": { "loadPattern": "continuous" } } ] }
            """));
  }

  /** A saved consultation, whole, and one of whose lists little is left. */
  static List<byte[]> advice() {
    String whole = SavedAdvice.FILES.text(SavedSamples.saved("ferry-street-column"));
    return List.of(bytes(pruned(whole)), bytes(pruned(whole)), bytes(whole));
  }

  static List<byte[]> reviews() {
    ReviewDesk desk = new ReviewDesk(SavedSamples.saved("ferry-street-column"), Clock.systemUTC());
    ReviewFile file = made(desk.start("a.advice.json", "Ines Okafor", Optional.empty()));
    file = made(desk.enter(record(file), draft(EntryKind.COMMENT).saying("Looked at.")));
    file = made(desk.enter(record(file), draft(EntryKind.QUERY).saying("Which drawing?")));
    file = made(desk.enter(record(file), draft(EntryKind.ANSWER).to(3).saying("The first.")));
    return List.of(bytes(ReviewFile.FILES.text(file)));
  }

  private static Draft draft(EntryKind kind) {
    return Draft.of(kind, "Ines Okafor").on("whole");
  }

  private static ReviewRecord record(ReviewFile file) {
    return ReviewRecord.of(file, ReviewFile.FILES.text(file));
  }

  private static ReviewFile made(Entering entering) {
    return ((Entering.Done) entering).file();
  }

  static List<byte[]> classes() {
    ClassFile file =
        new ClassFile(
            ClassFile.FORM,
            "autumn",
            List.of(new CaseRef("larch-terrace", "larch-terrace.case.json", 1)),
            List.of("Ada", "Bo"),
            List.of(new Asked("Ada", "larch-terrace", "gable", "footingWidth", 0, 1.5)),
            List.of(
                new Answer(
                    "Ada",
                    "larch-terrace",
                    0,
                    0,
                    "gable",
                    "pits",
                    List.of("loadPattern"),
                    List.of(),
                    List.of("plumb-piles"),
                    List.of("cave-in"))),
            List.of(),
            List.of(new Given("Bo", "larch-terrace", "one", "2 m")),
            List.of(
                new Mark(
                    "Ada",
                    "larch-terrace",
                    0,
                    "gable",
                    List.of(new MarkLine("method", 1, 2, "why")),
                    List.of("well done"))));
    return List.of(bytes(ClassFile.FILES.text(file)));
  }

  static List<byte[]> answers() {
    AnswerFile file =
        new AnswerFile(
            "answers/1",
            "Ada",
            "larch-terrace",
            Optional.of(
                List.of(
                    new AnswerFile.InZone(
                        "gable",
                        "pits",
                        Optional.of(List.of("loadPattern")),
                        Optional.of(List.of("footingWidth")),
                        Optional.empty(),
                        Optional.empty()))),
            Optional.empty(),
            Optional.of(List.of(new AnswerFile.ToQuestion("one", "2 m"))));
    return List.of(bytes(AnswerFile.FILES.text(file)));
  }

  /** The files of a small rule pack, by their names. */
  static Map<String, byte[]> pack() {
    Map<String, byte[]> files = new LinkedHashMap<>();
    files.put(
        "pack.json",
        bytes(
            "{ \"name\": \"House\", \"version\": \"1\", \"extends\": \"built-in\","
                + " \"files\": [\"own.drl\"], \"remove\": [\"PIT-26\"] }"));
    files.put(
        "limits.json",
        bytes(
            "{\"limits\": [{\"name\": \"needle-span\", \"value\": \"5 m\", \"basis\":"
                + " \"judgement\", \"source\": \"\"}]}"));
    files.put(
        "own.drl",
        bytes(
            """
            package rules.house

            import underhold.advice.ZoneFacts
            global underhold.advice.FindingSink findings

            rule "Pits suit a wall that carries along a line."
              @id("HSE-01")
              @basis("judgement")
              @source("")
              @because("The load is {loadPattern}.")
              @cause("load pattern")
              agenda-group "screen"
            when
              ZoneFacts( loadPattern == "continuous", pitDepth <= limit("pit-depth-easy") )
            then
              findings.speakFor("pits", "minor", drools.getRule());
            end
            """));
    for (String table : List.of("sources.json", "strengths.json", "criteria.json")) {
      files.put(table, files("rules", table).get(0));
    }
    return files;
  }

  /** The text with at most two things left in every list. */
  private static String pruned(String json) {
    JsonMapper mapper = JsonMapper.shared();
    return mapper.writeValueAsString(less(mapper.readValue(json, Object.class)));
  }

  private static Object less(Object tree) {
    if (tree instanceof Map<?, ?> map) {
      Map<String, Object> all = new LinkedHashMap<>();
      map.forEach((name, value) -> all.put(String.valueOf(name), less(value)));
      return all;
    }
    return tree instanceof List<?> list
        ? list.stream().limit(FEW).map(Seedlings::less).toList()
        : tree;
  }
}
