package underhold.report.html;

import java.util.ArrayList;
import java.util.List;
import underhold.report.document.Block;
import underhold.report.document.Block.Column;
import underhold.report.document.Block.Row;
import underhold.report.document.Block.Symbol;
import underhold.report.document.Block.Tone;
import underhold.report.document.Block.Working;
import underhold.report.document.Document;
import underhold.report.document.Prose;
import underhold.report.document.Section;
import underhold.report.drawing.Figure;

/** Documents of our own to be set: invented places, numbers that mean nothing. */
public final class SampleDocuments {
  /** What stands on every page. */
  public static final String STATUS =
      "For review, not for construction. A licensed engineer must check and own the design.";

  private SampleDocuments() {}

  /** Every kind of block, three zones, long tables, 200 workings, drawings. */
  public static Document rich() {
    List<Section> sections = new ArrayList<>();
    sections.add(
        Section.of(
            "what-is-asked",
            "What is asked",
            List.of(
                new Block.Paragraph(
                    Prose.of("A cut 7.2 m deep passes ")
                        .strong("beside and under")
                        .then(" three structures of the Lantern Quay line. The facts stand in ")
                        .link("section 2", "facts")
                        .then(", the choice in ")
                        .link("zone east wall", "zone-1")
                        .then("; set a fact with ")
                        .typed("what-if gapToExcavation=\"3 m\"")
                        .then(".")),
                new Block.Notice(
                    Tone.CAUTION,
                    "Cave-in and egress",
                    Prose.of("Nobody stands in a pit of 1.52 m or more without its boards. ")
                        .link("Source S1", "source-1")
                        .then(". The competent person decides.")),
                new Block.Notice(Tone.GOOD, "Proved", Prose.of("23 checks pass.")),
                new Block.Notice(Tone.DOUBT, "Not proved yet", Prose.of("12 checks refer.")),
                new Block.Notice(Tone.BAD, "Fails", Prose.of("One check fails in the north zone.")),
                new Block.Notice(Tone.PLAIN, "Units", Prose.of("Amounts in m, kN, kPa, m² and °.")),
                new Block.Listing(
                    true,
                    List.of(
                        Prose.of("Survey the wall."),
                        Prose.of("Dig the first round of pits.").strong(" Hold point."),
                        Prose.of("Dry pack and wait 168 h."))),
                new Block.Listing(
                    false, List.of(Prose.of("φ = 34°"), Prose.of("γ ≤ 19.5 kN/m³, µ = 0.5"))))));
    sections.add(facts());
    for (int zone = 1; zone <= 3; zone++) {
      sections.add(zone(zone));
    }
    sections.add(sources());
    return new Document(
        "Lantern Quay, east box: calculation package",
        STATUS,
        List.of(
            new Document.Entry("Site", Prose.of("Lantern Quay, east box")),
            new Document.Entry("Zones", Prose.of("east wall; column line; platform edge")),
            new Document.Entry("Method", Prose.of("see ").link("zone east wall", "zone-1")),
            new Document.Entry(
                "Rule pack",
                Prose.empty().typed("3f9a5c1d77e0b2a4468c0d1e9b7f2233aa55cc77ee990011"))),
        sections);
  }

  private static Section facts() {
    List<Row> rows = new ArrayList<>();
    for (int i = 1; i <= 60; i++) {
      rows.add(
          new Row(
              "fact-" + i,
              i % 9 == 0 ? Tone.DOUBT : Tone.PLAIN,
              List.of(
                  Prose.of("fact number " + i),
                  Prose.of(i % 9 == 0 ? "unknown" : i + ".25 kN/m"),
                  Prose.of(i % 2 == 0 ? "stated" : "derived"),
                  Prose.of("It decides whether the wall can span while the ground is taken away, ")
                      .then("and how wide a pit may be; read by rule PIT-" + i + "."))));
    }
    return Section.of(
        "facts",
        "Facts of the site",
        List.of(
            new Block.Table(
                "Facts, their origin and why they matter",
                List.of(
                    Column.words("Fact"),
                    Column.amounts("Value"),
                    Column.words("Origin"),
                    Column.words("Why it matters")),
                rows)));
  }

  private static Section zone(int zone) {
    List<Row> checks = new ArrayList<>();
    Tone[] tones = {Tone.GOOD, Tone.DOUBT, Tone.BAD, Tone.GOOD, Tone.CAUTION};
    String[] verdicts = {"passes", "refer", "fails", "passes", "passes, with a caution"};
    for (int i = 0; i < 25; i++) {
      checks.add(
          new Row(
              "check-" + zone + "-" + i,
              tones[i % 5],
              List.of(
                  Prose.of(verdicts[i % 5]),
                  Prose.of("Bending of a board at the toe of pit " + i),
                  Prose.of("5.204 MPa"),
                  Prose.of("8.371 MPa"),
                  Prose.of("62 %"),
                  Prose.of("NDS 2018 and its Supplement, No. 2 grade (from memory, verify); ")
                      .link("step", "step-" + zone + "-" + i))));
    }
    List<Block> workings = new ArrayList<>();
    for (int i = 0; i < 67; i++) {
      workings.add(working(zone, i));
    }
    return new Section(
        "zone-" + zone,
        "Zone " + List.of("east wall", "column line", "platform edge").get(zone - 1),
        List.of(new Block.Paragraph(Prose.of("The load is a line of 95 kN/m."))),
        List.of(
            Section.of(
                "zone-" + zone + "-checks",
                "Checks",
                List.of(
                    new Block.Table(
                        "Checks of underpinning pits",
                        List.of(
                            Column.words("Verdict"),
                            Column.words("Check"),
                            Column.amounts("Demand"),
                            Column.amounts("Capacity"),
                            Column.amounts("Use"),
                            Column.words("Source")),
                        checks))),
            new Section(
                "zone-" + zone + "-steps",
                "Calculation sheet",
                List.of(new Block.Drawn(figure("section-" + zone, "Section through the wall"))),
                List.of(Section.of("zone-" + zone + "-steps-all", "Steps", workings)))));
  }

  /** The formulas of the sample's workings, as sheets write them. */
  public static final List<String> FORMULAS =
      List.of(
          "M = p × L^2 / 8",
          "B = max(0, (F × (Wr + V) × sin(d) - c × h / sin(d)) / (F × cos(d)) + T)",
          "fb = M / S",
          "Lm = sqrt(8 × M / wu)",
          "k = (fa / Fa)^2 + fb / (Fb × (1 - fa / Fe))",
          "Mcr = C1 × Pe × (sqrt(w + t + (C2 × z)^2) - C2 × z)",
          "d = 5 × p × L^4 × 12 / (384 × E × t^3)",
          "Nq = exp(3.14159265 × tan(f)) × tan(45 + f / 2)^2",
          "M = phi × As × fy × (d - a / 2)",
          "Fb' = Fb × CD × CM × CF × Cfu",
          "Pl = P × (1 / m + ((ex × Ixx - ey × Ixy) × x + (ey × Iyy - ex × Ixy) × y) / (Ixx × Iyy -"
              + " Ixy^2))",
          "v = 0.6643 × ls × rho^(1/3) × sqrt(fc)",
          "q = q0 × (1 + 1 / k)",
          "b = max(0, min(cap, practice, L - 2 × e))",
          "lc = (4 × E × 3.1416 / 64 × (OD^4 - ID^4) / (0.5 × k))^0.25");

  private static Working working(int zone, int number) {
    String formula = FORMULAS.get(number % FORMULAS.size());
    List<Symbol> symbols =
        List.of(
            new Symbol("p", "pressure of the ground on the boards", "29.6 kPa"),
            new Symbol("L", "span of a board between its bearings", "1.167 m"),
            new Symbol("fb", "bending stress", "5.204 MPa"),
            new Symbol("phi", "friction angle of the soil at the faces", "34°"));
    return new Working(
        "step-" + zone + "-" + number,
        "Step " + number + " of zone " + zone + ": bending moment in a board of the pit",
        formula,
        symbols,
        number % 2 == 0
            ? "(29.6 kPa) × (1.167 m)^2 / 8"
            : "max((0 kPa), (29.6 kPa) - 2 × (140 kPa)) / sqrt((967.7 mm2) / (76.2 mm)^2)",
        "5.037 kN·m/m",
        Prose.of("Statics of a simply supported beam [standard]; ")
            .link("S" + (number % 12 + 1), "source-" + (number % 12 + 1)));
  }

  private static Section sources() {
    List<Row> rows = new ArrayList<>();
    for (int i = 1; i <= 12; i++) {
      rows.add(
          new Row(
              "source-" + i,
              Tone.PLAIN,
              List.of(
                  Prose.of("S" + i),
                  Prose.of("Handbook of invented examples, edition " + i + ", clause 7." + i),
                  Prose.of("from memory, verify"))));
    }
    return Section.of(
        "sources",
        "Sources",
        List.of(
            new Block.Table(
                "Sources and what each is worth",
                List.of(Column.words("Key"), Column.words("Source"), Column.words("Basis")),
                rows)));
  }

  /** A drawing with a pattern, a clip and words. */
  public static Figure figure(String id, String title) {
    String svg =
        """
        <svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 160 80" width="160mm" height="80mm">
        <defs><clipPath id="cut"><rect x="0" y="0" width="160" height="80"/></clipPath>
        <pattern id="soil" width="4" height="4" patternUnits="userSpaceOnUse">
        <path d="M0 4 L4 0" stroke="#7d4317" stroke-width="0.2"/></pattern></defs>
        <g clip-path="url(#cut)"><rect x="0" y="30" width="160" height="50" fill="url(#soil)"/>
        <rect x="60" y="10" width="10" height="40" fill="#ffffff" stroke="#1d2528" stroke-width="0.5"/>
        <rect x="70" y="30" width="90" height="40" fill="#ffffff" stroke="#1d2528" stroke-width="0.5"/>
        <text x="74" y="40" font-family="sans-serif" font-size="4">excavation 7.2 m, φ ≤ 34°</text>
        <text x="20" y="20" font-family="sans-serif" font-weight="bold" font-size="4">wall 95 kN/m</text></g></svg>
        """;
    return new Figure(
        id,
        title,
        svg.strip(),
        160,
        80,
        List.of("A wall with 95 kN/m stands 0 m from the cut.", "The cut is 7.2 m deep."));
  }

  /** A document whose every word is the given text. */
  public static Document filledWith(String text) {
    Prose words = Prose.of(text).strong(text).typed(text).link(text, "table");
    return new Document(
        text,
        text,
        List.of(new Document.Entry(text, words)),
        List.of(
            new Section(
                "first",
                text,
                List.of(
                    new Block.Paragraph(words),
                    new Block.Notice(Tone.BAD, text, words),
                    new Block.Listing(false, List.of(words)),
                    new Block.Table(
                        text,
                        List.of(Column.words(text), Column.amounts(text)),
                        List.of(new Row("row", Tone.DOUBT, List.of(words, words)))),
                    new Working(
                        "step",
                        text,
                        text,
                        List.of(new Symbol(text, text, text)),
                        text,
                        text,
                        words),
                    new Block.Drawn(
                        new Figure(
                            "drawing", text, figure("x", "x").svg(), 160, 80, List.of(text)))),
                List.of(Section.of("table", text, List.of())))));
  }
}
