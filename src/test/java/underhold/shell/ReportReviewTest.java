package underhold.shell;

import static org.assertj.core.api.Assertions.assertThat;
import static underhold.shell.ShellClient.file;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import underhold.consult.Consultant;
import underhold.shell.ShellClient.Ran;
import underhold.site.Site;
import underhold.site.SiteReader;
import underhold.site.SiteReading;

/** The record of a review in a report, and when it is said not to speak of it. */
class ReportReviewTest {
  private static final ShellClient SHELL = ShellClient.oneShot();
  private static final String DEMO = "cases/demo/first-visit-chapel-hill.site.json";
  private static final String DOUBT = "This record may not be of this package";

  @TempDir static Path common;
  @TempDir Path folder;
  private static Path advice = Path.of("");

  @BeforeAll
  static void save() {
    advice = common.resolve("yard.advice.json");
    done("advise", file(common, "yard.site.json", ShellClient.SITE), "--save", advice.toString());
    done("review", "start", advice.toString(), "--by", "Ines Okafor", "--role", "checker");
  }

  private static String review() {
    return common.resolve("yard.review.json").toString();
  }

  private static void done(String... words) {
    Ran ran = SHELL.run(words);
    assertThat(ran.code()).as(ran.err()).isZero();
  }

  private static Site site(String text) {
    return ((SiteReading.Valid) SiteReader.read(text, "yard")).site();
  }

  private static String doubt(Site file, Site shown, String... settings) {
    return new ReviewMatch(Consultant.standard(), ReviewFiles.read(review()))
        .reviewing(file, shown, ReportSettings.read(List.of(settings)))
        .doubt();
  }

  @Test
  void what_was_reviewed_is_shown_without_doubt_in_either_system_of_units() {
    Ran ran =
        SHELL.run(
            "report",
            common.resolve("yard.site.json").toString(),
            "--review",
            review(),
            "--units",
            "US");
    assertThat(ran.code()).as(ran.err()).isZero();
    assertThat(ran.out()).contains("## Review record", "Ines Okafor", " ft").doesNotContain(DOUBT);
  }

  @Test
  void settings_of_the_command_line_are_named_and_nothing_else_is_said_to_have_changed() {
    Site site = site(ShellClient.SITE);
    assertThat(doubt(site, site, "pits.crews=3", "stages.rigs=2"))
        .isEqualTo(
            "This package is made with settings that the file of the site does not have:"
                + " pits.crews=3, stages.rigs=2.");
  }

  @Test
  void one_zone_alone_is_said_to_be_a_part_of_what_was_reviewed() {
    Site site = site(ShellClient.SITE);
    Site part =
        new Site(
            site.name(),
            site.units(),
            site.facts(),
            site.ground(),
            site.zones().subList(0, 1),
            List.of(),
            site.sizing(),
            site.note());
    assertThat(doubt(site, part))
        .isEqualTo(
            "The record is of all 2 zones of the site; this package takes party wall alone,"
                + " without what ties the zones together.");
  }

  @Test
  void changed_facts_are_told() {
    Site site = site(ShellClient.SITE.replace("\"4.2 m\"", "\"5.2 m\""));
    assertThat(doubt(site, site))
        .startsWith("The facts of the site are not those that were reviewed.")
        .endsWith("yard.advice.json tells what.")
        .doesNotContain("rules are not");
  }

  @Test
  void a_record_whose_consultation_is_gone_says_so() throws IOException {
    Path alone = Files.copy(common.resolve("yard.review.json"), folder.resolve("yard.review.json"));
    Site site = site(ShellClient.SITE);
    String doubt =
        new ReviewMatch(Consultant.standard(), ReviewFiles.read(alone.toString()))
            .reviewing(site, site, ReportSettings.read(List.of()))
            .doubt();
    assertThat(doubt).contains("The consultation is not at hand");
  }

  @Test
  void the_record_goes_to_reviewers_alone() {
    Ran ran = SHELL.run("report", DEMO, "--review", review(), "--for", "client");
    assertThat(ran.code()).isEqualTo(Exit.USAGE);
    assertThat(ran.err()).contains("--review goes with --for reviewer");
    assertThat(ran.out()).isEmpty();
  }
}
