package underhold.sizing.needles;

import underhold.sizing.Amount;
import underhold.sizing.Phrase;
import underhold.sizing.SheetBuilder;

/** The sections beside the chosen one in the table. */
final class RunnersUp {
  private RunnersUp() {}

  static void write(SheetBuilder sheet, SectionChooser.Result choice) {
    choice
        .lighter()
        .ifPresent(
            one ->
                write(
                    sheet,
                    "next-lighter",
                    one,
                    "Next lighter, " + one.section().name() + ", fails in "));
    int rank = 1;
    for (SectionChooser.Tried one : choice.heavier()) {
      write(
          sheet,
          "runner-up-" + rank,
          one,
          "As heavy or heavier, and passing, " + one.section().name() + ": governed by ");
      rank++;
    }
  }

  private static void write(SheetBuilder sheet, String id, SectionChooser.Tried one, String title) {
    Limb governing = one.governing();
    sheet
        .step(id, title + governing.words(), "u = {S} / {R}")
        .with("S", "demand", governing.demandAmount())
        .with("R", "capacity", governing.capacityAmount())
        .note(
            Phrase.of(
                "It weighs {g}.", "g", Amount.lineLoad(one.section().weightKilonewtonsPerMetre())))
        .gives(Amount.ratio(governing.utilisation()));
  }
}
