package underhold.sizing.pits;

import java.util.Locale;
import java.util.Optional;
import underhold.sizing.Given;
import underhold.sizing.SheetBuilder;

/** Writes what goes in, with its origin. */
final class InputSection {
  private InputSection() {}

  /** Everything, gaps filled. */
  static void write(PitsCase site, SheetBuilder sheet) {
    for (PitsFact fact : PitsFact.values()) {
      if (site.has(fact)) {
        Given<Double> given = site.given(fact);
        sheet.input(fact.id(), fact.label(), site.amount(fact), given.origin(), given.source());
      }
    }
    words(sheet, "material", "what spans the pits", site.material, site.material.value().label());
    words(sheet, "condition", "its condition", site.condition, site.condition.value().label());
    words(sheet, "face-soil", "soil at the faces", site.faceSoil, site.faceSoil.value().label());
    words(
        sheet,
        "base-soil",
        "soil below the pit base",
        site.baseSoil,
        site.baseSoil.value().label());
    words(
        sheet,
        "faces-run",
        "a layer at the faces runs with water",
        site.facesRun,
        yes(site.facesRun.value()));
    words(sheet, "stand-up", "time a face stands", site.standUp, site.standUp.value().label());
    words(sheet, "osha-type", "OSHA soil type", site.oshaType, "type " + site.oshaType.value());
    words(
        sheet,
        "brace-possible",
        "piers can be braced or tied",
        site.bracePossible,
        yes(site.bracePossible.value()));
    words(
        sheet,
        "lateral-stability-verified",
        "lateral stability of the wall verified",
        site.lateralStabilityVerified,
        yes(site.lateralStabilityVerified.value()));
    site.settings().all().write(sheet);
  }

  /** Only what is known, where essential inputs are missing. */
  static void writeKnown(PitsInput input, SheetBuilder sheet) {
    input
        .amounts()
        .forEach(
            (fact, given) ->
                sheet.input(
                    fact.id(),
                    fact.label(),
                    fact.amount(given.value()),
                    given.origin(),
                    given.source()));
    known(sheet, "material", "what spans the pits", input.material());
    known(sheet, "condition", "its condition", input.condition());
    known(sheet, "face-soil", "soil at the faces", input.faceSoil());
    known(sheet, "base-soil", "soil below the pit base", input.baseSoil());
    known(sheet, "stand-up", "time a face stands", input.standUp());
    known(sheet, "osha-type", "OSHA soil type", input.oshaType());
  }

  private static void words(
      SheetBuilder sheet, String name, String label, Given<?> given, String value) {
    sheet.input(name, label, value, given.origin(), given.source());
  }

  private static <T extends Enum<T>> void known(
      SheetBuilder sheet, String name, String label, Optional<Given<T>> given) {
    given.ifPresent(
        one ->
            words(
                sheet,
                name,
                label,
                one,
                one.value().name().toLowerCase(Locale.ROOT).replace('_', ' ')));
  }

  private static String yes(boolean value) {
    return value ? "yes" : "no";
  }
}
