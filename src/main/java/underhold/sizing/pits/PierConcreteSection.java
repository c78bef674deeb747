package underhold.sizing.pits;

import underhold.sizing.Amount;
import underhold.sizing.Phrase;
import underhold.sizing.SheetBuilder;

/** The unreinforced pier in bending and shear, as a cantilever from its base. */
final class PierConcreteSection {
  private PierConcreteSection() {}

  static void write(PitsCase site, SheetBuilder sheet, double push, double overturning) {
    Phrase note =
        Phrase.of(
            "Demand is {F} times the working effect of a cantilever from the base. If it fails, reinforce the pier or brace it.",
            "F",
            site.amount(PitsSetting.LOAD_FACTOR));
    PlainSteps.wall(
        sheet,
        new PlainSteps.Wall(
            "pier",
            "pier",
            "Unreinforced pier",
            Amount.length(site.pierThickness()),
            site.amount(PitsSetting.PIER_STRENGTH)),
        new PlainSteps.Effects(overturning, push, site.get(PitsSetting.LOAD_FACTOR), note));
  }
}
