package underhold.report.html;

import static org.assertj.core.api.Assertions.assertThat;

import gg.jte.html.OwaspHtmlTemplateOutput;
import gg.jte.output.StringOutput;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import underhold.quantity.Seeds;

class FormulaMarkupTest {

  @Test
  @DisplayName("A symbol has its index lowered; words, pairs of capitals and Greek names have none")
  void indices() {
    assertThat(body("Wr")).isEqualTo("<i>W</i><sub>r</sub>");
    assertThat(body("l2")).isEqualTo("<i>l</i><sub>2</sub>");
    assertThat(body("Mcr")).isEqualTo("<i>M</i><sub>cr</sub>");
    assertThat(body("rts")).isEqualTo("<i>r</i><sub>ts</sub>");
    assertThat(body("Fb'")).isEqualTo("<i>F</i><sub>b</sub>'");
    assertThat(body("W")).isEqualTo("<i>W</i>");
    assertThat(body("cap")).isEqualTo("<i>cap</i>");
    assertThat(body("practice")).isEqualTo("<i>practice</i>");
    assertThat(body("OD")).isEqualTo("<i>OD</i>");
    assertThat(body("phi")).contains("greek phi").doesNotContain("<sub>");
  }

  @Test
  @DisplayName("A division is a fraction over all factors before it, and only over those")
  void fractions() {
    assertThat(halves("M = p × L^2 / 8")).containsExactly("p × L^2", "8");
    assertThat(halves("d = a × b / (c × t) × e")).containsExactly("a × b", "(c × t)");
    assertThat(halves("f = p × L / 8 × 6 / t")).containsExactly("p × L", "8", "6", "t");
    assertThat(halves("B = max(0, a / b + T)")).containsExactly("a", "b");
  }

  @Test
  @DisplayName(
      "A division by two divisors one after the other, and one inside brackets, stay in line")
  void inline() {
    assertThat(halves("r = S / 2 / Lb")).isEmpty();
    assertThat(halves("q = q0 × (1 + 1 / k)")).isEmpty();
    assertThat(plain(body("r = S / 2 / Lb"))).isEqualTo("r = S / 2 / Lb");
  }

  @Test
  @DisplayName("Powers are raised, roots have a bar, units are no symbols")
  void powersRootsUnits() {
    assertThat(body("L^2")).endsWith("<sup><span class=\"amount\">2</span></sup>");
    assertThat(body("sqrt(a × b)")).contains("class=\"root\"").contains("class=\"under\"");
    assertThat(body("(20.7 kPa) × (1.2 m)^2")).doesNotContain("<sub>").contains("20.7 kPa");
    assertThat(body("967.7 mm2")).contains("mm<sup>2</sup>");
    assertThat(halves("(95 kN/m) / (0.9 m)")).containsExactly("(95 kN/m)", "(0.9 m)");
  }

  @Test
  @DisplayName("The whole carries the plain formula as its label")
  void label() {
    assertThat(markup(FormulaMarkup.of("a < b"))).contains("aria-label=\"a &lt; b\"");
    assertThat(markup(FormulaMarkup.of("M = p × L^2 / 8")))
        .contains("role=\"math\"")
        .contains("aria-label=\"M = p × L^2 / 8\"");
  }

  @Test
  @DisplayName("Every formula of the sheets is understood, and without tags it is itself")
  void formulasOfTheSheets() throws IOException {
    List<String> formulas = formulasInSources();
    assertThat(formulas).hasSizeGreaterThan(200);
    for (String formula : formulas) {
      assertThat(FormulaParser.read(formula)).as(formula).isPresent();
      assertThat(plain(body(formula))).isEqualTo(formula);
      assertThat(plain(inside(markup(FormulaMarkup.inline(formula))))).isEqualTo(formula);
    }
  }

  @Test
  @DisplayName("What is not understood is set plainly and never lost")
  void hostile() {
    for (String text : HostileTexts.all()) {
      assertThat(plain(body(text))).isEqualTo(text);
    }
    assertThat(FormulaParser.read("see the note")).isEmpty();
    assertThat(FormulaParser.read("a = ")).isEmpty();
    assertThat(FormulaParser.read("a = (b")).isEmpty();
  }

  @Property(tries = 500, seed = Seeds.BUILD)
  @Label("Any text without its tags is itself")
  void anyText(@ForAll String text) {
    assertThat(plain(body(text))).isEqualTo(text);
  }

  /** Whole formulas between quotes in the sources of the sheets, their braces taken off. */
  private static List<String> formulasInSources() throws IOException {
    Pattern quoted = Pattern.compile("\"([A-Za-z][A-Za-z0-9']* = [^\"]*\\{[^\"]*)\"(?!\\s*\\+)");
    List<String> formulas = new ArrayList<>();
    try (Stream<Path> files = Files.walk(Path.of("src/main/java/underhold/sizing"))) {
      for (Path file : files.filter(each -> each.toString().endsWith(".java")).toList()) {
        Matcher matcher = quoted.matcher(Files.readString(file));
        while (matcher.find()) {
          String formula = matcher.group(1).replaceAll("[{}]", "");
          boolean whole =
              formula.chars().filter(each -> each == '(').count()
                  == formula.chars().filter(each -> each == ')').count();
          if (whole && !formula.endsWith(" ") && !formula.contains("\\")) {
            formulas.add(formula);
          }
        }
      }
    }
    return formulas;
  }

  private static String markup(FormulaMarkup formula) {
    StringOutput out = new StringOutput();
    formula.writeTo(new OwaspHtmlTemplateOutput(out));
    return out.toString();
  }

  /** What stands inside the outermost span. */
  private static String body(String formula) {
    return inside(markup(FormulaMarkup.of(formula)));
  }

  private static String inside(String markup) {
    return markup.substring(markup.indexOf("\">") + 2, markup.length() - "</span>".length());
  }

  private static List<String> halves(String formula) {
    List<String> halves = new ArrayList<>();
    Matcher half =
        Pattern.compile(
                "<span class=\"(?:up|down)\">(.*?)</span>(?=<span class=\"as\"> / |</span>)")
            .matcher(body(formula));
    while (half.find()) {
      halves.add(plain(half.group(1)));
    }
    return halves;
  }

  private static String plain(String markup) {
    return markup
        .replaceAll("<[^>]*>", "")
        .replace("&lt;", "<")
        .replace("&gt;", ">")
        .replace("&#34;", "\"")
        .replace("&#39;", "'")
        .replace("&amp;", "&");
  }
}
