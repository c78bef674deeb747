package underhold.mechanics.steel;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Reads the tables of sections; lines that start with # are remarks. */
final class SectionReader {
  private static final double INCH = 0.0254;
  private static final double KILOGRAMS_PER_METRE_PER_POUND_PER_FOOT = 0.45359237 / 0.3048;
  private static final double MILLIMETRE = 1e-3;
  private static final double CENTIMETRE = 1e-2;

  private SectionReader() {}

  static List<RolledSection> american(String prefix) {
    return rows("us-sections.csv").stream()
        .filter(row -> row.name().matches(prefix + "\\d.*"))
        .map(SectionReader::american)
        .toList();
  }

  static List<RolledSection> european(String prefix) {
    return rows("eu-sections.csv").stream()
        .filter(row -> row.name().matches(prefix + "\\d.*"))
        .map(SectionReader::european)
        .toList();
  }

  private static RolledSection american(Row row) {
    double inch3 = INCH * INCH * INCH;
    double inch4 = inch3 * INCH;
    return new RolledSection(
        row.name(),
        row.number("W_lb_ft") * KILOGRAMS_PER_METRE_PER_POUND_PER_FOOT,
        row.number("A_in2") * INCH * INCH,
        new RolledSection.Plates(
            row.number("d_in") * INCH,
            row.number("bf_in") * INCH,
            row.number("tw_in") * INCH,
            row.number("tf_in") * INCH,
            row.number("kdes_in") * INCH,
            row.number("bf_2tf"),
            row.number("h_tw")),
        new RolledSection.Axis(
            row.number("Ix_in4") * inch4,
            row.number("Sx_in3") * inch3,
            row.number("Zx_in3") * inch3,
            row.number("rx_in") * INCH),
        new RolledSection.Axis(
            row.number("Iy_in4") * inch4,
            row.number("Sy_in3") * inch3,
            row.number("Zy_in3") * inch3,
            row.number("ry_in") * INCH),
        new RolledSection.Torsion(
            row.number("J_in4") * inch4,
            row.number("Cw_in6") * inch3 * inch3,
            row.number("rts_in") * INCH,
            row.number("ho_in") * INCH));
  }

  private static RolledSection european(Row row) {
    double depth = row.number("h_mm") * MILLIMETRE;
    double width = row.number("b_mm") * MILLIMETRE;
    double web = row.number("tw_mm") * MILLIMETRE;
    double flange = row.number("tf_mm") * MILLIMETRE;
    double fillet = row.number("r_mm") * MILLIMETRE;
    double cm3 = Math.pow(CENTIMETRE, 3);
    double cm4 = cm3 * CENTIMETRE;
    RolledSection.Axis strong =
        new RolledSection.Axis(
            row.number("Iy_cm4") * cm4,
            row.number("Wely_cm3") * cm3,
            row.number("Wply_cm3") * cm3,
            row.number("iy_cm") * CENTIMETRE);
    RolledSection.Axis weak =
        new RolledSection.Axis(
            row.number("Iz_cm4") * cm4,
            row.number("Welz_cm3") * cm3,
            row.number("Wplz_cm3") * cm3,
            row.number("iz_cm") * CENTIMETRE);
    double warping = row.number("Iw_e3cm6") * 1e3 * cm3 * cm3;
    double effectiveRadius =
        Math.sqrt(Math.sqrt(weak.secondMoment() * warping) / strong.elasticModulus());
    return new RolledSection(
        row.name(),
        row.number("G_kg_m"),
        row.number("A_cm2") * CENTIMETRE * CENTIMETRE,
        new RolledSection.Plates(
            depth,
            width,
            web,
            flange,
            flange + fillet,
            width / (2 * flange),
            (depth - 2 * (flange + fillet)) / web),
        strong,
        weak,
        new RolledSection.Torsion(
            row.number("It_cm4") * cm4, warping, effectiveRadius, depth - flange));
  }

  private static List<Row> rows(String resource) {
    try (InputStream stream =
        SectionReader.class.getResourceAsStream("/underhold/mechanics/steel/" + resource)) {
      if (stream == null) {
        throw new IllegalStateException("the table " + resource + " is missing from the program");
      }
      BufferedReader reader =
          new BufferedReader(new InputStreamReader(stream, StandardCharsets.UTF_8));
      List<String> lines =
          reader.lines().filter(line -> !line.isBlank() && !line.startsWith("#")).toList();
      List<String> head = Arrays.asList(lines.get(0).split(","));
      return lines.stream().skip(1).map(line -> Row.of(head, line.split(","))).toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private record Row(String name, Map<String, String> cells) {
    static Row of(List<String> head, String[] cells) {
      if (head.size() != cells.length) {
        throw new IllegalStateException("a row does not fit its head: " + cells[0]);
      }
      Map<String, String> row = new HashMap<>();
      for (int i = 0; i < cells.length; i++) {
        row.put(head.get(i), cells[i]);
      }
      return new Row(cells[0], row);
    }

    double number(String column) {
      String cell = cells.get(column);
      if (cell == null) {
        throw new IllegalStateException("no column " + column);
      }
      return Double.parseDouble(cell);
    }
  }
}
