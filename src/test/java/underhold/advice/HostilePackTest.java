package underhold.advice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Packs that try to run something, to read what is not theirs, or to wear the program out. Each is
 * refused with file and line, and none leaves the file or the property it would leave if anything
 * of it ran.
 */
@DisplayName("Hostile rule packs are refused, and nothing of them runs")
class HostilePackTest {
  private static final String PROPERTY = "underhold.hostile";

  private static final String MANIFEST =
      "{ \"name\": \"House\", \"version\": \"1\", \"extends\": \"built-in\","
          + " \"files\": [\"own.drl\"] }";

  /** A sound rule, whose parts the attempts take the place of. */
  private static final String SOUND =
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
      """;

  @TempDir Path folder;
  private Path trace;

  @BeforeEach
  void noTraceYet() {
    trace = folder.resolve("trace-of-code");
    System.clearProperty(PROPERTY);
  }

  @AfterEach
  void nothingRan() {
    assertThat(trace).doesNotExist();
    assertThat(System.getProperty(PROPERTY)).isNull();
  }

  private Path pack(Map<String, String> files) {
    try {
      Path pack = folder.resolve("pack");
      for (Map.Entry<String, String> file : files.entrySet()) {
        Path path = pack.resolve(file.getKey());
        Files.createDirectories(path.getParent());
        Files.writeString(path, file.getValue());
      }
      return pack;
    } catch (IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }

  private static List<PackProblem> problems(Path pack) {
    return assertTimeoutPreemptively(
        Duration.ofSeconds(20),
        () -> PackFolder.read(pack, "pack").fold(read -> List.of(), problems -> problems));
  }

  private List<PackProblem> problemsOf(String rules) {
    return problems(pack(Map.of("pack.json", MANIFEST, "own.drl", rules)));
  }

  @Test
  void the_sound_rule_is_taken() {
    assertThat(problemsOf(SOUND)).isEmpty();
    assertThat(problemsOf("\uFEFF" + SOUND.replace("\n", "\r\n"))).isEmpty();
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '¦',
      textBlock =
          """
          import of Runtime            ¦ global underhold           ¦ import java.lang.Runtime global underhold            ¦ 4  ¦ allows global
          import static                ¦ import underhold           ¦ import static java.lang.System.exit import underhold ¦ 3  ¦ allows underhold.advice
          star import                  ¦ import underhold.advice.ZoneFacts ¦ import java.io.*                              ¦ 3  ¦ allows underhold.advice
          another global               ¦ rule "Pits                 ¦ global java.io.File f rule "Pits                     ¦ 6  ¦ allows rule
          a qualified name             ¦ loadPattern ==             ¦ java.lang.System.getProperty ==                      ¦ 6  ¦ no fact java.lang.System
          a qualified name as limit    ¦ limit("pit-depth-easy")    ¦ java.lang.Math.max(1)                                ¦ 14 ¦ allows limit
          exit in the action           ¦ findings.speakFor(         ¦ System.exit(3); findings.speakFor(                   ¦ 16 ¦ one action on findings
          Runtime in the action        ¦ findings.speakFor(         ¦ Runtime.getRuntime().exec("touch TRACE"); findings.speakFor( ¦ 16 ¦ one action on findings
          file access                  ¦ findings.speakFor(         ¦ new java.io.File("TRACE").createNewFile(); findings.speakFor( ¦ 16 ¦ one action on findings
          a property set               ¦ findings.speakFor(         ¦ System.setProperty("underhold.hostile", "yes"); findings.speakFor( ¦ 16 ¦ one action on findings
          an argument that runs        ¦ "minor", drools            ¦ System.setProperty("underhold.hostile", "yes"), drools ¦ 16 ¦ allows drools.getRule
          a loop                       ¦ findings.speakFor(         ¦ for (;;) { findings.speakFor(                        ¦ 16 ¦ one action on findings
          two statements               ¦ drools.getRule());         ¦ drools.getRule()); findings.refer("major", drools.getRule()); ¦ 16 ¦ allows end
          a method in a condition      ¦ loadPattern ==             ¦ loadPattern.toString() ==                            ¦ 14 ¦ allows ==
          a call through this          ¦ loadPattern ==             ¦ this.class.forName ==                                ¦ 6  ¦ no fact this
          concatenation                ¦ "continuous"               ¦ "contin" + "uous"                                    ¦ 14 ¦ '+'
          a unicode escape             ¦ findings.speakFor(         ¦ \\u0053ystem.exit(3); findings.speakFor(             ¦ 16 ¦ '\\'
          an escape in a text          ¦ "continuous"               ¦ "\\u0022 || eval(true) || \\u0022"                   ¦ 14 ¦ no backslash
          nested quotes                ¦ "continuous"               ¦ "a\\"b"                                              ¦ 14 ¦ no backslash
          a block comment              ¦ findings.speakFor(         ¦ /* hidden */ findings.speakFor(                      ¦ 16 ¦ '/'
          a hash comment               ¦ findings.speakFor(         ¦ # hidden findings.speakFor(                          ¦ 16 ¦ '#'
          eval                         ¦ ZoneFacts(                 ¦ eval( true ) ZoneFacts(                              ¦ 14 ¦ allows ZoneFacts
          from                         ¦ "continuous",              ¦ "continuous" from java.lang.System,                  ¦ 14 ¦ ')'
          accumulate                   ¦ ZoneFacts(                 ¦ accumulate( ZoneFacts(                               ¦ 14 ¦ allows ZoneFacts
          a second pattern             ¦ limit("pit-depth-easy") )  ¦ limit("pit-depth-easy") ) ZoneFacts( loadPattern == "area" ) ¦ 14 ¦ allows then
          a function                   ¦ rule "Pits                 ¦ function void f() { System.exit(1); } rule "Pits     ¦ 6  ¦ allows rule
          a query                      ¦ rule "Pits                 ¦ query q end rule "Pits                               ¦ 6  ¦ allows rule
          a declaration                ¦ rule "Pits                 ¦ declare T x : String end rule "Pits                  ¦ 6  ¦ allows rule
          salience                     ¦ agenda-group               ¦ salience 100 agenda-group                            ¦ 12 ¦ allows agenda-group
          the dialect mvel             ¦ agenda-group               ¦ dialect "mvel" agenda-group                          ¦ 12 ¦ allows agenda-group
          the dialect java             ¦ agenda-group               ¦ dialect "java" agenda-group                          ¦ 12 ¦ allows agenda-group
          a timer                      ¦ agenda-group               ¦ timer(int: 1s) agenda-group                          ¦ 12 ¦ allows agenda-group
          no-loop                      ¦ agenda-group               ¦ no-loop true agenda-group                            ¦ 12 ¦ allows agenda-group
          watch                        ¦ @cause(                    ¦ @watch("*") @cause(                                  ¦ 6  ¦ no header @watch
          a class loader annotation    ¦ @cause(                    ¦ @java.lang.ClassLoader("x") @cause(                  ¦ 6  ¦ no header @java
          an annotation that calls     ¦ @cause("load pattern")     ¦ @cause(System.exit(1))                               ¦ 11 ¦ a text in quotes
          a template                   ¦ {loadPattern}.             ¦ @{System.exit(1)}.                                   ¦ 6  ¦ neither fact nor limit
          an empty template            ¦ {loadPattern}.             ¦ ${}.                                                 ¦ 6  ¦ neither fact nor limit
          an unknown fact              ¦ pitDepth <=                ¦ pitDeph <=                                           ¦ 6  ¦ did you mean "pitDepth"
          an unknown option            ¦ "pits", "minor"            ¦ "pits, jacks", "minor"                               ¦ 6  ¦ no option jacks
          an option twice              ¦ "pits", "minor"            ¦ "pits, pits", "minor"                                ¦ 6  ¦ twice
          an unknown cause             ¦ "load pattern"             ¦ "sorcery"                                            ¦ 6  ¦ lists the cause
          a claim without a source     ¦ "judgement"                ¦ "standard"                                           ¦ 6  ¦ cites a source that was read
          a claim kept for trials      ¦ "judgement"                ¦ "on trial"                                           ¦ 6  ¦ @basis is one of
          an id that is a path         ¦ "HSE-01"                   ¦ "../../etc"                                          ¦ 6  ¦ an id is letters
          a fact of the sheets         ¦ loadPattern == "continuous" ¦ pitSpan == "fails"                                  ¦ 6  ¦ not yet known in the phase screen
          """)
  void refuses(String what, String find, String put, int line, String reason) {
    assertThat(SOUND).contains(find);
    String broken = SOUND.replace(find, put.replace("TRACE", trace.toString()));

    List<PackProblem> problems = problemsOf(broken);

    assertThat(problems)
        .anySatisfy(
            problem -> {
              assertThat(problem.file()).isEqualTo("own.drl");
              assertThat(problem.line()).isEqualTo(line);
              assertThat(problem.message()).contains(reason);
            });
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '¦',
      textBlock =
          """
          a line that only others see end ¦ // sound\\u000Dfindings.destroy() ¦ a comment holds a control character
          writing turned about            ¦ // \\u202Eexit.metsyS         ¦ a comment holds a control character
          a line separator                ¦ // a\\u2028b                  ¦ a comment holds a control character
          a bell                          ¦ // \\u0007                    ¦ a comment holds a control character
          a terminal's escape             ¦ // \\u009B31m                 ¦ a comment holds a control character
          """)
  void comments_hide_nothing(String what, String comment, String reason) {
    String text = SOUND.replace("when\n", unescaped(comment) + "\nwhen\n");

    assertThat(problemsOf(text))
        .anyMatch(problem -> problem.text().contains("own.drl:13: " + reason));
  }

  private static String unescaped(String text) {
    return java.util.regex.Pattern.compile("\\\\u([0-9A-F]{4})")
        .matcher(text)
        .replaceAll(match -> Character.toString(Integer.parseInt(match.group(1), 16)));
  }

  @Test
  void texts_cannot_steer_a_terminal() {
    assertThat(problemsOf(SOUND.replace("along a line", "along\u009B2J a line")))
        .anyMatch(problem -> problem.text().startsWith("own.drl:6: a text holds no backslash"));
    String limits =
        "{\"limits\": [{\"name\": \"pit-depth-easy\", \"value\": \"2 m\",\n\"basis\": \"judgement\","
            + " \"source\": \"\", \"note\": \"\\u001b[2J\"}]}";
    assertThat(
            problems(pack(Map.of("pack.json", MANIFEST, "own.drl", SOUND, "limits.json", limits))))
        .anyMatch(p -> p.text().startsWith("limits.json:2: \"?[2J\" holds a control character"));
  }

  @Test
  void all_problems_are_told_at_once_with_their_places() {
    String two =
        SOUND.replace("loadPattern ==", "eval(true) ==")
            + SOUND
                .substring(SOUND.indexOf("rule \""))
                .replace("HSE-01", "HSE-02")
                .replace("along a line", "along another line")
                .replace("\"minor\"", "\"huge\"");
    String limits =
        "{ \"limits\": [\n{ \"name\": \"needle-span\", \"value\": \"20 kN\", \"basis\": \"judgement\", \"source\": \"\" },\n"
            + "{ \"name\": \"pit-depht-easy\", \"value\": \"2 m\" } ] }";
    String strengths = "{ \"weights\": { \"major\": 1, \"minor\": 9 } }";
    List<PackProblem> problems =
        problems(
            pack(
                Map.of(
                    "pack.json",
                    MANIFEST,
                    "own.drl",
                    two,
                    "limits.json",
                    limits,
                    "strengths.json",
                    strengths)));

    assertThat(problems)
        .extracting(PackProblem::text)
        .anyMatch(text -> text.startsWith("own.drl:14: the rule grammar allows"))
        .anyMatch(text -> text.startsWith("own.drl:18: a strength is decisive"))
        .anyMatch(
            text ->
                text.startsWith("limits.json:2: the limit needle-span") && text.contains("force"))
        .anyMatch(
            text ->
                text.startsWith("limits.json:3")
                    && text.contains("did you mean \"pit-depth-easy\""))
        .anyMatch(text -> text.startsWith("strengths.json:1: moderate weighs 2, more than"));
  }

  @Test
  void whatever_a_file_holds_nothing_is_thrown() {
    for (String table : List.of("limits.json", "sources.json", "strengths.json", "criteria.json")) {
      for (String text :
          List.of(
              "",
              "[]",
              "null",
              "{\"limits\": {}, \"sources\": 1, \"weights\": []," + " \"criteria\": \"x\"}",
              "{\"limits\": [[[1]]], \"sources\": [null], \"tie\": {}}",
              "\u0000")) {
        assertThatCode(
                () ->
                    assertThat(
                            problems(
                                pack(Map.of("pack.json", MANIFEST, "own.drl", SOUND, table, text))))
                        .isNotEmpty())
            .as("%s: %s", table, text)
            .doesNotThrowAnyException();
        pack(Map.of(table, "{}"));
      }
    }
  }

  @Test
  void only_ordinary_files_below_the_folder_are_read() throws IOException {
    Path secret = Files.writeString(folder.resolve("secret.drl"), SOUND);
    Path pack = pack(Map.of("pack.json", MANIFEST));
    Path own = pack.resolve("own.drl");

    Files.createSymbolicLink(own, secret);
    assertThat(problems(pack)).anyMatch(p -> p.text().contains("own.drl, which is a link"));
    Files.delete(own);
    Files.createDirectory(own);
    assertThat(problems(pack)).anyMatch(p -> p.text().contains("own.drl, which is a folder"));
    Files.delete(own);
    if (Files.exists(Path.of("/dev/zero"))) {
      Files.createSymbolicLink(own, Path.of("/dev/zero"));
      assertThat(problems(pack)).anyMatch(p -> p.text().contains("which is a link"));
      Files.delete(own);
    }
    try (var large = new java.io.RandomAccessFile(own.toFile(), "rw")) {
      large.setLength(100L * 1024 * 1024);
    }
    assertThat(problems(pack)).anyMatch(p -> p.text().contains("which is larger than 1 MiB"));
    Files.write(own, SOUND.replace("suit", "s\u00FCit").getBytes(StandardCharsets.ISO_8859_1));
    assertThat(problems(pack)).anyMatch(p -> p.text().contains("which is not UTF-8 text"));
    Files.write(own, SOUND.getBytes(StandardCharsets.UTF_16));
    assertThat(problems(pack)).isNotEmpty();
    Files.delete(own);
    Path inside = Files.createDirectory(folder.resolve("elsewhere"));
    Files.writeString(inside.resolve("own.drl"), SOUND);
    Files.createSymbolicLink(pack.resolve("sub"), inside);
    pack(Map.of("pack.json", MANIFEST.replace("own.drl", "sub/own.drl")));
    assertThat(problems(pack)).anyMatch(p -> p.text().contains("sub/own.drl, which is a link"));
  }

  @ParameterizedTest
  @CsvSource({
    "../secret.drl",
    "/etc/passwd",
    "sub/../../secret.drl",
    "./own.drl",
    "C:\\\\own.drl",
    "own.drl/",
    "limits.json",
    "''",
    "a b.drl",
    "..\\\\own.drl",
    "a/b/c/d/e.drl",
    "own.DRL"
  })
  void a_manifest_names_nothing_outside(String name) {
    assertThat(
            problems(
                pack(Map.of("pack.json", MANIFEST.replace("own.drl", name), "own.drl", SOUND))))
        .anyMatch(p -> p.text().startsWith("pack.json:1: a rule file is named from the pack's"));
  }

  @Test
  void a_rule_file_that_nobody_names_is_not_passed_over() {
    assertThat(
            problems(pack(Map.of("pack.json", MANIFEST, "own.drl", SOUND, "pits/more.drl", SOUND))))
        .extracting(PackProblem::text)
        .containsExactly("pits/more.drl: pack.json does not name this rule file: add or remove it");
  }

  @Test
  void a_million_rules_and_deep_nesting_end_soon() {
    StringBuilder many = new StringBuilder(SOUND);
    String rule = SOUND.substring(SOUND.indexOf("rule \""));
    for (int i = 0; many.length() < 1_000_000; i++) {
      many.append(rule.replace("HSE-01", "X-" + i).replace("a line", "line " + i));
    }
    assertThat(problemsOf(many.toString()))
        .anyMatch(p -> p.text().contains("more than 2000 rules"));
    assertThat(problemsOf("\"".repeat(900_000))).hasSizeLessThan(300);
    assertThat(problemsOf(SOUND + "rule \"x\"\n".repeat(90_000))).hasSizeLessThan(300);
    String deep = "{\"note\": " + "[".repeat(100_000);
    assertThat(problems(pack(Map.of("pack.json", deep))))
        .anyMatch(p -> p.text().contains("stand inside each other"));
  }
}
