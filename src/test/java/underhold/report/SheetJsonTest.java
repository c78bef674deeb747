package underhold.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;
import underhold.advice.SupportOption;
import underhold.consult.Sized;
import underhold.consult.SizingDesk;
import underhold.consult.SizingSites;
import underhold.quantity.UnitSystem;
import underhold.site.Site;
import underhold.sizing.Sheet;

class SheetJsonTest {
  private static Sheet partyWall() {
    return sheet(SizingSites.ownPartyWall());
  }

  private static Sheet sheet(Site site) {
    Sized sized =
        new SizingDesk()
            .size(
                site, SizingSites.advice(site, site.zones().get(0)), SupportOption.PITS, List.of());
    return ((Sized.Done) sized).sheet();
  }

  @Test
  void complete_sheet_has_all_its_parts() {
    Sheet sheet = partyWall();
    ObjectNode json = SheetJson.of(sheet, UnitSystem.SI);
    assertThat(json.get("method").asString()).isEqualTo("pits");
    assertThat(json.get("complete").asBoolean()).isTrue();
    assertThat(json.get("verdict").asString()).isEqualTo(sheet.verdict().label());
    assertThat(json.get("inputs")).hasSameSizeAs(sheet.inputs());
    assertThat(json.get("steps")).hasSameSizeAs(sheet.steps());
    assertThat(json.get("checks")).hasSameSizeAs(sheet.checks());
    assertThat(json.get("stages")).hasSameSizeAs(sheet.stages());
    assertThat(json.get("cautions")).hasSameSizeAs(sheet.cautions());
    assertThat(json.get("notCovered")).hasSameSizeAs(sheet.notCovered());
    assertThat(json.get("time")).hasSameSizeAs(sheet.time());
    assertThat(json.get("quantities")).hasSameSizeAs(sheet.quantities());
    JsonNode hold = json.get("stages").get(0).get("holdPoints").get(0);
    assertThat(hold.get("releasedBy").asString()).isEqualTo("engineer of record");
    JsonNode load = json.get("inputs").get(0);
    assertThat(load.get("value").asString()).isEqualTo("110 kN/m");
    assertThat(load.get("si").asDouble()).isEqualTo(110);
    assertThat(load.get("origin").asString()).isEqualTo("stated");
    assertThat(json.toString()).doesNotContain("NaN").doesNotContain("Infinity");
  }

  @Test
  void units_change_the_texts_and_never_the_values() {
    Sheet sheet = partyWall();
    JsonNode si = SheetJson.of(sheet, UnitSystem.SI).get("checks");
    JsonNode us = SheetJson.of(sheet, UnitSystem.US).get("checks");
    for (int i = 0; i < si.size(); i++) {
      assertThat(us.get(i).get("demand").get("si")).isEqualTo(si.get(i).get("demand").get("si"));
      assertThat(us.get(i).get("verdict")).isEqualTo(si.get(i).get("verdict"));
    }
    assertThat(us).isNotEqualTo(si);
  }

  @Test
  void same_sheet_gives_the_same_characters() {
    assertThat(SheetJson.of(partyWall(), UnitSystem.US).toString())
        .isEqualTo(SheetJson.of(partyWall(), UnitSystem.US).toString());
  }

  @Test
  void incomplete_sheet_tells_what_is_missing_and_a_check_without_capacity_has_no_utilisation() {
    ObjectNode json =
        SheetJson.of(sheet(SizingSites.demo("first-visit-chapel-hill")), UnitSystem.SI);
    assertThat(json.get("complete").asBoolean()).isFalse();
    assertThat(json.get("missing").get(0).get("question").asString()).endsWith("?");
    assertThat(json.get("steps")).isEmpty();
    JsonNode checks = SheetJson.of(partyWall(), UnitSystem.SI).get("checks");
    assertThat(checks)
        .anySatisfy(
            check -> {
              assertThat(check.get("id").asString()).isEqualTo("brace");
              assertThat(check.get("utilisation").isNull()).isTrue();
            });
  }
}
