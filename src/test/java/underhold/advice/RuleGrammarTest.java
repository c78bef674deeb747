package underhold.advice;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.StringLength;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import underhold.quantity.Seeds;
import underhold.site.FactDictionary;

/** A pack that breaks the grammar is refused with file, line and reason, and nothing of it runs. */
class RuleGrammarTest {
  private static final String FILE = "pits/load.drl";
  private static final String SOUND = BuiltInPack.text(FILE).orElseThrow();

  private final RulePackReader reader = new RulePackReader(FactDictionary.standard());

  @Test
  void the_built_in_pack_is_sound() {
    assertThat(reader.read(BuiltInPack::text)).isPresent();
    assertThat(reader.problems()).isEmpty();
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '¦',
      textBlock =
          """
          another import              ¦ import underhold.advice.ZoneFacts ¦ import java.lang.Runtime                              ¦ underhold.advice.ZoneFacts
          a second import             ¦ global underhold                  ¦ import java.io.File global underhold                  ¦ global
          a function                  ¦ rule "Pits suit                   ¦ function void f() {} rule "Pits suit                  ¦ rule
          code in the action          ¦ findings.speakFor("pits",         ¦ System.exit(1); findings.speakFor("pits",             ¦ findings
          a loop in the action        ¦ findings.speakFor("pits",         ¦ while (true) {} findings.speakFor("pits",             ¦ findings
          a second action             ¦ drools.getRule());                ¦ drools.getRule()); findings.ruleOut("pits", drools.getRule()); ¦ end
          another call in the action  ¦ drools.getRule());                ¦ drools.halt());                                       ¦ drools.getRule
          an eval                     ¦ loadPattern == "continuous",      ¦ eval(true),                                           ¦ ==
          a method call               ¦ loadPattern == "continuous",      ¦ loadPattern.length() == "9",                          ¦ ==
          a class loader trick        ¦ loadPattern == "continuous",      ¦ this.class.classLoader == "x",                        ¦ no fact
          an unknown fact             ¦ loadPattern == "continuous",      ¦ loadPatern == "continuous",                           ¦ no fact loadPatern
          an unknown word             ¦ loadPattern == "continuous",      ¦ loadPattern == "continous",                           ¦ no value continous
          a negation                  ¦ loadPattern == "continuous",      ¦ loadPattern != "continuous",                          ¦ '!'
          an or                       ¦ loadPattern == "continuous",      ¦ loadPattern == "continuous" || loadPattern == "area", ¦ the character
          arithmetic                  ¦ limit("pit-wall-load")            ¦ limit("pit-wall-load") * 2                            ¦ '*'
          a number                    ¦ limit("pit-wall-load")            ¦ 250                                                   ¦ limit
          an unknown limit            ¦ limit("pit-wall-load")            ¦ limit("pit-wall-lode")                                ¦ no limit pit-wall-lode
          a limit of another measure  ¦ limit("pit-wall-load")            ¦ limit("pit-width")                                    ¦ measures another thing
          an amount as a word         ¦ lineLoad > limit("pit-wall-load") ¦ lineLoad == "250"                                     ¦ amount
          a word as an amount         ¦ loadPattern == "continuous",      ¦ loadPattern > limit("pit-width"),                     ¦ word
          another pattern             ¦ ZoneFacts(                        ¦ Limit(                                                ¦ ZoneFacts
          a binding                   ¦ ZoneFacts(                        ¦ $z : ZoneFacts(                                       ¦ '$'
          salience                    ¦ agenda-group "screen"             ¦ salience 10 agenda-group "screen"                     ¦ agenda-group
          a phase of its own          ¦ agenda-group "screen"             ¦ agenda-group "mine"                                   ¦ derive, screen, confirm or settle
          a header of its own         ¦ @cause("load pattern")            ¦ @cause("load pattern") @timer("1")                    ¦ @timer
          a header twice              ¦ @cause("load pattern")            ¦ @cause("load pattern") @cause("x")                    ¦ twice
          no header                   ¦ @cause("load pattern")            ¦ @hold("always")                                       ¦ @cause is missing
          an unknown basis            ¦ @basis("common practice")         ¦ @basis("hearsay")                                     ¦ @basis
          an unknown source           ¦ @source("")                       ¦ @source("my-uncle")                                   ¦ no source my-uncle
          an unknown strength         ¦ "moderate", drools                ¦ "huge", drools                                        ¦ strength
          an unknown option           ¦ findings.speakFor("pits",         ¦ findings.speakFor("pitz",                             ¦ no option pitz
          an unknown verb             ¦ findings.speakFor(                ¦ findings.destroy(                                     ¦ no action
          deriving in the wrong phase ¦ findings.speakFor("pits", "moderate" ¦ findings.derive("undermined", "yes"                ¦ derive
          a broken string             ¦ @basis("common practice")         ¦ @basis("common practice                               ¦ line break
          a backslash                 ¦ @basis("common practice")         ¦ @basis("common\\u0020practice")                       ¦ backslash
          a placeholder for nothing   ¦ The load is {loadPattern}         ¦ The load is {loadPatern}                              ¦ {loadPatern}
          a dialect                   ¦ rule "Pits suit                   ¦ dialect "mvel" rule "Pits suit                        ¦ rule
          a query                     ¦ rule "Pits suit                   ¦ query q() end rule "Pits suit                         ¦ rule
          a declared type             ¦ rule "Pits suit                   ¦ declare T end rule "Pits suit                         ¦ rule
          """)
  @DisplayName("refuses")
  void refuses(String what, String find, String put, String reason) {
    assertThat(SOUND).as("the sound file holds the text to be broken").contains(find);
    List<PackProblem> problems =
        problems(
            SOUND.replaceFirst(
                java.util.regex.Pattern.quote(find),
                java.util.regex.Matcher.quoteReplacement(put)));
    assertThat(problems).isNotEmpty();
    assertThat(problems)
        .anySatisfy(
            problem -> {
              assertThat(problem.file()).isEqualTo(FILE);
              assertThat(problem.line()).isPositive();
              assertThat(problem.message()).contains(reason);
            });
  }

  @Test
  void names_the_line_of_the_mistake() {
    String broken = SOUND.replaceFirst("limit\\(\"pit-wall-load\"\\)", "250");
    int line = (int) broken.substring(0, broken.indexOf("> 250")).lines().count();
    assertThat(problems(broken)).extracting(PackProblem::line).contains(line);
  }

  @Test
  void refuses_the_same_id_twice_also_across_files() {
    String copied = SOUND.replaceFirst("@id\\(\"PIT-26\"\\)", "@id(\"PIT-23\")");
    assertThat(reader.read(files(copied))).isEmpty();
    assertThat(reader.problems())
        .anyMatch(problem -> problem.message().contains("the id PIT-23 stands already in"));
  }

  @Test
  void tells_all_problems_of_content_at_once() {
    String broken = SOUND.replace("@basis(\"published\")", "@basis(\"rumour\")");
    assertThat(problems(broken).size()).isGreaterThan(3);
  }

  @Property(tries = 500, seed = Seeds.BUILD)
  void never_breaks_on_any_text(@ForAll @StringLength(max = 300) String text) {
    reader.read(files(text));
    assertThat(reader.problems()).isNotEmpty();
  }

  private List<PackProblem> problems(String text) {
    assertThat(reader.read(files(text))).isEmpty();
    return reader.problems();
  }

  private static RulePackReader.Files files(String text) {
    return name -> name.equals(FILE) ? Optional.of(text) : BuiltInPack.text(name);
  }
}
