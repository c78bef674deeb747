package underhold.hostile;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.function.IntFunction;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.json.JsonMapper;
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

  private static final Pattern OFFER = Pattern.compile("(?m)^ +1  (\\S+)");

  private final Path folder;
  private final Function<List<String>, Long> run;
  private final List<Target> all = new ArrayList<>();

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
   */
  record Target(
      String name,
      Path file,
      byte @Nullable [] old,
      IntFunction<List<String>> command,
      Function<Path, String> fault,
      long usualMillis) {
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
          boolean same = old != null && java.util.Arrays.equals(old, Files.readAllBytes(file));
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
        new String(Seedlings.answers().get(0), StandardCharsets.UTF_8)
            .replace("\"Ada\"", "\"A\"")
            .replace("\"gable\"", "\"" + zone(cases) + "\"")
            .replaceAll("\"because\": \\[[^]]*]", "\"because\": []")
            .replaceAll("\"check\": \\[[^]]*]", "\"check\": []")
            .replaceAll(", \"questions\": .*]", ""));
    add(
        "site set",
        "one.site.json",
        KillTargets::siteFault,
        i -> List.of("site", "set", "lineLoad=" + (100 + i) + " kN/m", "--site", one));
    for (String ending : List.of("html", "pdf", "md", "json")) {
      String out = folder.resolve("book." + ending).toString();
      add(
          "report " + ending,
          "book." + ending,
          KillTargets::reportFault,
          i -> List.of("report", one, "--out", out));
    }
    String advice = folder.resolve("a.advice.json").toString();
    add(
        "advise --save",
        "a.advice.json",
        KillTargets::adviceFault,
        i -> List.of("advise", one, "--save", advice));
    String review = folder.resolve("b.review.json").toString();
    String other = folder.resolve("b.advice.json").toString();
    run.apply(List.of("advise", one, "--save", other));
    add(
        "review start",
        "b.review.json",
        KillTargets::reviewFault,
        i -> List.of("review", "start", other, "--by", "Ines"));
    add(
        "review comment",
        "b.review.json",
        KillTargets::reviewFault,
        i -> List.of("review", "comment", review, "remark " + i, "--by", "Ines"));
    String lesson = folder.resolve("c.class.json").toString();
    add(
        "class start",
        "c.class.json",
        KillTargets::classFault,
        i -> List.of("class", "start", lesson, cases.toString(), "--students", "A, B"));
    add(
        "class reveal",
        "c.class.json",
        KillTargets::classFault,
        i -> List.of("class", "reveal", lesson));
    add(
        "class mark",
        "c.class.json",
        KillTargets::classFault,
        i -> List.of("class", "mark", lesson));
  }

  private static String zone(Path cases) throws IOException {
    String text = Files.readString(cases.resolve("larch-terrace.case.json"));
    return JsonMapper.shared()
        .readTree(text)
        .path("site")
        .path("zones")
        .path(0)
        .path("name")
        .asString();
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
    byte[] before = name.startsWith("report") ? Files.readAllBytes(path) : old;
    all.add(new Target(name, path, before, command, fault, millis));
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

  private static String reportFault(Path file) {
    try {
      String text = Files.readString(file, StandardCharsets.ISO_8859_1).strip();
      String name = file.toString();
      if (name.endsWith(".json")) {
        JsonMapper.shared().readTree(file.toFile());
        return "";
      }
      boolean ended =
          name.endsWith(".html")
              ? text.endsWith("</html>")
              : name.endsWith(".pdf") ? text.endsWith("%%EOF") : text.length() > 10_000;
      return ended ? "" : file + " ends too early";
    } catch (IOException | JacksonException e) {
      return file + ": " + e;
    }
  }

  /** An answer to what the interview asks: names where it wants names, else what it offers. */
  static String answerTo(String question, String name) {
    if (question.contains("called?")
        || question.contains("ame it")
        || question.contains("its name")) {
      return "Yard " + name;
    }
    Matcher offer = OFFER.matcher(question);
    return offer.find() ? offer.group(1) : "unknown";
  }
}
