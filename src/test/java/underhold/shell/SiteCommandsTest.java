package underhold.shell;

import static org.assertj.core.api.Assertions.assertThat;
import static underhold.shell.ShellClient.file;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.json.JsonMapper;
import underhold.shell.ShellClient.Ran;

/** Making and changing a site by hand; the sites are our own cases. */
class SiteCommandsTest {
  @TempDir Path folder;

  private String path(String name) {
    return folder.resolve(name).toString();
  }

  private static String text(String file) throws IOException {
    return Files.readString(Path.of(file));
  }

  @Test
  void a_site_grows_from_nothing_to_advice_by_single_commands() throws IOException {
    ShellClient shell = ShellClient.oneShot();
    String file = path("dock.site.json");

    assertThat(shell.run("site", "new", file, "--name", "Dock Row", "--zone", "wall").code())
        .isZero();
    assertThat(shell.run("site", "check", file).err()).contains("load pattern must be known");
    assertThat(shell.run("site", "check", file).code()).isEqualTo(Exit.SITE);
    assertThat(shell.run("site", "set", "loadPattern=continuous", "--site", file).code()).isZero();
    Ran set =
        shell.run(
            "site", "set", "excavationPosition=beside", "gapToExcavation=0.6", "m", "--site", file);
    assertThat(set.code()).as(set.err()).isZero();
    assertThat(shell.run("site", "check", file).out()).isEqualTo("No problems.\n");
    assertThat(shell.run("advise", file).code()).isZero();
    assertThat(text(file)).contains("\"gapToExcavation\": \"0.6 m\"");

    assertThat(shell.run("site", "clear", "gapToExcavation", "--site", file).code()).isZero();
    assertThat(text(file)).doesNotContain("gapToExcavation");
    assertThat(shell.run("site", "zone", "column B4", "--site", file).code()).isZero();
    assertThat(text(file)).contains("column B4");
    assertThat(shell.run("site", "set", "foundingDepth=2 m", "--site", file).err())
        .contains("stated zone by zone", "wall, column B4");
    assertThat(
            shell
                .run("site", "set", "foundingDepth=2 m", "--site", file, "--zone", "Column b4")
                .code())
        .isZero();

    assertThat(
            shell
                .run("site", "set", "foundingDepth=\"3 m\"", "--zone", "wall", "--site", file)
                .code())
        .isZero();
    assertThat(text(file)).contains("\"foundingDepth\": \"3 m\"");
    assertThat(shell.run("site", "unzone", "column b4", "--site", file).code()).isZero();
    assertThat(text(file)).doesNotContain("column B4").contains("wall");
    Ran last = shell.run("site", "unzone", "wall", "--site", file);
    assertThat(last.code()).isEqualTo(Exit.SITE);
    assertThat(last.err()).contains("at least one zone");
  }

  @Test
  void the_first_amount_typed_gives_the_site_its_units() throws IOException {
    ShellClient shell = ShellClient.oneShot();
    String file = path("feet.site.json");

    assertThat(shell.run("site", "new", file, "--name", "Feet").code()).isZero();
    assertThat(text(file)).contains("\"units\": \"SI\"");
    Ran word = shell.run("site", "set", "loadPattern=continuous", "--site", file);
    assertThat(word.code()).as(word.err()).isZero();
    assertThat(text(file)).as("a word has no units").contains("\"units\": \"SI\"");

    Ran feet = shell.run("site", "set", "excavationDepth=10 ft", "--site", file);
    assertThat(feet.code()).as(feet.err()).isZero();
    assertThat(text(file)).contains("\"units\": \"US\"", "\"excavationDepth\": \"10 ft\"");

    Ran metres = shell.run("site", "set", "foundingDepth=1 m", "--site", file);
    assertThat(metres.code()).as(metres.err()).isZero();
    assertThat(text(file)).contains("\"units\": \"US\"", "\"foundingDepth\": \"1 m\"");
  }

  @Test
  void of_amounts_typed_together_the_first_gives_the_units() throws IOException {
    ShellClient shell = ShellClient.oneShot();
    String file = path("metres.site.json");
    assertThat(shell.run("site", "new", file, "--name", "Metres").code()).isZero();

    Ran both =
        shell.run("site", "set", "foundingDepth=1 m", "excavationDepth=10 ft", "--site", file);

    assertThat(both.code()).as(both.err()).isZero();
    assertThat(text(file)).contains("\"units\": \"SI\"");
  }

  @Test
  void layers_typed_in_feet_keep_the_site_in_feet() throws IOException {
    String file =
        file(
            folder,
            "layers.site.json",
            """
            { "underhold": "site/1", "name": "Layers", "units": "US",
              "ground": { "layers": [ { "top": "0 ft", "soil": "dense-sand" },
                                      { "top": "20 ft", "soil": "rock" } ] },
              "zones": [ { "name": "wall", "facts": { "loadPattern": "continuous",
                           "excavationPosition": "beside" } } ] }
            """);

    Ran ran = ShellClient.oneShot().run("site", "set", "foundingDepth=1 m", "--site", file);

    assertThat(ran.code()).as(ran.err()).isZero();
    assertThat(text(file)).contains("\"units\": \"US\"");
  }

  @Test
  void a_file_that_is_there_is_not_written_over() throws IOException {
    String file = file(folder, "yard.site.json", ShellClient.SITE);

    Ran ran = ShellClient.oneShot().run("site", "new", file, "--name", "Other");

    assertThat(ran.code()).isEqualTo(Exit.SITE);
    assertThat(text(file)).isEqualTo(ShellClient.SITE);
  }

  @Test
  void a_value_that_is_none_changes_nothing() throws IOException {
    String file = file(folder, "yard.site.json", ShellClient.SITE);
    ShellClient shell = ShellClient.oneShot();

    assertThat(shell.run("site", "set", "groundWaterDepth=7", "--site", file).code())
        .isEqualTo(Exit.SITE);
    assertThat(shell.run("site", "set", "groundWaterDepth=7", "--site", file).err())
        .contains("has no unit");
    assertThat(shell.run("site", "set", "pitDepth=3 m", "--site", file).err())
        .contains("never stated");
    assertThat(shell.run("site", "set", "groundWater=7 m", "--site", file).code())
        .isEqualTo(Exit.USAGE);
    assertThat(shell.run("site", "set", "7", "--site", file).err()).contains("not FACT=VALUE");
    assertThat(text(file)).isEqualTo(ShellClient.SITE);
  }

  @Test
  void a_contradiction_is_named_and_changes_nothing() throws IOException {
    String file = file(folder, "yard.site.json", ShellClient.SITE);

    Ran ran =
        ShellClient.oneShot()
            .run(
                "site",
                "set",
                "excavationBelowFooting=9 m",
                "--zone",
                "party wall",
                "--site",
                file);

    assertThat(ran.code()).isEqualTo(Exit.SITE);
    assertThat(ran.err()).contains("9 m", "Nothing was changed");
    assertThat(text(file)).isEqualTo(ShellClient.SITE);
  }

  @Test
  void problems_can_be_read_as_json() {
    String file = file(folder, "bad.site.json", "{ \"underhold\": \"site/1\", \"name\": \"X\" }");

    Ran ran = ShellClient.oneShot().run("site", "check", file, "--json");

    assertThat(ran.code()).isEqualTo(Exit.SITE);
    assertThat(
            JsonMapper.shared().readTree(ran.out()).get("problems").get(0).get("code").asString())
        .isEqualTo("MISSING_REQUIRED");
  }

  @Test
  void the_schema_is_printed_as_json() {
    assertThat(
            JsonMapper.shared()
                .readTree(ShellClient.oneShot().run("site", "schema").out())
                .propertyNames())
        .contains("$schema", "properties");
  }

  @Test
  void show_gives_what_is_stated_and_what_follows() {
    String file = file(folder, "yard.site.json", ShellClient.SITE);
    ShellClient shell = ShellClient.oneShot();

    assertThat(shell.run("site", "show", file).out())
        .contains("Zone: party wall", "gapToExcavation          0.3 m")
        .contains("follows: 2.4 m");
    assertThat(JsonMapper.shared().readTree(shell.run("site", "show", file, "--json").out()))
        .isEqualTo(JsonMapper.shared().readTree(ShellClient.SITE));
  }

  @Test
  void the_shell_keeps_a_site_open_and_lets_no_change_go_unasked() throws IOException {
    String file = file(folder, "yard.site.json", ShellClient.SITE);
    String other = file(folder, "other.site.json", ShellClient.SITE);

    Ran ran =
        ShellClient.interactive(
                "advise",
                "site open " + file,
                "site set heritage=listed",
                "site open " + other,
                "exit",
                "site save",
                "why pits --zone \"party wall\"",
                "exit",
                "version")
            .loop();

    assertThat(ran.err())
        .contains("No site is open.")
        .contains("Cooper's Yard is open: party wall, corner column.")
        .contains("Changed, not saved yet")
        .contains("are not saved.")
        .contains("is saved.");
    assertThat(ran.out()).contains("Why underpinning pits").doesNotContain("rule pack\n");
    assertThat(text(file)).contains("\"heritage\": \"listed\"");
  }

  @Test
  void the_end_of_the_input_names_changes_that_were_not_saved() {
    String file = file(folder, "yard.site.json", ShellClient.SITE);

    Ran ran =
        ShellClient.interactive("site open " + file, "site set heritage=listed", "say \"hello")
            .loop();

    assertThat(ran.err())
        .contains("A quotation mark is not closed.")
        .contains("Changes to " + file + " were not saved.");
  }
}
