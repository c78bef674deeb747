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
 * one refers to the engineer. Where a brace or tie may carry what the check lacks, a check that
 * refers with its demand above its capacity says so.
 *
 * @param fact name in the dictionary
 * @param option whose sheet it reads
 * @param checks ids of the checks
 * @param supportable whether support may carry what the checks lack
 */
record SizingFact(String fact, SupportOption option, List<String> checks, boolean supportable) {
  /** Every such fact. */
  static final List<SizingFact> ALL =
      List.of(
          of("pitSpan", SupportOption.PITS, "pit-width-workable"),
          of("pitBearing", SupportOption.PITS, "bearing-reckoned"),
          supportable(
              "pierStability", SupportOption.PITS, "sliding-without", "overturning-without"),
          of("pitHeave", SupportOption.PITS, "heave"),
          of("needleSection", SupportOption.NEEDLES, "needle-section"),
          of("needleDeflection", SupportOption.NEEDLES, "needle-deflection"),
          of("needleSeat", SupportOption.NEEDLES, "seat-bearing", "seat-settlement"),
          of("needlePickUp", SupportOption.NEEDLES, "pick-up-bearing"),
          of(
              "pileCapacity",
              SupportOption.DRILLED_PILES,
              "pile-bond",
              "pile-in-group",
              "pile-length"),
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
          supportable(
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
    return new SizingFact(fact, option, List.of(checks), false);
  }

  private static SizingFact supportable(String fact, SupportOption option, String... checks) {
    return new SizingFact(fact, option, List.of(checks), true);
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
    List<Check> failed = with(found, Verdict.FAILS);
    List<Check> lacking =
        with(found, Verdict.REFER).stream()
            .filter(
                check -> supportable && !Check.covers(check.demand().si(), check.capacity().si()))
            .toList();
    if (!failed.isEmpty()) {
      return Optional.of(fact(dictionary, "fails", failed, "by its sheet"));
    }
    if (!lacking.isEmpty()) {
      return Optional.of(fact(dictionary, "needs-support", lacking, "lacks capacity by itself"));
    }
    return found.isEmpty() || !with(found, Verdict.REFER).isEmpty()
        ? Optional.empty()
        : Optional.of(fact(dictionary, "passes", found, "by its sheet"));
  }

  private static List<Check> with(List<Check> checks, Verdict verdict) {
    return checks.stream().filter(check -> check.verdict() == verdict).toList();
  }

  private Fact fact(FactDictionary dictionary, String word, List<Check> said, String how) {
    String titles = String.join("; ", said.stream().map(Check::title).toList());
    return new Fact(
        dictionary.require(fact),
        Origin.DERIVED,
        new FactValue.Choice(word),
        "the quick sizing of " + option.label() + ", " + how + ": " + titles);
  }
}
