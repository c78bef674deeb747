package underhold.sizing.bracketpiles;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import underhold.sizing.BillItem;
import underhold.sizing.Check;
import underhold.sizing.Phrase;
import underhold.sizing.Sheet;
import underhold.sizing.Stage;

/**
 * The platform edge that the hand calculations share, and how to read its sheet: 108 kN a bracket
 * at 1.8 m, casing 7 x 0.408 in, 4.6 m cased from 0.9 to 5.5 m, 3.1 m of bond.
 */
final class PlatformEdge {
  static final String EDGE = BracketSites.text();
  static final String FREE = "moment-path=pile-head";
  static final String CASING = "casing=7 x 0.408 in";
  static final double INCH = 0.0254;
  static final double OUTSIDE = 7 * INCH;

  /** E I of 7 x 0.408 in at 29,000 ksi, kN m2. */
  static final double BENDING =
      199_947_962 * Math.PI / 64 * (Math.pow(OUTSIDE, 4) - Math.pow(6.184 * INCH, 4));

  private PlatformEdge() {}

  static String with(String before, String after) {
    assertThat(EDGE).contains(before);
    return EDGE.replace(before, after);
  }

  static String bared() {
    return with("\"gapToExcavation\": \"2.5 m\"", "\"gapToExcavation\": \"0.2 m\"");
  }

  static String column() {
    return with("\"lineLoad\": \"60 kN/m\"", "\"columnLoad\": \"400 kN\"")
        .replace("cantilevered-edge", "concentrated");
  }

  static double step(Sheet sheet, String id) {
    return sheet.step(id).orElseThrow().result().si();
  }

  static double symbol(Sheet sheet, String step, String sign) {
    return sheet.step(step).orElseThrow().formula().symbols().stream()
        .filter(one -> one.sign().equals(sign))
        .findFirst()
        .orElseThrow()
        .amount()
        .si();
  }

  static Check check(Sheet sheet, String id) {
    return sheet.check(id).orElseThrow();
  }

  static double noted(Sheet sheet, String check, String name) {
    return check(sheet, check).note().amounts().get(name).si();
  }

  static BillItem item(Sheet sheet, String name) {
    return sheet.quantities().stream()
        .filter(one -> one.name().startsWith(name))
        .findFirst()
        .orElseThrow(() -> new AssertionError("no " + name));
  }

  static double quantity(Sheet sheet, String name) {
    return item(sheet, name).amount().si();
  }

  static double time(Sheet sheet, String name) {
    return sheet.time().stream()
        .filter(one -> one.name().startsWith(name))
        .findFirst()
        .orElseThrow()
        .amount()
        .si();
  }

  static List<String> hazards(Sheet sheet) {
    return sheet.cautions().stream().map(one -> one.hazard()).toList();
  }

  static String words(Sheet sheet, String stage) {
    return sheet.stages().stream()
        .filter(one -> one.title().equals(stage))
        .map(Stage::work)
        .map(work -> String.join(" ", work.stream().map(Phrase::template).toList()))
        .findFirst()
        .orElseThrow();
  }
}
