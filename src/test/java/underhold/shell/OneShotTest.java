package underhold.shell;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * One command in a process of its own: what it loads, and that the number of processors changes
 * nothing.
 */
class OneShotTest {
  private static final String SITE = "cases/demo/three-bridges-interchange.site.json";

  @TempDir Path folder;

  /** What the command prints on so many processors. */
  private String printed(int processors, String... words) throws IOException, InterruptedException {
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.addAll(
        List.of(
            "-XX:TieredStopAtLevel=1",
            "-Xlog:class+load:file=" + folder.resolve("classes" + processors),
            "-XX:ActiveProcessorCount=" + processors,
            "-cp",
            System.getProperty("java.class.path"),
            "underhold.shell.Underhold"));
    command.addAll(List.of(words));
    Path out = folder.resolve("out" + processors);
    ProcessBuilder builder =
        new ProcessBuilder(command).redirectErrorStream(true).redirectOutput(out.toFile());
    builder.environment().remove("JAVA_TOOL_OPTIONS");
    assertThat(builder.start().waitFor()).isZero();
    return Files.readString(out);
  }

  @Test
  void an_advice_is_the_same_with_one_processor_and_with_four_and_loads_nothing_of_reports()
      throws Exception {
    String alone = printed(1, "advise", SITE, "--json");

    assertThat(printed(4, "advise", SITE, "--json")).isEqualTo(alone);

    List<String> loaded =
        Files.readAllLines(folder.resolve("classes1")).stream()
            .map(line -> line.replaceFirst("^\\S+ ", ""))
            .toList();
    assertThat(loaded).anyMatch(name -> name.startsWith("underhold.advice."));
    assertThat(loaded)
        .noneMatch(name -> name.matches("(java\\.awt|javax\\.swing|javax\\.imageio)\\..*"))
        .noneMatch(name -> name.matches("(org\\.apache\\.(pdfbox|fontbox|batik)|org\\.jfree)\\..*"))
        .noneMatch(name -> name.matches("(com\\.openhtmltopdf|gg\\.jte|ch\\.qos\\.logback)\\..*"))
        .noneMatch(name -> name.startsWith("org.springframework.boot."))
        .noneMatch(name -> name.startsWith("org.drools."));
  }

  /** Its parts are drawn, judged and written by whatever threads there are. */
  @Test
  void a_report_is_the_same_with_one_processor_and_with_four() throws Exception {
    String alone = printed(1, "report", "cases/demo/alder-row-party-wall.site.json");

    assertThat(alone).contains("## Sources");

    assertThat(printed(4, "report", "cases/demo/alder-row-party-wall.site.json")).isEqualTo(alone);
  }

  @Test
  void the_way_back_is_the_same_with_one_processor_and_with_four() throws Exception {
    String alone = printed(1, "why-not", "needles", SITE);

    assertThat(alone).startsWith("Three Bridges").doesNotContain("SLF4J");

    assertThat(printed(4, "why-not", "needles", SITE)).isEqualTo(alone);
  }

  /** Java orders its immutable sets anew in every process: no draw may hang on that order. */
  @Test
  void an_audit_is_the_same_in_every_process() throws Exception {
    String[] words = {"rules", "audit", "--section", "unreachable"};
    String first = printed(1, words);

    assertThat(first).contains("unreachable");

    assertThat(printed(4, words)).isEqualTo(first);
  }
}
