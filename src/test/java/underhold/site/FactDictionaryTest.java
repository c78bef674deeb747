package underhold.site;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What every fact of the dictionary must say, whatever is added to it. */
class FactDictionaryTest {
  private static final FactDictionary DICTIONARY = Sites.DICTIONARY;

  static Stream<FactDefinition> facts() {
    return DICTIONARY.all().stream();
  }

  static Stream<FactDefinition> asked() {
    return facts().filter(fact -> !fact.derived());
  }

  @Test
  void names_and_labels_are_unique() {
    assertThat(facts().map(FactDefinition::name)).doesNotHaveDuplicates();
    assertThat(facts().map(FactDefinition::label)).doesNotHaveDuplicates();
    FactDefinition first = DICTIONARY.all().get(0);
    assertThatThrownBy(() -> new FactDictionary(List.of(first, first)))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining(first.name());
  }

  @ParameterizedTest
  @MethodSource("facts")
  void a_fact_is_found_by_its_name_and_says_what_it_asks_and_why(FactDefinition fact) {
    assertThat(DICTIONARY.find(fact.name())).contains(fact);
    assertThat(DICTIONARY.all().get(fact.index())).isSameAs(fact);
    assertThat(fact.label()).isNotBlank();
    assertThat(fact.group()).isNotBlank();
    assertThat(fact.question()).contains("?");
    assertThat(fact.why()).endsWith(".");
    assertThat(fact.values()).allSatisfy(value -> assertThat(value.means()).isNotBlank());
    assertThat(fact.values()).extracting(FactDefinition.Allowed::value).doesNotHaveDuplicates();
    assertThat(fact.askInstead())
        .allSatisfy(name -> assertThat(DICTIONARY.require(name).derived()).isFalse());
  }

  @ParameterizedTest
  @MethodSource("asked")
  void a_fact_that_can_be_asked_says_how_to_find_it_out_and_what_it_means_unknown(
      FactDefinition fact) {
    assertThat(fact.findOut()).isNotBlank();
    Unknown unknown = fact.unknown();
    assertThat(unknown).isNotNull();
    if (unknown != null) {
      assertThat(unknown.because()).isNotBlank();
    }
  }

  @Test
  void a_name_that_is_none_is_refused_by_name() {
    assertThat(DICTIONARY.find("loadPatern")).isEmpty();
    assertThatThrownBy(() -> DICTIONARY.require("loadPatern"))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("loadPatern");
  }
}
