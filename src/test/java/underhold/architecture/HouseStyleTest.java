package underhold.architecture;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What the house holds its own files to. */
class HouseStyleTest {
  private static final int LONGEST_FILE_LINES = 400;
  private static final int LONGEST_RULE_FILE_LINES = 450;

  @Test
  void the_top_level_holds_only_what_it_should() throws IOException {
    Set<String> allowed =
        Set.of("pom.xml", "README.md", "DEVELOPERS.md", "src", "rules", "cases", "target");
    try (Stream<Path> entries = Files.list(Path.of("."))) {
      assertThat(entries.map(path -> path.getFileName().toString()).filter(n -> !n.startsWith(".")))
          .isSubsetOf(allowed);
    }
  }

  @Test
  void no_source_file_is_longer_than_a_reader_bears() {
    assertThat(files("src/main/java", ".java"))
        .isNotEmpty()
        .allSatisfy(
            file ->
                assertThat(lines(file))
                    .as(file.toString())
                    .hasSizeLessThanOrEqualTo(LONGEST_FILE_LINES));
    assertThat(files("rules", ".drl"))
        .isNotEmpty()
        .allSatisfy(
            file ->
                assertThat(lines(file))
                    .as(file.toString())
                    .hasSizeLessThanOrEqualTo(LONGEST_RULE_FILE_LINES));
  }

  /** jqwik passes over in silence a property that carries JUnit's display name. */
  @Test
  void properties_are_named_by_label() {
    Pattern passedOver =
        Pattern.compile(
            "@Property[^{}]*@DisplayName[^{}]*\\)\\s*\\{|@DisplayName\\([^)]*\\)\\s*@Property");
    assertThat(files("src/test/java", ".java"))
        .filteredOn(file -> !file.endsWith("HouseStyleTest.java"))
        .isNotEmpty()
        .allSatisfy(
            file ->
                assertThat(passedOver.matcher(String.join("\n", lines(file))).find())
                    .as(file.toString())
                    .isFalse());
  }

  /** A build that passed passes again: see {@link underhold.quantity.Seeds}. */
  @Test
  void properties_begin_from_the_one_seed() {
    Pattern unseeded = Pattern.compile("@Property(?!\\([^)]*seed = Seeds\\.BUILD)");
    assertThat(files("src/test/java", ".java"))
        .filteredOn(file -> !file.endsWith("HouseStyleTest.java"))
        .isNotEmpty()
        .allSatisfy(
            file ->
                assertThat(unseeded.matcher(String.join("\n", lines(file))).find())
                    .as(file.toString())
                    .isFalse());
  }

  @Test
  void every_package_says_what_it_is_for_and_is_null_marked() {
    Set<Path> folders =
        files("src/main/java", ".java").stream()
            .map(Path::getParent)
            .collect(java.util.stream.Collectors.toSet());
    assertThat(folders)
        .isNotEmpty()
        .allSatisfy(
            folder -> {
              Path info = folder.resolve("package-info.java");
              assertThat(info).exists();
              assertThat(String.join("\n", lines(info))).contains("@NullMarked").contains("/**");
            });
  }

  private static List<Path> files(String folder, String ending) {
    try (Stream<Path> walk = Files.walk(Path.of(folder))) {
      return walk.filter(path -> path.toString().endsWith(ending)).toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static List<String> lines(Path file) {
    try {
      return Files.readAllLines(file);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
