package underhold.report.dossier;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import underhold.report.markdown.MarkdownWriter;
import underhold.site.Site;
import underhold.site.SiteReader;
import underhold.site.SiteReading;

/** What the site and the client find in their packages, and the watching in all of them. */
class AudiencesTest {
  private static final String ALDER = "alder-row-party-wall.site.json";

  private static String text(String demo, Audience audience) {
    return MarkdownWriter.text(Demos.document(Demos.material(demo), audience));
  }

  /** A demo site whose file has some words replaced. */
  private static String changed(String demo, String old, String words, Audience audience)
      throws IOException {
    String file = Files.readString(Path.of("cases/demo", demo));
    assertThat(file).contains(old);
    Site site = ((SiteReading.Valid) SiteReader.read(file.replace(old, words), demo)).site();
    return MarkdownWriter.text(Demos.document(Demos.material(site), audience));
  }

  @ParameterizedTest
  @EnumSource(Audience.class)
  @DisplayName("whichever method is built, instruments, times and levels stand in every package")
  void watched(Audience audience) {
    // the site states a limit of 10 mm and 12 m of wall; points every 5 m: 12 / 5 up, and one
    assertThat(text(ALDER, audience))
        .contains("| Levelling points at the foot | settlement and heave | 4 (count) |")
        .contains("| Crack gauges |", "| Vibration monitors |", "| Datum points |")
        .contains("| While work goes on | Every 24 h, and before and after each lift of digging")
        .contains("5 mm (50 % of the limit)", "8 mm (80 % of the limit)")
        .contains("10 mm (100 % of the limit)", "from memory, verify", "judgement")
        .contains("At the stop level", "all work within reach stops");
  }

  @Test
  @DisplayName("where nobody stated the limit, levels are shares of it and no millimetres")
  void without_a_limit() throws IOException {
    String text =
        changed(
            ALDER, "\"movementLimit\": \"10 mm\"", "\"movementLimit\": \"unknown\"", Audience.SITE);
    assertThat(text)
        .contains(
            "Nobody stated the limit", "50 % of the limit agreed", "| stop | 100 % of the limit")
        .contains("These are shares of the limit that is to be agreed.")
        .doesNotContain("mm (50 % of the limit)")
        .doesNotContain("From 5 mm");
  }

  @Test
  @DisplayName("where the sheet of watching still asks, its questions stand in place of numbers")
  void without_a_depth() {
    assertThat(text("first-visit-chapel-hill.site.json", Audience.SITE))
        .contains("waits for facts: How deep is the new excavation below ground?")
        .doesNotContain("| Levelling points");
  }

  @Test
  @DisplayName("the site reads first what stops the work, in which order it goes and whom to call")
  void site() {
    String text = text(ALDER, Audience.SITE);
    int brief = text.indexOf("## On one page");
    assertThat(brief).isPositive().isLessThan(text.indexOf("## Stage plan"));
    assertThat(text.substring(brief, text.indexOf("## Stage plan")))
        .contains("**Work stops**", "**Not for construction**", "[what is not proved](#not-proved)")
        .contains(
            "[3 Free ends of the wall shored](#stage-3)",
            "[4 Round 1 of 5](#stage-4)",
            "at 10 mm all work within reach stops")
        .contains("| Engineer of record |", "| Competent person on site |")
        .contains("| Surveyor who takes the readings |", "| Rescue and emergency services |");
  }

  @Test
  @DisplayName("the client reads the method, its effects and what is not known in plain words")
  void client() {
    String text = text(ALDER, Audience.CLIENT);
    assertThat(text)
        .contains("Small pits are dug by hand under the footing")
        .contains("| Use during the work | people live or work in it |")
        .contains("It may move by no more than `10 mm`.")
        .contains("Reckoned: settlement to expect")
        .contains("the licensed engineer who checks and owns the design")
        .doesNotContain("of 100 draws", "tie for the first place", "occupied |");
  }

  @Test
  @DisplayName("a client who is sent to a specialist is told so, with reasons and the dangers")
  void specialist() {
    String text = text("willow-quay-warehouse.site.json", Audience.CLIENT);
    assertThat(text)
        .contains("**Specialist referral**", "A specialist is asked first")
        .contains("No ordinary option is left")
        .contains("As planned survey, investigation and readings alone take about")
        .doesNotContain("No method yet", "No rule names a risk");
  }

  @Test
  @DisplayName(
      "where the length of an edge is unknown the client hears that one bracket is counted")
  void one_bracket() {
    assertThat(text("kestrel-road-platform.site.json", Audience.CLIENT))
        .contains("At platform edge they count one bracket only");
  }

  @Test
  @DisplayName(
      "beside edge pits the client hears how far the piles that carry the structure settle")
  void piles_beside_edge_pits() {
    assertThat(text("orchard-line-box.site.json", Audience.CLIENT))
        .contains("Reckoned: settlement of a pile head", "Reckoned: settlement of the group")
        .doesNotContain("How far it will move is not reckoned here");
  }

  @Test
  @DisplayName("a check that refers with more asked than there is says so, and is counted")
  void exceeded() {
    assertThat(text(ALDER, Audience.REVIEWER))
        .contains("**refer, exceeded**", "of them exceeded)", "Refer is never a pass");
  }
}
