package underhold.shell;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import underhold.advice.PackFolder;
import underhold.advice.RulePack;
import underhold.review.audit.Accepted;
import underhold.review.audit.AuditNotes;
import underhold.shell.ShellClient.Ran;

/** A pack of the user's own: audited by its own notes, rechecked against, kept to in the shell. */
class OwnPackTest {
  private static final ShellClient SHELL = ShellClient.oneShot();
  private static final String RULE =
      """
      package rules.own
      import underhold.advice.ZoneFacts
      global underhold.advice.FindingSink findings

      rule "Where nothing is dug and ground is lost needles are wanted."
        @id("OWN-1")
        @basis("judgement")
        @source("")
        @because("The excavation is {excavationPosition}.")
        @cause("load pattern")
        agenda-group "screen"
      when
        ZoneFacts( excavationPosition == "no-excavation", undermined == "yes" )
      then
        findings.speakFor("needles", "minor", drools.getRule());
      end
      """;

  @TempDir Path folder;

  @Test
  @DisplayName("The audit of an own pack finds the dead rule that it adds, and ends with 1")
  void an_own_dead_rule_is_found() throws IOException {
    String pack = pack("\"files\": [\"own.drl\"]", "own.drl", RULE);
    Ran ran = SHELL.run("rules", "audit", "--section", "unreachable", "--rules", pack);
    assertThat(ran.out()).as(ran.err()).contains("OWN-1", "1 OPEN");
    assertThat(ran.code()).isEqualTo(1);
  }

  @Test
  @DisplayName("Acceptances of ours hold on beside a small pack, but not for a rule it takes away")
  void acceptances_follow_the_rules() throws IOException {
    RulePack pack = read(pack("\"remove\": [\"MPB-14b\"]", "note.txt", ""));
    List<Accepted> accepted = AuditNotes.of(pack, name -> Optional.empty()).accepted();
    assertThat(accepted)
        .flatExtracting(Accepted::findings)
        .contains(Set.of("MPB-02", "MPB-14a"), Set.of("NON-04a", "NON-12a"))
        .doesNotContain(Set.of("MPB-02", "MPB-14b"));
  }

  @Test
  @DisplayName("What cannot be read in the notes of an own pack is told, each by its file")
  void own_notes_that_cannot_be_read_are_told() throws IOException {
    String pack = pack("\"files\": []", "audit.json", "{ \"acepted\": [] }");
    Files.writeString(folder.resolve("own/expectations.json"), "{ \"expectations\": [");
    AuditNotes notes = AuditNotes.of(read(pack), PackFolder.files(Path.of(pack)));
    assertThat(notes.problems())
        .anySatisfy(one -> assertThat(one).startsWith("audit.json has no list \"accepted\""))
        .anySatisfy(one -> assertThat(one).contains("audit.json", "acepted"))
        .anySatisfy(one -> assertThat(one).startsWith("expectations.json is not readable JSON"));
  }

  @Test
  @DisplayName("A saved consultation is rechecked by another limit, which the answer names")
  void recheck_takes_other_rules() {
    String saved = folder.resolve("a.advice.json").toString();
    String site = "cases/demo/alder-row-party-wall.site.json";
    assertThat(SHELL.run("advise", site, "--save", saved).code()).isZero();
    Ran ran = SHELL.run("recheck", saved, "--limit", "berm-width=2.5 m");
    assertThat(ran.out()).as(ran.err()).contains("berm-width", "2.5 m");
    assertThat(SHELL.run("recheck", saved).out()).contains("Identical").doesNotContain("2.5 m");
  }

  private RulePack read(String pack) {
    return PackFolder.read(Path.of(pack), pack)
        .fold(
            read -> read,
            problems -> {
              throw new IllegalStateException(problems.toString());
            });
  }

  private String pack(String entries, String file, String text) throws IOException {
    Path own = Files.createDirectories(folder.resolve("own"));
    Files.writeString(
        own.resolve("pack.json"),
        "{ \"name\": \"Own\", \"version\": \"1\", \"extends\": \"built-in\", " + entries + " }");
    Files.writeString(own.resolve(file), text);
    return own.toString();
  }
}
