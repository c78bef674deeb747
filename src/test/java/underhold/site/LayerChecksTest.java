package underhold.site;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Facts that the stated layers of the ground, or each other, exclude. */
class LayerChecksTest {
  @TempDir static Path folder;

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        // clay from 0.9 m, rock from 8 m, footing at 1 m: rock lies 7 m below the footing
        "rockDepth | 0 m | but the layer there is",
        "rockDepth | 3 m | but the layer there is",
        "rockDepth | 7 m | ''",
        "rockDepth | 9 m | from the other facts it is",
        "undrainedStrength | 60 kPa | ''",
      })
  void rock_lies_where_the_layers_say(String fact, String value, String expected)
      throws IOException {
    String layers =
        """
        {"soil": "fill", "top": "0 m"}, {"soil": "stiff-clay", "top": "0.9 m"}, {"soil": "rock", "top": "8 m"}""";

    told(problems(layers, '"' + fact + "\": \"" + value + '"'), expected);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "\"undrainedStrength\": \"60 kPa\" | but no layer of the ground is clay",
        "\"rockDepth\": \"0 m\" | soil at the footing",
        "\"rockDepth\": \"12 m\" | ''",
        "\"rockDepth\": \"4 m\", \"bearingDepth\": \"6 m\" | good bearing does not lie below rock",
        "\"rockDepth\": \"6 m\", \"bearingDepth\": \"6 m\" | ''",
      })
  void sand_has_no_strength_of_clay_and_bearing_is_not_below_rock(String facts, String expected)
      throws IOException {
    told(problems("{\"soil\": \"dense-sand\", \"top\": \"0 m\"}", facts), expected);
  }

  private static void told(List<SiteProblem> problems, String expected) {
    if (expected.isEmpty()) {
      assertThat(problems).isEmpty();
    } else {
      assertThat(problems.stream().map(SiteProblem::text)).anyMatch(t -> t.contains(expected));
    }
  }

  private static List<SiteProblem> problems(String layers, String facts) throws IOException {
    Path file = folder.resolve("layers.site.json");
    Files.writeString(
        file,
        """
        { "underhold": "site/1", "name": "Layers", "ground": { "layers": [%s] },
          "zones": [ { "name": "wall", "facts": { "loadPattern": "continuous",
            "excavationPosition": "beside", "foundingDepth": "1 m", %s } } ] }
        """
            .formatted(layers, facts));
    return SiteReader.read(file).fold(valid -> List.of(), invalid -> invalid.problems());
  }
}
