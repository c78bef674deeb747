package underhold.consult;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import underhold.advice.SupportOption;
import underhold.site.Fact;
import underhold.site.FactDictionary;
import underhold.site.FactValue;
import underhold.site.Origin;
import underhold.sizing.Check;
import underhold.sizing.Sheet;
import underhold.sizing.Verdict;

/**
 * What the checks of a sheet say as facts that rules can read: a fact fails where one of its checks
 * fails, passes where all that the sheet holds pass, and stays unknown where there is none or where
 * one refers to the engineer.
 *
 * @param fact name in the dictionary
 * @param option whose sheet it reads
 * @param checks ids of the checks
 */
record SizingFact(String fact, SupportOption option, List<String> checks) {
  /** Every such fact. */
  static final List<SizingFact> ALL =
      List.of(
          of("pitSpan", SupportOption.PITS, "pit-width-workable"),
          of("pitBearing", SupportOption.PITS, "bearing-reckoned"),
          of("pierStability", SupportOption.PITS, "sliding-without", "overturning-without"),
          of("pitHeave", SupportOption.PITS, "heave"),
          of("needleSection", SupportOption.NEEDLES, "needle-section"),
          of("needleDeflection", SupportOption.NEEDLES, "needle-deflection"),
          of("needleSeat", SupportOption.NEEDLES, "seat-bearing", "seat-settlement"),
          of("needlePickUp", SupportOption.NEEDLES, "pick-up-bearing"),
          of("pileCapacity", SupportOption.DRILLED_PILES, "pile-bond", "pile-length"),
          of("pileBared", SupportOption.DRILLED_PILES, "pile-bared"),
          of("pileLoss", SupportOption.DRILLED_PILES, "group-loss"),
          of("pileSettlement", SupportOption.DRILLED_PILES, "head-settlement"),
          of(
              "bracketMoment",
              SupportOption.BRACKET_PILES,
              "bracket-eccentricity",
              "casing-combined"),
          of("bracketBared", SupportOption.BRACKET_PILES, "pile-bared", "soft-ground-buckling"),
          of("bracketSpan", SupportOption.BRACKET_PILES, "edge-span"),
          of("bracketMovement", SupportOption.BRACKET_PILES, "movement"),
          of(
              "edgeSliding",
              SupportOption.EDGE_PITS,
              "sliding-after-transfer",
              "overturning-after-transfer"),
          of("edgeSupported", SupportOption.EDGE_PITS, "sliding-supported", "brace-capacity"),
          of("edgeBase", SupportOption.EDGE_PITS, "base-heave", "piping"),
          of("edgePiles", SupportOption.EDGE_PITS, "primary-piles"),
          of("forecastDamage", SupportOption.MONITOR, "damage-category", "angular-distortion"));

  SizingFact {
    checks = List.copyOf(checks);
  }

  private static SizingFact of(String fact, SupportOption option, String... checks) {
    return new SizingFact(fact, option, List.of(checks));
  }

  /** The facts of a sheet that are decided. */
  static List<Fact> of(SupportOption option, Sheet sheet, FactDictionary dictionary) {
    List<Fact> facts = new ArrayList<>();
    for (SizingFact one : ALL) {
      if (one.option == option) {
        one.read(sheet, dictionary).ifPresent(facts::add);
      }
    }
    return facts;
  }

  private Optional<Fact> read(Sheet sheet, FactDictionary dictionary) {
    List<Check> found = checks.stream().flatMap(id -> sheet.check(id).stream()).toList();
    List<Check> failed = found.stream().filter(check -> check.verdict() == Verdict.FAILS).toList();
    boolean refers = found.stream().anyMatch(check -> check.verdict() == Verdict.REFER);
    if (found.isEmpty() || (failed.isEmpty() && refers)) {
      return Optional.empty();
    }
    List<String> titles = (failed.isEmpty() ? found : failed).stream().map(Check::title).toList();
    String word = failed.isEmpty() ? "passes" : "fails";
    return Optional.of(
        new Fact(
            dictionary.require(fact),
            Origin.DERIVED,
            new FactValue.Choice(word),
            "the quick sizing of "
                + option.label()
                + ": "
                + String.join("; ", titles)
                + (failed.isEmpty() ? " pass" : " fail")
                + (titles.size() == 1 && failed.isEmpty() ? "es" : titles.size() == 1 ? "s" : "")));
  }
}
