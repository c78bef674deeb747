package underhold.advice;

import com.fasterxml.jackson.annotation.JsonProperty;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import tools.jackson.core.JacksonException;
import tools.jackson.core.StreamReadFeature;
import tools.jackson.databind.DeserializationFeature;
import tools.jackson.databind.json.JsonMapper;

/**
 * The cases of one rule.
 *
 * @param rule the id of the rule
 * @param cases the sites on which it is tried
 */
record RuleCaseFile(
    @JsonProperty(required = true) String rule,
    @JsonProperty(required = true) List<RuleCase> cases) {
  private static final Path FOLDER = Path.of("cases", "rules");

  private static final JsonMapper MAPPER =
      JsonMapper.builder()
          .enable(DeserializationFeature.FAIL_ON_UNKNOWN_PROPERTIES)
          .disable(DeserializationFeature.FAIL_ON_NULL_FOR_PRIMITIVES)
          .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
          .build();

  RuleCaseFile {
    cases = List.copyOf(cases);
  }

  /** All files of cases, by their path below the folder of cases: {@code pits/PIT-01.json}. */
  static Map<String, RuleCaseFile> all() {
    try (Stream<Path> paths = Files.walk(FOLDER)) {
      Map<String, RuleCaseFile> files = new TreeMap<>();
      for (Path path : paths.filter(Files::isRegularFile).toList()) {
        files.put(FOLDER.relativize(path).toString().replace('\\', '/'), read(path));
      }
      return files;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Where the cases of a rule belong: in the folder in which the rule stands, under its id. */
  static String path(Rule rule) {
    return folder(rule.file()) + '/' + rule.id() + ".json";
  }

  /** The folder of a path. */
  static String folder(String path) {
    return path.substring(0, Math.max(0, path.lastIndexOf('/')));
  }

  private static RuleCaseFile read(Path path) throws IOException {
    try {
      return MAPPER.readValue(Files.readString(path), RuleCaseFile.class);
    } catch (JacksonException e) {
      throw new IllegalArgumentException(path + ": " + e.getOriginalMessage(), e);
    }
  }
}
