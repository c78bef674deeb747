package underhold.site;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** Stated, derived and assumed facts of a zone, and which has the last word; own cases. */
class ZoneViewsTest {
  @Test
  void a_zone_overrides_the_site_also_by_saying_unknown() {
    String text =
        """
        { "underhold": "site/1", "name": "x",
          "facts": { "clearSpan": "1 m", "movementLimit": "8 mm", "life": "temporary" },
          "zones": [ { "name": "a", "facts": { "loadPattern": "area",
            "excavationPosition": "beside", "clearSpan": "2 m",
            "movementLimit": { "value": "unknown", "note": "owner asked" } } } ] }
        """;

    FactView known = Sites.known(text);

    assertThat(known.fact("clearSpan").text()).isEqualTo("2 m");
    assertThat(known.fact("life").text()).isEqualTo("temporary");
    assertThat(known.fact("movementLimit").origin()).isEqualTo(Origin.UNKNOWN);
    assertThat(known.fact("movementLimit").how()).isEqualTo("owner asked");
  }

  @Test
  void a_zone_with_its_own_ground_does_not_see_the_ground_of_the_site() {
    Site site = Sites.valid(Sites.FULL);

    FactView wall = ZoneViews.known(site, site.zones().get(0), Sites.DICTIONARY);
    FactView column = ZoneViews.known(site, site.zones().get(1), Sites.DICTIONARY);

    assertThat(wall.fact("soilAtFooting").text()).isEqualTo("fill");
    assertThat(column.fact("soilAtFooting").text()).isEqualTo("silt");
  }

  @Test
  void nothing_is_assumed_among_what_is_known() {
    assertThat(Sites.known(Sites.FULL).present())
        .isNotEmpty()
        .allSatisfy(fact -> assertThat(fact.origin().isKnown()).isTrue());
  }

  @Test
  void an_assumption_never_replaces_what_is_known() {
    FactView known = Sites.known(Sites.FULL);
    FactView cautious = ZoneViews.cautious(known);

    assertThat(known.present())
        .allSatisfy(fact -> assertThat(cautious.fact(fact.name())).isEqualTo(fact));
    assertThat(cautious.present().size()).isGreaterThan(known.present().size());
  }

  @Test
  void only_facts_the_dictionary_assumes_are_assumed_or_follow_from_such() {
    FactView cautious = ZoneViews.cautious(Sites.known(Sites.LEAST));

    assertThat(cautious.all())
        .filteredOn(fact -> !fact.definition().derived() && fact.definition().unknown() != null)
        .filteredOn(fact -> fact.origin() != Origin.STATED)
        .allSatisfy(
            fact ->
                assertThat(fact.origin() == Origin.ASSUMED)
                    .as(fact.name())
                    .isEqualTo(
                        fact.definition().unknown().treatment() == Unknown.Treatment.ASSUME));
  }

  @Test
  void a_case_of_the_dictionary_goes_before_its_usual_value() {
    assertThat(cautious("\"structureMaterial\": \"steel\",", "clearSpan").text())
        .isEqualTo("0.9 m");
    assertThat(cautious("", "clearSpan").text()).isEqualTo("0.6 m");
    assertThat(cautious("\"worstSoil\": \"soft-clay\",", "permeability").text())
        .isEqualTo("1e-8 m/s");
  }

  @Test
  void what_rests_on_an_assumption_is_itself_assumed() {
    Fact load = cautious("\"lineLoad\": \"100 kN/m\",", "bracketLoad");

    assertThat(load.origin()).isEqualTo(Origin.ASSUMED);
    assertThat(load.text()).isEqualTo("60 kN");
    assertThat(load.how()).contains("length it can bridge 0.6 m (assumed)");
  }

  @Test
  void assumptions_are_shown_in_the_units_typed_without_changing_their_amount() {
    Fact span = cautious("\"footingWidth\": \"3 ft\",", "clearSpan");

    assertThat(span.text()).isEqualTo("1.969 ft");
    assertThat(((FactValue.Amount) span.maybe().orElseThrow()).quantity().si()).isEqualTo(0.6);
  }

  @Test
  void water_is_never_assumed_lower_above_the_pit_base_than_it_is_known_above_the_excavation() {
    Fact head = cautious("\"headAboveExcavation\": \"3 m\",", "headAbovePitBase");

    assertThat(head.origin()).isEqualTo(Origin.ASSUMED);
    assertThat(head.text()).isEqualTo("3 m");
    assertThat(head.how()).contains("Held to what is known");
    assertThat(cautious("\"headAboveExcavation\": \"-3 m\",", "headAbovePitBase").text())
        .isEqualTo("1 m");
    assertThat(cautious("\"headAbovePitBase\": \"-3 m\",", "headAboveExcavation").text())
        .isEqualTo("-3 m");
  }

  @Test
  void the_worst_soil_is_never_assumed_better_than_the_soil_known_at_the_footing() {
    assertThat(cautious("\"soilAtFooting\": \"peat\",", "worstSoil").text()).isEqualTo("peat");
    assertThat(cautious("\"soilAtFooting\": \"rock\",", "worstSoil").text()).isEqualTo("silt");
    assertThat(cautious("\"worstSoil\": \"dense-sand\",", "soilAtFooting").text())
        .isEqualTo("dense-sand");
    assertThat(cautious("\"worstSoil\": \"peat\",", "soilAtFooting").text()).isEqualTo("fill");
  }

  private static Fact cautious(String facts, String name) {
    return ZoneViews.cautious(Sites.known(Sites.oneZone(facts))).fact(name);
  }
}
