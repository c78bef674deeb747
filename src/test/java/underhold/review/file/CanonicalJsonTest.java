package underhold.review.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import underhold.quantity.Seeds;

/** The canonical text of trees, held against the examples of its standard. */
class CanonicalJsonTest {
  @ParameterizedTest(name = "{0} is {1}")
  @DisplayName(
      "RFC 8785, appendix B: numbers as IEEE 754 bits and their text (from memory, verify)")
  @CsvSource({
    "0000000000000000,0",
    "8000000000000000,0",
    "0000000000000001,5e-324",
    "8000000000000001,-5e-324",
    "7fefffffffffffff,1.7976931348623157e+308",
    "ffefffffffffffff,-1.7976931348623157e+308",
    "4340000000000000,9007199254740992",
    "c340000000000000,-9007199254740992",
    "4430000000000000,295147905179352830000",
    "44b52d02c7e14af5,9.999999999999997e+22",
    "44b52d02c7e14af6,1e+23",
    "44b52d02c7e14af7,1.0000000000000001e+23",
    "444b1ae4d6e2ef4e,999999999999999700000",
    "444b1ae4d6e2ef4f,999999999999999900000",
    "444b1ae4d6e2ef50,1e+21",
    "3eb0c6f7a0b5ed8c,9.999999999999997e-7",
    "3eb0c6f7a0b5ed8d,0.000001",
    "41b3de4355555553,333333333.3333332",
    "41b3de4355555554,333333333.33333325",
    "41b3de4355555555,333333333.3333333",
    "41b3de4355555556,333333333.3333334",
    "41b3de4355555557,333333333.33333343",
    "becbf647612f3696,-0.0000033333333333333333"
  })
  void numbers(String bits, String text) {
    double value = Double.longBitsToDouble(Long.parseUnsignedLong(bits, 16));
    assertThat(CanonicalJson.number(value)).isEqualTo(text);
  }

  @Property(tries = 2000, seed = Seeds.BUILD)
  @Label("every number comes back from its text")
  void numbers_come_back(@ForAll long bits) {
    double value = Double.longBitsToDouble(bits);
    if (Double.isFinite(value)) {
      assertThat(Double.parseDouble(CanonicalJson.number(value))).isEqualTo(value + 0.0);
    }
  }

  @Test
  @DisplayName("RFC 8785, 3.2.3: names in the order of their UTF-16 units (from memory, verify)")
  void names_in_order() {
    Map<String, Object> tree = new LinkedHashMap<>();
    tree.put("\u20ac", "Euro Sign");
    tree.put("\r", "Carriage Return");
    tree.put("\ufb33", "Hebrew Letter Dalet With Dagesh");
    tree.put("1", "One");
    tree.put("\ud83d\ude00", "Emoji: Grinning Face");
    tree.put("\u0080", "Control");
    tree.put("\u00f6", "Latin Small Letter O With Diaeresis");
    assertThat(CanonicalJson.of(tree))
        .isEqualTo(
            "{\"\\r\":\"Carriage Return\",\"1\":\"One\",\"\u0080\":\"Control\","
                + "\"\u00f6\":\"Latin Small Letter O With Diaeresis\",\"\u20ac\":\"Euro Sign\","
                + "\"\ud83d\ude00\":\"Emoji: Grinning Face\","
                + "\"\ufb33\":\"Hebrew Letter Dalet With Dagesh\"}");
  }

  @Test
  @DisplayName("RFC 8785, 3.2.2.2: short escapes where there are any, else lower-case hexadecimal")
  void escapes() {
    assertThat(CanonicalJson.of(List.of("\u20ac$\u000f\nA'B\"\\\\\"/", true, List.of(), Map.of())))
        .isEqualTo("[\"\u20ac$\\u000f\\nA'B\\\"\\\\\\\\\\\"/\",true,[],{}]");
  }

  @Test
  void half_a_character_has_no_text() {
    assertThatThrownBy(() -> CanonicalJson.of("\ud83d"))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> CanonicalJson.of(Double.NaN))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  @DisplayName("FIPS 180-4, example: SHA-256 of abc")
  void fingerprint() {
    assertThat(Fingerprint.of("abc"))
        .isEqualTo("ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
  }
}
