package underhold.review.audit;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import underhold.advice.RulePack;
import underhold.advice.RulePackReader;
import underhold.site.FactDictionary;

/** A small sound pack of our own, to be broken in one place at a time. */
final class SmallPack {
  private static final String HEAD =
      """
      package small
      import underhold.advice.ZoneFacts
      global underhold.advice.FindingSink findings
      """;

  private final Map<String, String> rules = new LinkedHashMap<>();

  private SmallPack() {}

  /** Every option is spoken for; two depths speak against pits; one fact is derived. */
  static SmallPack sound() {
    return new SmallPack()
        .rule(
            "D-1",
            "derivation",
            "derive",
            "excavationPosition in (\"partly-under\", \"wholly-under\", \"crosses-support\")",
            "derive(\"undermined\", \"yes\"")
        .rule(
            "D-2",
            "derivation",
            "derive",
            "excavationPosition in (\"beside\", \"inside-walls\", \"no-excavation\")",
            "derive(\"undermined\", \"no\"")
        .rule(
            "A-1",
            "load pattern",
            "screen",
            "loadPattern == \"continuous\"",
            "speakFor(\"pits\", \"major\"")
        .rule(
            "A-2",
            "load pattern",
            "screen",
            "loadPattern == \"concentrated\"",
            "speakFor(\"needles\", \"major\"")
        .rule(
            "A-3",
            "load pattern",
            "screen",
            "loadPattern == \"area\"",
            "speakFor(\"drilled-piles\", \"major\"")
        .rule(
            "A-4",
            "load pattern",
            "screen",
            "loadPattern == \"cantilevered-edge\"",
            "speakFor(\"bracket-piles\", \"major\"")
        .rule(
            "A-5",
            "rock",
            "screen",
            "rockJoints == \"adverse\"",
            "speakFor(\"edge-pits\", \"decisive\"")
        .rule(
            "A-6",
            "excavation wall",
            "screen",
            "excavationWall == \"stiff-watertight\"",
            "speakFor(\"monitor\", \"decisive\"")
        .rule("A-7", "last resort", "settle", "ordinaryOptionsLeft == \"no\"", "refer(\"decisive\"")
        .rule(
            "A-8",
            "condition",
            "screen",
            "structureCondition == \"dangerous\"",
            "refer(\"decisive\"")
        .rule("O-1", "position", "screen", "undermined == \"yes\"", "ruleOut(\"monitor\"")
        .rule(
            "T-1",
            "depth",
            "screen",
            "pitDepth > limit(\"easy\"), pitDepth <= limit(\"deep\")",
            "against(\"pits\", \"moderate\"")
        .rule("T-2", "depth", "screen", "pitDepth > limit(\"deep\")", "against(\"pits\", \"major\"")
        .rule(
            "C-1", "programme", "screen", "wetSeason == \"yes\"", "caution(\"any\", \"moderate\"");
  }

  /** The pack with one rule more, or in place of the one of that id. */
  SmallPack rule(String id, String cause, String phase, String conditions, String action) {
    rules.put(
        id,
        """
        rule "The rule %s of a small pack."
          @id("%s")
          @basis("judgement")
          @source("")
          @because("So it is.")
          @cause("%s")
          agenda-group "%s"
        when
          ZoneFacts( %s )
        then
          findings.%s, drools.getRule());
        end
        """
            .formatted(id, id, cause, phase, conditions, action));
    return this;
  }

  SmallPack without(String id) {
    rules.remove(id);
    return this;
  }

  RulePack pack() {
    RulePackReader reader = new RulePackReader(FactDictionary.standard());
    return reader
        .read(this::text)
        .orElseThrow(() -> new IllegalStateException(reader.problems().toString()));
  }

  private Optional<String> text(String name) {
    return switch (name) {
      case "pack.json" ->
          Optional.of("{\"name\": \"small\", \"version\": \"1\", \"files\": [\"small.drl\"]}");
      case "limits.json" ->
          Optional.of(
              """
              {"limits": [
                {"name": "easy", "label": "an easy depth", "value": "3 m", "measure": "LENGTH",
                 "basis": "judgement", "source": ""},
                {"name": "deep", "label": "a deep pit", "value": "6 m", "measure": "LENGTH",
                 "basis": "judgement", "source": ""}]}
              """);
      case "sources.json" -> Optional.of("{\"sources\": []}");
      case "small.drl" -> Optional.of(HEAD + String.join("\n", List.copyOf(rules.values())));
      default -> builtIn(name);
    };
  }

  private static Optional<String> builtIn(String name) {
    try (InputStream in = SmallPack.class.getResourceAsStream("/underhold/rules/" + name)) {
      return in == null
          ? Optional.empty()
          : Optional.of(new String(in.readAllBytes(), StandardCharsets.UTF_8));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
