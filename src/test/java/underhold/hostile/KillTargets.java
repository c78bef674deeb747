package underhold.hostile;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.function.IntFunction;
import org.jspecify.annotations.Nullable;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.json.JsonMapper;
import underhold.classroom.CaseReader;
import underhold.classroom.ClassFile;
import underhold.review.record.ReviewFile;
import underhold.review.record.ReviewRecord;
import underhold.review.saved.SavedAdvice;
import underhold.site.SiteReader;

/** Every command that writes a file, and how to tell a whole file from a broken one. */
final class KillTargets {
  private static final String SITE =
      """
      { "underhold": "site/1", "name": "Cooper's Yard", "units": "SI",
        "facts": { "structureKind": "building-wall", "excavationDepth": "4.2 m" },
        "zones": [ { "name": "wall", "facts": {
              "loadPattern": "continuous", "excavationPosition": "beside",
              "foundingDepth": "1.8 m", "gapToExcavation": "0.3 m", "lineLoad": "999 kN/m" } } ] }
      """;

  /** Stands before lines that are typed into the shell. */
  static final String TYPED = "<";

  /** By so many signs at its end a paper is known to be whole. */
  private static final int LAST = 80;

  private final Path folder;
  private final Function<List<String>, Long> run;
  private final List<Target> all = new ArrayList<>();
  private final Map<Path, String> ends = new HashMap<>();

  /**
   * A command that writes.
   *
   * @param name the command
   * @param file what it writes
   * @param old what stands there before; null where nothing does
   * @param command its words, for the run of that number
   * @param fault what is wrong with the file if it is neither old nor absent; empty where nothing
   *     is
   * @param usualMillis how long it runs when nobody kills it
   * @param goesOn whether the same command, given again, goes on where it was killed
   */
  record Target(
      String name,
      Path file,
      byte @Nullable [] old,
      IntFunction<List<String>> command,
      Function<Path, String> fault,
      long usualMillis,
      boolean goesOn) {
    List<String> words(int number) {
      return command.apply(number);
    }

    Path log() {
      return file.resolveSibling("log");
    }

    /** The old file whole, or the new one whole; where there was none, none. */
    Function<Integer, String> check() {
      return number -> {
        try {
          if (!Files.exists(file)) {
            return old == null ? "" : file + " is gone";
          }
          boolean same = old != null && Arrays.equals(old, Files.readAllBytes(file));
          return same ? "" : fault.apply(file);
        } catch (IOException e) {
          throw new UncheckedIOException(e);
        }
      };
    }
  }

  /** The commands, each run once to see that it works and how long it takes. */
  KillTargets(Path folder, Function<List<String>, Long> run) throws IOException {
    this.folder = folder;
    this.run = run;
    String one = put("one.site.json", SITE).toString();
    Path cases = Files.createDirectories(folder.resolve("cases"));
    Files.copy(
        Path.of("cases/classroom/first/larch-terrace.case.json"),
        cases.resolve("larch-terrace.case.json"),
        StandardCopyOption.REPLACE_EXISTING);
    put(
        "one.answers.json",
        "{ \"underhold\": \"answers/1\", \"student\": \"A\", \"of\": \"larch-terrace\","
            + " \"zones\": [ { \"zone\": \"end wall\", \"method\": \"pits\", \"because\": [],"
            + " \"check\": [], \"danger\": [] } ] }");
    for (String ending : List.of("html", "pdf", "md", "json")) {
      String out = folder.resolve("book." + ending).toString();
      add(
          "report " + ending,
          "book." + ending,
          this::paperFault,
          i -> List.of("report", one, "--out", out));
    }
    site(put("two.site.json", SITE).toString());
    consultation(one);
    review(one);
    lesson(cases);
    handouts(cases);
    screening();
  }

  private void site(String two) throws IOException {
    Function<Path, String> fault = KillTargets::siteFault;
    String fresh = folder.resolve("new.site.json").toString();
    add("site new", "new.site.json", fault, i -> List.of("site", "new", fresh, "--name", "X" + i));
    editing("set", i -> List.of("site", "set", "lineLoad=" + (100 + i) + " kN/m", "--site", two));
    editing("clear", i -> List.of("site", "clear", "lineLoad", "--site", two));
    editing("zone", i -> List.of("site", "zone", "z" + i, "--site", two));
    editing("unzone", i -> List.of("site", "unzone", "z-1", "--site", two));
    editing("save", i -> List.of(TYPED, "site open " + two, "site zone y" + i, "site save"));
  }

  private void editing(String command, IntFunction<List<String>> line) throws IOException {
    add("site " + command, "two.site.json", KillTargets::siteFault, line);
  }

  private void consultation(String one) throws IOException {
    String advice = folder.resolve("a.advice.json").toString();
    add(
        "advise --save",
        "a.advice.json",
        KillTargets::adviceFault,
        i -> List.of("advise", one, "--save", advice));
  }

  private void review(String one) throws IOException {
    String advice = folder.resolve("b.advice.json").toString();
    run.apply(List.of("advise", one, "--save", advice));
    String file = folder.resolve("b.review.json").toString();
    reviewing("start", i -> List.of("review", "start", advice, "--by", "Ines"));
    reviewing("comment", i -> by("review", "comment", file, "remark " + i));
    reviewing("query", i -> by("review", "query", file, "which drawing " + i));
    reviewing("answer", i -> by("review", "answer", file, "3", "the first " + i));
    reviewing(
        "override", i -> by("review", "override", file, "wall/ranking", "refer", "--why", "w"));
    reviewing("withdraw", i -> by("review", "withdraw", file, "2", "--why", "w" + i));
    reviewing(
        "sign", i -> by("review", "sign", file, "accepted-with-comments", "--role", "checker"));
    reviewing("reopen", i -> by("review", "reopen", file, "--why", "w" + i));
  }

  private static List<String> by(String... words) {
    List<String> line = new ArrayList<>(List.of(words));
    line.addAll(List.of("--by", "Ines"));
    return line;
  }

  private void reviewing(String command, IntFunction<List<String>> line) throws IOException {
    add("review " + command, "b.review.json", KillTargets::reviewFault, line);
  }

  private void lesson(Path cases) throws IOException {
    String lesson = folder.resolve("c.class.json").toString();
    String answers = folder.resolve("one.answers.json").toString();
    teaching(
        "start", i -> List.of("class", "start", lesson, cases.toString(), "--students", "A, B"));
    teaching("ask", i -> List.of("class", "ask", lesson, "footingWidth", "--by", "A"));
    teaching("answer", i -> List.of("class", "answer", lesson, answers));
    teaching("reveal", i -> List.of("class", "reveal", lesson));
    teaching("mark", i -> List.of("class", "mark", lesson));
  }

  private void teaching(String command, IntFunction<List<String>> line) throws IOException {
    add("class " + command, "c.class.json", KillTargets::classFault, line);
  }

  private void handouts(Path cases) throws IOException {
    String study = cases.resolve("larch-terrace.case.json").toString();
    for (String kind : List.of("sheet", "key")) {
      for (String ending : List.of("html", "pdf", "md")) {
        String file = kind + "." + ending;
        String out = folder.resolve(file).toString();
        add(
            "class " + kind + " " + ending,
            file,
            this::paperFault,
            i -> List.of("class", kind, study, "--out", out));
      }
    }
    String made = folder.resolve("made.case.json").toString();
    add(
        "class make",
        "made.case.json",
        file -> CaseReader.read(file).content().isPresent() ? "" : file + " cannot be read",
        i ->
            List.of(
                "class", "make", "--leader", "needles", "--teaches", "spanning", "--out", made));
  }

  /** The table in the end is the one that a run nobody disturbs makes. */
  private void screening() throws IOException {
    String zones = "cases/demo/riverside-estate.zones.csv";
    for (String ending : List.of("csv", "json")) {
      Path undisturbed = folder.resolve("undisturbed." + ending);
      run.apply(List.of("screen", zones, "--out", undisturbed.toString()));
      byte[] whole = Files.readAllBytes(undisturbed);
      String out = folder.resolve("table." + ending).toString();
      add(
          "screen " + ending,
          "table." + ending,
          file -> Arrays.equals(whole, read(file)) ? "" : file + " is another table",
          i -> List.of("screen", zones, "--out", out));
    }
  }

  private static byte[] read(Path file) {
    try {
      return Files.readAllBytes(file);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private Path put(String name, String text) throws IOException {
    return Files.writeString(folder.resolve(name), text);
  }

  private void add(
      String name, String file, Function<Path, String> fault, IntFunction<List<String>> command)
      throws IOException {
    Path path = folder.resolve(file);
    byte[] old = Files.exists(path) ? Files.readAllBytes(path) : null;
    long millis = run.apply(command.apply(-1));
    String wrong = fault.apply(path);
    if (!wrong.isEmpty()) {
      throw new IllegalStateException(name + " makes no sound file: " + wrong);
    }
    boolean over = name.startsWith("report") || path.toString().endsWith(".md");
    byte[] before = over ? Files.readAllBytes(path) : old; // a paper may be made anew
    all.add(new Target(name, path, before, command, fault, millis, name.startsWith("screen")));
  }

  List<Target> all() {
    return all;
  }

  /** Puts the file back as it was before the command. */
  void layOut(Target target, int number) throws IOException {
    if (target.old() == null) {
      Files.deleteIfExists(target.file());
    } else {
      Files.write(target.file(), target.old());
    }
  }

  static String siteFault(Path file) {
    return SiteReader.read(file)
        .fold(
            valid -> "",
            invalid ->
                invalid.problems().stream()
                    .filter(one -> !one.code().name().equals("MISSING_REQUIRED"))
                    .map(one -> one.text())
                    .findFirst()
                    .orElse(""));
  }

  private static String adviceFault(Path file) {
    return SavedAdvice.FILES
        .read(file)
        .content()
        .map(advice -> advice.intact() ? String.join("; ", advice.problems()) : "edited")
        .orElse(file + " cannot be read");
  }

  private static String reviewFault(Path file) {
    var reading = ReviewFile.FILES.read(file);
    return reading
        .content()
        .map(found -> ReviewRecord.of(found, reading.text()).intact() ? "" : "not intact")
        .orElse(file + " cannot be read");
  }

  private static String classFault(Path file) {
    return ClassFile.FILES.read(file).content().isPresent() ? "" : file + " cannot be read";
  }

  /** A paper ends as the one made first. */
  private String paperFault(Path file) {
    String text = new String(read(file), StandardCharsets.ISO_8859_1).strip();
    String name = file.toString();
    try {
      if (name.endsWith(".json")) {
        JsonMapper.shared().readTree(text);
        return "";
      }
    } catch (JacksonException e) {
      return file + ": " + e;
    }
    String end = text.substring(Math.max(0, text.length() - LAST));
    boolean whole =
        name.endsWith(".pdf")
            ? text.endsWith("%%EOF")
            : end.equals(ends.computeIfAbsent(file, key -> end)) && end.length() == LAST;
    return whole ? "" : file + " ends too early";
  }
}
