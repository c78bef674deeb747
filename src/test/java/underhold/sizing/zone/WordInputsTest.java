package underhold.sizing.zone;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import java.lang.reflect.Field;
import java.lang.reflect.Modifier;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import underhold.site.FactDefinition;
import underhold.site.FactDictionary;

/** The words that the sheets read against the words that a site may state. */
class WordInputsTest {
  /** Choices whose words are not those of the fact that answers them, and why. */
  private static final Map<String, String> OWN_WORDS =
      Map.of(
          "load-pattern", "a sheet carries some load patterns and asks for another method else",
          "path", "a way of holding a moment, found from whether piles can be paired",
          "face-soil", "a class of soil, found from the worst soil",
          "base-soil", "a class of soil, found from the kind of bearing stratum");

  /** A choice and where it stands. */
  private record Found(String place, WordInput input) {}

  private static List<Found> all() {
    return new ClassFileImporter()
        .importPackages("underhold.sizing").stream()
            .filter(type -> !type.getName().endsWith("Test"))
            .filter(type -> !type.getName().endsWith("Test"))
            .map(JavaClass::reflect)
            .flatMap(type -> Arrays.stream(type.getDeclaredFields()))
            .filter(field -> field.getType() == WordInput.class)
            .filter(field -> Modifier.isStatic(field.getModifiers()))
            .map(WordInputsTest::found)
            .toList();
  }

  private static Found found(Field field) {
    try {
      field.setAccessible(true);
      String place = field.getDeclaringClass().getSimpleName() + "." + field.getName();
      return new Found(place, (WordInput) field.get(null));
    } catch (IllegalAccessException e) {
      throw new IllegalStateException(e);
    }
  }

  private static List<String> words(WordInput input) {
    return FactDictionary.standard().require(input.fact()).values().stream()
        .map(FactDefinition.Allowed::value)
        .toList();
  }

  @TestFactory
  @DisplayName("a choice that mirrors a fact has exactly the words of the dictionary")
  Stream<DynamicTest> mirrors() {
    return all().stream()
        .filter(one -> !one.input().fact().isEmpty())
        .filter(one -> !OWN_WORDS.containsKey(one.input().name()))
        .map(
            one ->
                dynamicTest(
                    one.place(),
                    () -> assertThat(one.input().words()).isEqualTo(words(one.input()))));
  }

  @Test
  @DisplayName("all methods with choices are looked at, and no exception is out of use")
  void coverage() {
    List<Found> all = all();

    assertThat(all)
        .extracting(one -> one.place().replaceFirst("\\..*", ""))
        .contains("BracketInputs", "EdgeInputs", "MonitoringInputs", "NeedleInput", "PileInputs");
    assertThat(all)
        .filteredOn(one -> OWN_WORDS.containsKey(one.input().name()))
        .allSatisfy(one -> assertThat(one.input().words()).isNotEqualTo(words(one.input())))
        .extracting(one -> one.input().name())
        .containsAll(OWN_WORDS.keySet());
  }

  @Test
  @DisplayName("a sheet that carries some load patterns only names patterns of the dictionary")
  void patterns() {
    assertThat(all())
        .filteredOn(one -> one.input().name().equals("load-pattern"))
        .hasSize(2)
        .allSatisfy(one -> assertThat(words(one.input())).containsAll(one.input().words()));
  }

  @Test
  @DisplayName("a yes or no of the dictionary is read as both words, a choice in its order")
  void words() {
    assertThat(WordInput.of("room", "room for braces", "bracingRoom").words())
        .containsExactly("yes", "no");
    WordInput life = WordInput.careful("life", "life of the support", "life");
    assertThat(life.words()).containsExactly("temporary", "permanent");
    assertThat(life.careful()).isTrue();
    assertThat(WordInput.of("life", "life of the support", "life").careful()).isFalse();
  }
}
