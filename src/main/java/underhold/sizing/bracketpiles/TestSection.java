package underhold.sizing.bracketpiles;

import java.util.List;
import underhold.mechanics.micropile.LoadTest;
import underhold.quantity.UnitSystem;
import underhold.sizing.Amount;
import underhold.sizing.Phrase;
import underhold.sizing.SheetBuilder;

/** Loads of the tests and of the preload. */
final class TestSection {
  private TestSection() {}

  static void write(BracketCase site, PileTrial pile, SheetBuilder sheet) {
    Amount load = Amount.force(pile.axial());
    sheet
        .step("proof-load", "Load of a proof test", "Tp = {f} × {P}")
        .with("f", "level", site.amount(BracketSetting.PROOF_LEVEL))
        .with("P", "load of the pile", load)
        .from(Sources.CITY_TEST)
        .note(
            "1.5 is usual (Geo-Institute), 1.6 is met (from memory, verify), 1.67 is one city's specification.")
        .gives(Amount.force(site.get(BracketSetting.PROOF_LEVEL) * pile.axial()));
    sheet
        .step("verification-load", "Load of the verification test", "Tv = {f} × {P}")
        .with("f", "level", site.amount(BracketSetting.VERIFICATION_LEVEL))
        .with("P", "load of the pile", load)
        .from(Sources.GEO_INSTITUTE)
        .note("On a sacrificial pile before production, at least one in each bond stratum.")
        .gives(Amount.force(site.get(BracketSetting.VERIFICATION_LEVEL) * pile.axial()));
    sheet
        .step("preload", "Preload of each bracket", "Pp = {p} × {P}")
        .with("p", "preload as a share of the bracket's load", site.amount(BracketSetting.PRELOAD))
        .with("P", "load of one bracket", Amount.force(site.load()))
        .from(BracketSetting.PRELOAD.setting().source())
        .note("It tries the pile, but does not prove a factor of 2.")
        .gives(Amount.force(site.get(BracketSetting.PRELOAD) * site.load()));
  }

  /** Steps of the proof test in words. */
  static Phrase proof(BracketCase site) {
    List<String> steps =
        LoadTest.proofSteps(site.get(BracketSetting.PROOF_LEVEL)).stream()
            .map(step -> Amount.ratio(step).in(UnitSystem.SI))
            .toList();
    return Phrase.of(
        "Proof test in steps of "
            + String.join(", ", steps)
            + " times the load, one minute each after an alignment load of at most 0.05; creep hold at 1.33 or the top: more than {ten} from 1 to 10 minutes means 50 minutes more; accepted up to {ten}, or {sixty} from 6 to 60 minutes.",
        "ten",
        Amount.thickness(LoadTest.CREEP_TEN_MINUTES_METRES),
        "sixty",
        Amount.thickness(LoadTest.CREEP_SIXTY_MINUTES_METRES));
  }
}
