package underhold.report;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.Writer;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import underhold.advice.Finding;
import underhold.advice.OptionAdvice;
import underhold.consult.screening.ScreenedZone;
import underhold.consult.screening.TableForm;

/**
 * Screened zones as one JSON object: what they rest on, then the zones, one a line. While the table
 * is under way its lines stand alone, the first one with what they rest on.
 */
public final class ScreeningJson implements TableForm {
  private static final String FORM = "screening/1";
  private static final String BEGUN = "{\"underhold\":\"" + FORM + "\",";
  private static final String BEGINS = "{ \"underhold\": \"" + FORM + "\",";

  private final ScreeningBasis basis;

  public ScreeningJson(ScreeningBasis basis) {
    this.basis = basis;
  }

  @Override
  public String begunEnding() {
    return ".part.jsonl";
  }

  @Override
  public String head() {
    return Json.line(Json.object("underhold", FORM, "restsOn", basis.text()));
  }

  @Override
  public String row(ScreenedZone zone) {
    OptionalInt stayed = zone.stayed();
    return Json.line(
        Json.object(
            "source", zone.place().source(),
            "line", zone.place().line() == 0 ? null : zone.place().line(),
            "zone", zone.place().zone(),
            "rowId", zone.id(),
            "leader", zone.leader().map(leader -> leader.option().id()).orElse(null),
            "standing", ScreeningCsv.standing(zone),
            "answerStaysInDraws", stayed.isPresent() ? stayed.getAsInt() : null,
            "next", zone.next().option().id(),
            "options",
                zone.advice().ranking().options().stream().map(ScreeningJson::option).toList(),
            "conditions",
                ScreeningCsv.required(zone).stream().map(ScreeningJson::condition).toList(),
            "sizing", SizingWords.json(zone.sizing().orElse(null)),
            "heldFor", zone.heldFor(),
            "sheetAsksFor", zone.sheetAsks(),
            "openFacts", zone.open()));
  }

  private static Map<String, Object> option(OptionAdvice advice) {
    return Json.object(
        "id", advice.option().id(),
        "standing", advice.standing().word(),
        "score", advice.score(),
        "tied", advice.tied());
  }

  private static Map<String, Object> condition(Finding finding) {
    return Json.object(
        "rule", finding.rule().id(),
        "strength", finding.strength().map(strength -> strength.word()).orElse(null),
        "sentence", finding.rule().sentence(),
        "reason", finding.reason(),
        "assumed", finding.assumed());
  }

  @Override
  public Optional<String> id(String row) {
    try {
      JsonNode id = JsonMapper.shared().readTree(row).get("rowId");
      return id != null && id.isString() ? Optional.of(id.asString()) : Optional.empty();
    } catch (JacksonException e) {
      return Optional.empty();
    }
  }

  @Override
  public void whole(BufferedReader begun, Writer table) throws IOException {
    begun.readLine(); // its head
    String about = Json.text(basis.tree());
    table.write(BEGINS + about.substring(1, about.lastIndexOf('}')).stripTrailing());
    table.write(",\n  \"zones\": [");
    String line = begun.readLine();
    String between = "\n    ";
    while (line != null) {
      table.write(between);
      table.write(line);
      between = ",\n    ";
      line = begun.readLine();
    }
    table.write("\n  ]\n}\n");
  }

  @Override
  public boolean isBegun(String beginning) {
    return beginning.startsWith(BEGUN) || BEGUN.startsWith(beginning);
  }

  @Override
  public boolean isTable(String beginning) {
    return beginning.startsWith(BEGINS);
  }
}
