package underhold.shell;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import underhold.quantity.UnitSystem;
import underhold.site.FactDefinition;
import underhold.site.FactKind;
import underhold.site.FactReader;
import underhold.site.FactReading;
import underhold.site.FactValue;
import underhold.site.Site;
import underhold.site.StatedFact;
import underhold.site.Zone;

/** Reads answers as people type them in an interview. */
final class AnswerReader {
  private AnswerReader() {}

  /** Reads a value: a word, its number in the list, or an amount with its unit. */
  static FactReading read(FactDefinition fact, String typed) {
    String text = typed.strip();
    if (fact.kind() == FactKind.CHOICE && text.matches("[0-9]{1,3}")) {
      int number = Integer.parseInt(text);
      List<FactDefinition.Allowed> values = fact.values();
      if (number >= 1 && number <= values.size()) {
        return new FactReading.Accepted(new FactValue.Choice(values.get(number - 1).value()));
      }
    }
    return FactReader.read(fact, fact.kind() == FactKind.YES_NO ? yesNo(text) : text);
  }

  private static String yesNo(String text) {
    return switch (text.toLowerCase(Locale.ROOT)) {
      case "y", "1" -> "yes";
      case "n", "2" -> "no";
      default -> text;
    };
  }

  /** Yes or no as typed; empty if it is neither. */
  static Optional<Boolean> decision(String typed) {
    return switch (yesNo(typed.strip()).toLowerCase(Locale.ROOT)) {
      case "yes" -> Optional.of(true);
      case "no", "" -> Optional.of(false);
      default -> Optional.empty();
    };
  }

  /** The site with the units of the first amount that anybody typed; layers have their depths. */
  static Site inUnitsOf(Site before, Site after, StatedFact stated) {
    if (hasAmount(before) || !(stated.value() instanceof FactValue.Amount amount)) {
      return after;
    }
    return UnitSystem.statedBy(amount.quantity())
        .map(units -> Edits.in(after, units))
        .orElse(after);
  }

  private static boolean hasAmount(Site site) {
    return !site.ground().isEmpty()
        || site.facts().values().stream().anyMatch(AnswerReader::decidesUnits)
        || site.zones().stream().anyMatch(AnswerReader::hasAmount);
  }

  private static boolean hasAmount(Zone zone) {
    return !zone.ground().isEmpty()
        || zone.facts().values().stream().anyMatch(AnswerReader::decidesUnits);
  }

  private static boolean decidesUnits(StatedFact stated) {
    return stated.value() instanceof FactValue.Amount amount
        && UnitSystem.statedBy(amount.quantity()).isPresent();
  }
}
