package underhold.sizing.pits;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static underhold.sizing.pits.ClayPitsByHandTest.INPUT;

import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import underhold.quantity.UnitSystem;
import underhold.sizing.Sheet;
import underhold.sizing.SheetText;
import underhold.sizing.Stage;
import underhold.sizing.Verdict;

/** What the sheet of {@link ClayPitsByHandTest} says in words, with its numbers; own case. */
class ClayPitsInWordsByHandTest {
  private final Sheet sheet = ClayPitsByHandTest.sheet();

  @Test
  void stages_say_what_is_done_with_the_numbers_of_this_site() {
    List<String> lines = SheetText.lines(sheet, UnitSystem.SI);
    assertThat(lines)
        .contains(
            "    Sink the approach pit beside the wall, 1.2 m by 1.5 m, to 1.8 m below the footing,"
                + " boarded ring by ring with 76.2 mm boards, one board of 203.2 mm at a time.",
            "    Sink the pit to 2.3 m below the footing; clean the base by hand, no softened soil"
                + " left.",
            "    Clean the underside of the footing. Place concrete without a break to 75 mm below"
                + " it; key it to the piers beside.",
            "    After 24 h ram the gap full with stiff cement-sand mortar, damp as earth, in"
                + " layers from the back, until contact is complete.",
            "    Open no neighbour before 48 h more and before cubes or cylinders show the strength"
                + " asked for.",
            "    Set braces or ties on every pier as the excavation goes down, before the soil in"
                + " front of it is taken below their level. Level, force and what replaces them are the"
                + " engineer's design; they stay until the lasting works hold the piers.");
    assertThat(sheet.stages())
        .hasSize(4 + PitsSizing.order(INPUT, PitsSettings.defaults()).orElseThrow().roundCount());
    assertThat(sheet.stages().get(0).title()).isEqualTo("Before digging");
    assertThat(sheet.check("free-end").orElseThrow().verdict()).isNotEqualTo(Verdict.PASSES);
    Stage ends = sheet.stages().get(1);
    assertThat(ends.title()).as("before any round").isEqualTo("Free ends of the wall shored");
    assertThat(ends.work().get(0).in(UnitSystem.SI)).contains("before an end pit (pit 1, pit ");
    assertThat(ends.holdPoints().get(0).condition().template()).contains("no end pit is opened");
    assertThat(sheet.stages().get(2).title()).isEqualTo("Each pit");
    assertThat(sheet.stages().get(2).holdPoints().stream().map(hold -> hold.releasedBy()))
        .containsExactly(
            "competent person", "geotechnical engineer", "special inspector", "engineer of record");
    assertThat(sheet.stages().get(sheet.stages().size() - 1).title())
        .isEqualTo("Excavation in front");
  }

  @Test
  @DisplayName(
      "29 CFR 1926.651 and .652 (secondary copies): 5 ft for boards, ladder from 4 ft within 25 ft"
          + " and 3 ft up, spoil 2 ft back")
  void cautions_carry_the_distances_of_the_rules() {
    assertThat(sheet.cautions().stream().map(caution -> caution.hazard()))
        .containsExactly(
            "cave-in",
            "shoring tables",
            "digging below the footing",
            "egress",
            "air",
            "rescue",
            "working under a load that hangs",
            "spoil and plant at the edge",
            "undermined neighbours",
            "water",
            "movement",
            "heading under the footing",
            "unbraced piers");
    assertThat(SheetText.lines(sheet, UnitSystem.US))
        .anyMatch(line -> line.contains("cave-in: Nobody stands in a pit of 5 ft or more"))
        .anyMatch(
            line ->
                line.contains(
                    "egress: From a depth of 4 ft a ladder stands in every pit, reaching 3 ft above"
                        + " its top; no way to it over 25 ft."))
        .anyMatch(line -> line.contains("air: Below 4 ft test the air"))
        .anyMatch(line -> line.contains("hoists stay 2 ft from the edge"));
    assertThat(sheet.notCovered()).hasSize(8);
  }

  @Test
  void inputs_are_all_there_with_their_words() {
    assertThat(sheet.input("material").orElseThrow().words()).isEqualTo("solid masonry");
    assertThat(sheet.input("condition").orElseThrow().words()).isEqualTo("sound");
    assertThat(sheet.input("face-soil").orElseThrow().words()).isEqualTo("stiff clay");
    assertThat(sheet.input("base-soil").orElseThrow().words()).isEqualTo("stiff clay");
    assertThat(sheet.input("faces-run").orElseThrow().words()).isEqualTo("no");
    assertThat(sheet.input("stand-up").orElseThrow().words()).isEqualTo("days");
    assertThat(sheet.input("osha-type").orElseThrow().words()).isEqualTo("type B");
    assertThat(sheet.input("brace-possible").orElseThrow().words()).isEqualTo("yes");
    assertThat(sheet.input("lateral-stability-verified").orElseThrow().words()).isEqualTo("no");
    assertThat(sheet.input("timber").orElseThrow().words()).isEqualTo("douglas-fir-larch");
    assertThat(sheet.input("osha-table-row").orElseThrow().words())
        .isEqualTo(
            "C-2.2: brace 6x6 at 6 ft along and 5 ft down, wale 8x8 at 5 ft, uprights 3x6 close or"
                + " 4x10 at 2 ft");
    assertThat(sheet.input("pit-depth").orElseThrow().amount().orElseThrow().si())
        .isCloseTo(2.3, within(1e-12));
    assertThat(sheet.input("corners").orElseThrow().amount().orElseThrow().si()).isEqualTo(2);
    assertThat(sheet.input("retained-height").orElseThrow().amount().orElseThrow().si())
        .isCloseTo(2.3, within(1e-12));
  }

  @Test
  void a_check_that_would_pass_on_a_guess_says_on_which() {
    assertThat(sheet.check("heave").orElseThrow().note().in(UnitSystem.SI))
        .endsWith(
            "nobody stated what it rests on: unit weight of the soil at the faces; soil below the"
                + " pit base.");
    assertThat(sheet.check("pier-flexure").orElseThrow().note().in(UnitSystem.SI))
        .isEqualTo(
            "Demand is 1.6 times the working effect of a cantilever from the base. If it fails,"
                + " reinforce the pier or brace it. It would pass, but nobody stated what it rests"
                + " on: unit weight of the soil at the faces; friction angle of the soil at the"
                + " faces.");
    assertThat(sheet.check("brace").orElseThrow().note().in(UnitSystem.SI))
        .isEqualTo(
            "Masonry whose lateral stability is not verified gets no relief from bracing. Design"
                + " the brace or tie for the force above.");
  }
}
