package underhold.shell;

import static org.assertj.core.api.Assertions.assertThat;
import static underhold.shell.ShellClient.file;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import underhold.report.Look;
import underhold.review.file.FileReading;
import underhold.review.file.Fingerprint;
import underhold.review.file.RecordTree;
import underhold.review.record.ReviewFile;
import underhold.review.record.ReviewRecord;
import underhold.shell.ShellClient.Ran;

/** Saving, running again and reviewing by command. */
class ReviewCommandsTest {
  private static final ShellClient SHELL = ShellClient.oneShot();
  private static final String ZONE = "party wall/";

  @TempDir static Path common;
  @TempDir Path folder;

  private static String saved = "";

  @BeforeAll
  static void save() {
    String site = file(common, "yard.site.json", ShellClient.SITE);
    saved = common.resolve("yard.advice.json").toString();
    Ran ran = SHELL.run("advise", site, "--save", saved);
    assertThat(ran.code()).as(ran.err()).isZero();
    assertThat(ran.err()).contains("yard.advice.json is saved.", "recheck", "review start");
    assertThat(ran.out()).contains("Cooper's Yard");
  }

  /** A consultation of its own for a test, and the name of the review beside it. */
  private String review() {
    String advice = file(folder, "yard.advice.json", text(saved));
    Ran ran = SHELL.run("review", "start", advice, "--by", "Ines Okafor", "--role", "checker");
    assertThat(ran.code()).as(ran.err()).isZero();
    return folder.resolve("yard.review.json").toString();
  }

  private static String text(String name) {
    try {
      return Files.readString(Path.of(name));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Without the line ends and blanks of the layout. */
  private static String flat(String text) {
    return text.replaceAll("\\s+", " ");
  }

  private static void done(String... words) {
    Ran ran = SHELL.run(words);
    assertThat(ran.code()).as(ran.err()).isZero();
    assertThat(ran.err()).isEmpty();
  }

  private static void refused(int code, String message, String... words) {
    Ran ran = SHELL.run(words);
    assertThat(ran.code()).as(ran.err()).isEqualTo(code);
    assertThat(ran.out()).isEmpty();
    assertThat(ran.err()).contains(message).doesNotContain("Exception");
  }

  @Test
  void where_a_consultation_cannot_be_saved_nothing_is_answered() {
    String site = common.resolve("yard.site.json").toString();
    refused(Exit.USAGE, "ends with .advice.json", "advise", site, "--save", "x.json");
    refused(
        Exit.USAGE,
        "leave --zone out",
        "advise",
        site,
        "--save",
        "x.advice.json",
        "--zone",
        "party wall");
    refused(Exit.SITE, "already, and a review may rest on it", "advise", site, "--save", saved);
  }

  @Test
  void run_again_at_once_it_is_identical() {
    Ran ran = SHELL.run("recheck", saved);
    assertThat(ran.code()).as(ran.err() + ran.out()).isZero();
    assertThat(ran.out()).contains("Identical: ", "Zone party wall", "Decision support only");

    JsonNode tree = JsonMapper.shared().readTree(SHELL.run("recheck", saved, "--json").out());
    assertThat(tree.get("stands").asString()).isEqualTo("identical");
    assertThat(tree.get("zones").get(1).get("differences")).isEmpty();
  }

  @Test
  void edited_by_hand_it_is_told_and_does_not_pass() {
    String edited =
        file(
            folder,
            "edited.advice.json",
            text(saved).replaceFirst("\"standing\": \"leads\"", "\"standing\": \"works\""));
    Ran ran = SHELL.run("recheck", edited);
    assertThat(ran.code()).isEqualTo(Exit.SITE);
    assertThat(flat(ran.out()))
        .contains("edited", "does not match its seal", "no longer stands", "! leader: was");
    refused(Exit.SITE, "was edited after", "review", "start", edited, "--by", "X");
  }

  @Test
  void another_site_shows_what_it_changes() {
    String deeper =
        file(
            folder,
            "deeper.site.json",
            ShellClient.SITE.replace(
                "\"excavationDepth\": \"4.2 m\"", "\"excavationDepth\": \"9 m\""));
    Ran ran = SHELL.run("recheck", saved, "--site", deeper);
    assertThat(ran.out())
        .contains("Another than was saved")
        .contains("fact, excavationDepth: was 4.2 m (stated); is 9 m (stated)");
    assertThat(ran.out().lines()).allMatch(line -> line.length() <= 80);
  }

  @Test
  void what_cannot_be_read_is_refused_with_its_place() {
    refused(Exit.SITE, "There is no file", "recheck", "nowhere.advice.json");
    String broken =
        file(folder, "b.advice.json", text(saved).replace("\"tie\": 2", "\"tie\": \"x\""));
    refused(Exit.SITE, "rulePack.tie: this is a text", "recheck", broken);
    String site = common.resolve("yard.site.json").toString();
    refused(Exit.SITE, "this is not a saved consultation but \"site/1\"", "recheck", site);
    String fact =
        file(
            folder,
            "f.advice.json",
            text(saved).replace("\"gapToExcavation\":", "\"gapToExcavatoin\":"));
    refused(Exit.SITE, "did you mean \"gapToExcavation\"?", "recheck", fact);
    refused(Exit.SITE, "this is not a review", "review", "status", saved);
    refused(Exit.USAGE, "needs FILE", "recheck");
  }

  @Test
  void a_review_runs_from_start_to_signature_and_on() {
    String review = review();
    done("review", "comment", review, "A", "clear", "package.", "--by", "Ines Okafor");
    done(
        "review",
        "query",
        review,
        "Who measured it?",
        "--on",
        ZONE + "fact/foundingDepth",
        "--by",
        "Ines Okafor");
    refused(
        Exit.SITE,
        "Query 3 is open. Answer or withdraw it",
        "review",
        "sign",
        review,
        "checked",
        "--by",
        "Ines Okafor",
        "--role",
        "checker");
    done("review", "answer", review, "3", "Trial", "pit", "2.", "--by", "Tom Brandt");
    done(
        "review",
        "override",
        review,
        ZONE + "ranking",
        "refer",
        "--why",
        "Old fill.",
        "--by",
        "Ines Okafor");
    done(
        "review",
        "sign",
        review,
        "accepted-with-comments",
        "--by",
        "Ines Okafor",
        "--role",
        "checker");

    Ran status = SHELL.run("review", "status", review);
    assertThat(status.code()).isZero();
    assertThat(status.out())
        .contains("whole: 6 entries, round 1", "None.", "Original: ", "Override: refer")
        .contains("Ines Okafor, checker: accepted with the comments of this record")
        .contains("no electronic signature in the legal sense");
    assertThat(status.out().lines()).allMatch(line -> line.length() <= 80);

    refused(
        Exit.SITE, "open a new round", "review", "comment", review, "Late.", "--by", "Tom Brandt");
    done("review", "reopen", review, "--why", "A new boring.", "--by", "Tom Brandt");
    done("review", "comment", review, "Late.", "--by", "Tom Brandt");
    assertThat(SHELL.run("review", "status", review).out())
        .contains("no signature covers the present round", "does not cover the present round");
    Ran show = SHELL.run("review", "show", review);
    assertThat(flat(show.out()))
        .contains("8. Tom Brandt comments, on whole", "covers a round before");
  }

  @Test
  void a_head_noted_elsewhere_tells_of_entries_taken_off() {
    String review = review();
    done("review", "comment", review, "One.", "--by", "X");
    String kept = text(review);
    done("review", "comment", review, "Two.", "--by", "X");
    String head = JsonMapper.shared().readTree(text(review)).get("head").asString();

    assertThat(SHELL.run("review", "status", review, "--head", head).out())
        .contains("the head noted is the present one");
    done("review", "comment", review, "Three.", "--by", "X");
    assertThat(SHELL.run("review", "status", review, "--head", head.substring(0, 16)).out())
        .contains("that of entry 3;", "written since: 1");
    file(folder, "yard.review.json", kept);
    Ran cut = SHELL.run("review", "status", review, "--head", head);
    assertThat(cut.code()).isEqualTo(Exit.SITE);
    assertThat(cut.out()).contains("whole: 2 entries", "NO ENTRY HAS THE HEAD NOTED");
    refused(Exit.USAGE, "its first 12 digits", "review", "status", review, "--head", "abc");
  }

  @Test
  void a_record_that_is_not_whole_is_shown_and_not_added_to() {
    String review = review();
    done("review", "comment", review, "Deep enough.", "--by", "X");
    file(folder, "yard.review.json", text(review).replace("Deep enough.", "Deep enouhg."));

    Ran status = SHELL.run("review", "status", review);
    assertThat(status.code()).isEqualTo(Exit.SITE);
    assertThat(status.out()).contains("NOT WHOLE", "Entry 2 (comment by X) was changed");
    refused(Exit.SITE, "Nothing is added to it", "review", "comment", review, "Hm.", "--by", "X");
  }

  /** All fingerprints made anew, the original of an override made smaller than it was. */
  @Test
  void a_quoted_original_that_is_not_there_is_told() {
    String review = review();
    done("review", "override", review, ZONE + "ranking", "refer", "--why", "Fill.", "--by", "X");
    FileReading<ReviewFile> read = ReviewFile.FILES.read(Path.of(review));
    String forged =
        read.text().replaceFirst("\"original\": \"[^\"]*\"", "\"original\": \"nothing led\"");
    ReviewFile other = ReviewFile.FILES.read(forged, "x").content().orElseThrow();
    assertThat(ReviewRecord.of(other, forged).intact()).isFalse();
    String hash = ReviewRecord.of(other, forged).entries().get(1).hash();
    Map<String, Object> tree = new LinkedHashMap<>(RecordTree.of(other.entries().get(1)));
    tree.remove("hash");
    file(folder, "yard.review.json", forged.replace(hash, Fingerprint.ofTree(tree)));

    Ran status = SHELL.run("review", "status", review);
    assertThat(status.code()).isEqualTo(Exit.SITE);
    assertThat(flat(status.out()))
        .contains("whole: 2 entries")
        .contains("Entry 2 quotes what the consultation does not say.");
  }

  @Test
  void a_consultation_that_changed_or_went_is_told() throws IOException {
    String review = review();
    Path advice = folder.resolve("yard.advice.json");
    Files.writeString(advice, text(saved).replace("\"units\": \"SI\"", "\"units\": \"US\""));
    assertThat(flat(SHELL.run("review", "status", review).out()))
        .contains("is not what was reviewed: its content has changed since.");
    refused(Exit.SITE, "has changed since", "review", "comment", review, "Hm.", "--by", "X");
    Files.delete(advice);
    Ran status = SHELL.run("review", "status", review);
    assertThat(status.code()).isEqualTo(Exit.SITE);
    assertThat(status.out()).contains("The consultation is not at hand");
  }

  @Test
  void what_was_typed_wrong_is_told_with_what_there_is() {
    String review = review();
    refused(Exit.USAGE, "Who writes it? --by NAME is needed.", "review", "comment", review, "Hm.");
    refused(
        Exit.USAGE,
        "Did you mean \"party wall/fact/foundingDepth\"?",
        "review",
        "comment",
        review,
        "Hm.",
        "--on",
        "party wall/fact/foundingDepht",
        "--by",
        "X");
    refused(
        Exit.USAGE,
        "name the zone",
        "review",
        "comment",
        review,
        "Hm.",
        "--on",
        "ranking",
        "--by",
        "X");
    refused(Exit.USAGE, "There is no entry 7", "review", "answer", review, "7", "Hm.", "--by", "X");
    refused(Exit.USAGE, "NUMBER is \"two\"", "review", "answer", review, "two", "Hm.", "--by", "X");
    refused(
        Exit.USAGE,
        "Did you mean checked?",
        "review",
        "sign",
        review,
        "chekced",
        "--by",
        "X",
        "--role",
        "checker");
    refused(
        Exit.USAGE,
        "An override needs a reason",
        "review",
        "override",
        review,
        ZONE + "ranking",
        "none",
        "--by",
        "X");
    refused(Exit.USAGE, "\"review\" needs one more word", "review");
    refused(
        Exit.SITE,
        "already",
        "review",
        "start",
        folder.resolve("yard.advice.json").toString(),
        "--by",
        "X");
    assertThat(SHELL.run("review", "status", review).out()).contains("whole: 1 entry");
  }

  @Test
  void hostile_texts_are_kept_and_printed_safely() {
    String review = review();
    String odd =
        "\u001b[2J\u001b[31mred \u202Egnol\u202C \u009b1m \u05E9\u05DC\u05D5\u05DD "
            + "x".repeat(10_000);
    done("review", "comment", review, odd, "--by", "X");

    Ran show = SHELL.run("review", "show", review);
    assertThat(show.out())
        .contains("<U+001B>[2J", "<U+202E>gnol<U+202C>", "<U+009B>1m", "\u05E9\u05DC\u05D5\u05DD")
        .doesNotContain("\u001b", "\u009b", "\u202e");
    assertThat(show.out().lines()).allMatch(line -> line.length() <= 80);
    Ran json = SHELL.run("review", "show", review, "--json");
    assertThat(json.out()).doesNotContain("\u001b", "\u009b", "\u202e");
    assertThat(
            JsonMapper.shared().readTree(json.out()).get("entries").get(1).get("text").asString())
        .isEqualTo(odd);
    refused(
        Exit.USAGE, "control character", "review", "comment", review, "Hm.", "--by", "X\u001b[31m");
    Ran target = SHELL.run("review", "comment", review, "Hm.", "--on", "\u001b[31m", "--by", "X");
    assertThat(target.err()).doesNotContain("\u001b");
  }

  @Test
  void every_line_fits_narrow_and_wide() {
    String review = review();
    done("review", "query", review, "Why?", "--on", ZONE + "option/pits", "--by", "X");
    for (int width : new int[] {40, 80, 110}) {
      ShellClient shell = ShellClient.oneShot(new Look(width, false, StandardCharsets.UTF_8));
      for (String[] words :
          new String[][] {
            {"review", "status", review},
            {"review", "show", review},
            {"review", "targets", review, "pits"},
            {"recheck", saved}
          }) {
        assertThat(shell.run(words).out().lines())
            .allSatisfy(line -> assertThat(line.length()).as(line).isLessThanOrEqualTo(width));
      }
    }
  }

  @Test
  void targets_lists_what_a_word_finds() {
    String review = review();
    assertThat(SHELL.run("review", "targets", review, "foundingDepth").out())
        .contains("party wall/fact/foundingDepth", "1.8 m (stated)");
    assertThat(SHELL.run("review", "targets", review, "ranking").out())
        .contains("An override can say: ");
    refused(Exit.USAGE, "has \"qqq\" in it", "review", "targets", review, "qqq");
  }
}
