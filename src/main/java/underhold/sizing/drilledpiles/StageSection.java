package underhold.sizing.drilledpiles;

import java.util.ArrayList;
import java.util.List;
import underhold.sizing.Amount;
import underhold.sizing.HoldPoint;
import underhold.sizing.Phrase;
import underhold.sizing.SheetBuilder;
import underhold.sizing.Stage;
import underhold.sizing.StageRole;

/** Order of work with its hold points; jacking and digging stand in classes of their own. */
final class StageSection {
  private static final String ENGINEER = "engineer of record";
  private static final String GEOTECHNICAL = "geotechnical engineer";
  private static final String INSPECTOR = "special inspector";

  private StageSection() {}

  static void write(PileCase site, PileDesign design, SheetBuilder sheet) {
    sheet.stage(before(site, design));
    sheet.stage(drill(site, design));
    sheet.stage(transfer());
    JackStages.write(site, design, sheet);
    DigStages.write(site, design, sheet);
  }

  private static Stage before(PileCase site, PileDesign design) {
    return new Stage(
        StageRole.PREPARE,
        "Before drilling",
        List.of(
            Phrase.of(
                "Survey the structure, set level and tilt points, take readings until they are steady."),
            Phrase.of(
                "Bore to {z} below ground at the least, and probe each pile place for old works.",
                "z",
                Amount.length(design.toeMetres() + site.get(PileNumbers.BELOW_TOE))),
            Phrase.of(
                "Drill a trial pile away from the structure; record loss of ground, flush and time."),
            Phrase.of(
                "Test to {k} times the working load where tests are counted on.",
                "k",
                site.amount(WorkNumbers.TEST_LOAD))),
        List.of(
            new HoldPoint(
                Phrase.of(
                    "Ground, water and obstructions are as assumed; the drilling method takes no ground from under the structure"),
                GEOTECHNICAL),
            new HoldPoint(
                Phrase.of("Limits of movement and who stops the work are agreed"), ENGINEER)));
  }

  private static Stage drill(PileCase site, PileDesign design) {
    PileCount count = PileCount.of(site, design);
    double temporary = WorkPlan.of(site, design).temporaryMetres();
    List<Phrase> work = new ArrayList<>();
    work.add(
        Phrase.of(
            "Drill piles outside first, then inside, no two neighbours on the same day; case ahead of the bit in ground that runs."));
    work.add(
        count.of(
            "Take {piles} to {z} below ground; measure, clean, set bars, place concrete or grout from the base up.",
            "z",
            Amount.length(design.toeMetres())));
    if (temporary > 0) {
      work.add(
          Phrase.of(
              "Case the hole to {t} below ground while it is drilled, for ground that does not stand open; pull that casing as the concrete rises, its foot always in concrete.",
              "t",
              Amount.length(temporary)));
    }
    work.add(
        Phrase.of(
            "Leave the casing from the cap to {z} below ground.",
            "z",
            Amount.length(design.casingBottomMetres())));
    return new Stage(
        StageRole.DRILL,
        "Piles, before any digging below the footing",
        work,
        List.of(
            new HoldPoint(
                Phrase.of(
                    count.everyPile(true)
                        + " reached the layer and length counted on; the base of a socket is seen where it is counted"),
                INSPECTOR),
            new HoldPoint(
                Phrase.of(
                    count.everyPile(true)
                        + " is made and has its strength: no digging below the footing before"),
                ENGINEER)));
  }

  private static Stage transfer() {
    return new Stage(
        StageRole.BUILD,
        "Caps, beams and jacks",
        List.of(
            Phrase.of(
                "Build caps and needle beams; the pile head reaches {in} into the cap, the cap {out} beyond the pile.",
                "in",
                Amount.thickness(0.0762),
                "out",
                Amount.thickness(0.1016)),
            Phrase.of(
                "Set a jack with a locking ring on each pile, plates and packing ready beside it; hold beam and footing sideways.")),
        List.of(
            new HoldPoint(
                Phrase.of(
                    "Beams, bearings and the structure above are proved for the forces given"),
                ENGINEER)));
  }
}
