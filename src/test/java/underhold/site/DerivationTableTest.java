package underhold.site;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The tables of judgement cover the dictionary, whatever is added to it. */
class DerivationTableTest {
  static Iterable<Derivation> derivations() {
    return Derivations.ALL;
  }

  @ParameterizedTest
  @MethodSource("derivations")
  void a_derivation_reads_only_the_facts_it_names(Derivation derivation) {
    Site site = Sites.valid(Sites.FULL);
    FactView view =
        ZoneViews.cautious(ZoneViews.known(site, site.zones().get(0), Sites.DICTIONARY))
            .with(
                Sites.stated(Map.of("pileToeDepth", "9 m", "excavationPosition", "beside"))
                    .present());
    Inputs inputs = new Inputs(view, site.ground());

    Derived derived = derivation.rule().from(inputs);

    Set<String> read = new LinkedHashSet<>(inputs.read());
    read.remove("excavationPosition");
    assertThat(derivation.from()).containsAll(read).doesNotContain(derivation.target());
    assertThat(Sites.DICTIONARY.find(derivation.target())).isPresent();
    if (!derivation.target().equals("standUp") && !derivation.target().equals("permeability")) {
      assertThat(derived).isNotNull();
    }
  }

  @Test
  void every_soil_class_and_stand_up_time_has_its_rank() {
    assertThat(SoilRank.WORST_FIRST)
        .containsExactlyInAnyOrderElementsOf(words("soilAtFooting"))
        .containsExactlyInAnyOrderElementsOf(words("worstSoil"));
    assertThat(SoilRank.SHORTEST_FIRST).containsExactlyElementsOf(words("standUp"));
  }

  @Test
  void every_assumed_value_can_be_read() {
    assertThat(ZoneViews.cautious(FactView.of(Sites.DICTIONARY, Map.of())).present()).isNotEmpty();
    for (FactDefinition fact : Sites.DICTIONARY.all()) {
      Unknown unknown = fact.unknown();
      if (unknown != null) {
        unknown
            .cases()
            .forEach(
                item -> {
                  assertThat(FactReader.read(fact, item.value()))
                      .isInstanceOf(FactReading.Accepted.class);
                  assertThat(item.because()).isNotBlank().isNotEqualTo(unknown.because());
                  item.when().forEach((name, words) -> assertThat(words(name)).containsAll(words));
                });
      }
    }
  }

  private static java.util.List<String> words(String fact) {
    return Sites.DICTIONARY.require(fact).values().stream()
        .map(FactDefinition.Allowed::value)
        .toList();
  }
}
