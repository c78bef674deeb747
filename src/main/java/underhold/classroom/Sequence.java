package underhold.classroom;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import underhold.sizing.Stage;
import underhold.sizing.StageDetail.PitRound;
import underhold.sizing.StageRole;

/** Whether a sequence is legal; the first rule that it breaks, in words. */
final class Sequence {
  /** Widths that differ by less are equal: rounding only. */
  private static final double TOLERANCE = 1e-6;

  private static final String FORM =
      "( *[0-9]{1,3}( +[0-9]{1,3})* *)(/( *[0-9]{1,3}( +[0-9]{1,3})* *))*";

  /** What must come before what: a stage of a lower rank that stands first on the sheet. */
  private static final Map<StageRole, Integer> RANK =
      Map.ofEntries(
          Map.entry(StageRole.PREPARE, 0),
          Map.entry(StageRole.DRILL, 1),
          Map.entry(StageRole.BUILD, 2),
          Map.entry(StageRole.LOAD, 3),
          Map.entry(StageRole.CARRY, 3),
          Map.entry(StageRole.PITS, 3),
          Map.entry(StageRole.LOCK, 4),
          Map.entry(StageRole.CLOSE, 4),
          Map.entry(StageRole.DIG, 5),
          Map.entry(StageRole.LASTING, 6),
          Map.entry(StageRole.HAND_BACK, 7),
          Map.entry(StageRole.AFTER, 8));

  private Sequence() {}

  /** The rounds typed; empty where the text has not the form. */
  static Optional<List<List<Integer>>> rounds(String typed) {
    String plain = typed.replace(',', ' ').strip();
    if (!plain.matches(FORM)) {
      return Optional.empty();
    }
    List<List<Integer>> rounds = new ArrayList<>();
    for (String round : plain.split("/")) {
      List<Integer> pits = new ArrayList<>();
      for (String pit : round.strip().split(" +")) {
        pits.add(Integer.valueOf(pit));
      }
      rounds.add(pits);
    }
    return Optional.of(rounds);
  }

  /** The letters typed; empty where the text has not the form. */
  static Optional<List<Integer>> letters(String typed) {
    String plain = typed.toLowerCase(Locale.ROOT).replaceAll("[ ,]+", "");
    return plain.matches("[a-z]{1,26}")
        ? Optional.of(plain.chars().map(sign -> sign - 'a').boxed().toList())
        : Optional.empty();
  }

  /** The first rule that rounds of pits break; empty where they are legal. */
  static Optional<String> broken(List<List<Integer>> rounds, Reckoned.Rounds sheet) {
    Map<Integer, Double> widths = widths(sheet);
    PitRound any = sheet.rounds().get(0);
    Set<Integer> dug = new HashSet<>();
    for (List<Integer> round : rounds) {
      for (int pit : round) {
        if (!widths.containsKey(pit)) {
          return Optional.of("There is no pit " + pit + "; there are " + widths.size() + ".");
        }
        if (!dug.add(pit)) {
          return Optional.of("Pit " + pit + " is dug twice.");
        }
      }
    }
    if (dug.size() < widths.size()) {
      return Optional.of(
          dug.size()
              + " of "
              + widths.size()
              + " pits are dug: the wall between them has no pier.");
    }
    for (List<Integer> round : rounds) {
      Optional<String> found = together(round, widths, sheet, any.mayBeOpenMetres());
      if (found.isPresent()) {
        return found;
      }
    }
    return Optional.empty();
  }

  private static Optional<String> together(
      List<Integer> round, Map<Integer, Double> widths, Reckoned.Rounds sheet, double mayBeOpen) {
    List<Integer> pits = round.stream().sorted().toList();
    double open = 0;
    for (int i = 0; i < pits.size(); i++) {
      open += width(widths, pits.get(i));
      if (i == 0) {
        continue;
      }
      int left = pits.get(i - 1);
      int right = pits.get(i);
      if (right == left + 1) {
        return Optional.of("Pits " + left + " and " + right + " are neighbours and open together.");
      }
      double clear = 0;
      for (int between = left + 1; between < right; between++) {
        clear += width(widths, between);
      }
      double needed = sheet.clearWidths() * Math.max(width(widths, left), width(widths, right));
      if (clear < needed - TOLERANCE) {
        return Optional.of(
            String.format(
                Locale.ROOT,
                "Between pits %d and %d stand %.2f m of wall on its soil; it must be %.2f m, %.3g"
                    + " pit widths [%s].",
                left,
                right,
                clear,
                needed,
                sheet.clearWidths(),
                sheet.source()));
      }
    }
    return pits.size() > 1 && open > mayBeOpen + TOLERANCE
        ? Optional.of(
            String.format(
                Locale.ROOT,
                "Pits %s are %.2f m of wall open at once; %.2f m may be.",
                pits,
                open,
                mayBeOpen))
        : Optional.empty();
  }

  private static double width(Map<Integer, Double> widths, int pit) {
    return java.util.Objects.requireNonNull(widths.get(pit));
  }

  private static Map<Integer, Double> widths(Reckoned.Rounds sheet) {
    Map<Integer, Double> widths = new TreeMap<>();
    for (PitRound round : sheet.rounds()) {
      for (int i = 0; i < round.pits().size(); i++) {
        widths.put(round.pits().get(i), round.widthsMetres().get(i));
      }
    }
    return widths;
  }

  /** The first rule that an order of stages breaks; empty where it is legal. */
  static Optional<String> broken(List<Integer> letters, Reckoned.Order order) {
    List<Stage> named = order.lettered();
    if (letters.stream().anyMatch(letter -> letter >= named.size())) {
      return Optional.of(
          "There are " + named.size() + " stages, a to " + letter(named.size() - 1) + ".");
    }
    if (new HashSet<>(letters).size() < letters.size() || letters.size() < named.size()) {
      return Optional.of("Each of the " + named.size() + " stages must stand once.");
    }
    List<Stage> typed = letters.stream().map(named::get).toList();
    for (int i = 0; i < typed.size(); i++) {
      for (int j = i + 1; j < typed.size(); j++) {
        if (mustPrecede(typed.get(j), typed.get(i), order)) {
          return Optional.of(
              "\""
                  + typed.get(i).title()
                  + "\" comes before \""
                  + typed.get(j).title()
                  + "\", but "
                  + why(typed.get(j).role(), typed.get(i).role())
                  + ".");
        }
      }
    }
    return Optional.empty();
  }

  /** Whether one stage must come before another: by its role, or as level after level. */
  private static boolean mustPrecede(Stage first, Stage second, Reckoned.Order order) {
    boolean onSheet = order.stages().indexOf(first) < order.stages().indexOf(second);
    int one = RANK.getOrDefault(first.role(), 0);
    int other = RANK.getOrDefault(second.role(), 0);
    return onSheet && (one < other || inTurn(first.role(), second.role()));
  }

  /** Stages of one kind that come one after the other, each held before the next. */
  private static boolean inTurn(StageRole first, StageRole second) {
    return first == second && (first == StageRole.DIG || first == StageRole.LOCK);
  }

  private static String why(StageRole first, StageRole second) {
    if (second == StageRole.LOCK) {
      return "a support is proved, locked off and released only once its last step of load is held,"
          + " each before the next [common practice]";
    }
    if (first == StageRole.DIG && second == StageRole.DIG) {
      return "a dig goes down level by level, each held before the next [common practice]";
    }
    if (second == StageRole.DIG) {
      return first == StageRole.PREPARE
          ? "nothing is dug before what stands there is surveyed and watched [common practice]"
          : "nothing is dug below a footing before its load stands on the support [common practice]";
    }
    if (second == StageRole.HAND_BACK) {
      return "a support goes only once what stays can carry [common practice]";
    }
    if (second == StageRole.LOAD || second == StageRole.CARRY || second == StageRole.PITS) {
      return "no load moves before the support is built and the structure is surveyed"
          + " [common practice]";
    }
    return "it rests on that [common practice]";
  }

  /** What must be said beside a question so that it can be answered, which is no answer. */
  static List<String> beside(Reckoned reckoned) {
    List<String> lines = new ArrayList<>();
    if (reckoned instanceof Reckoned.Rounds rounds) {
      widths(rounds)
          .forEach(
              (pit, width) ->
                  lines.add(String.format(Locale.ROOT, "pit %d is %.2f m wide", pit, width)));
    }
    if (reckoned instanceof Reckoned.Order order) {
      List<Stage> named = order.lettered();
      for (int i = 0; i < named.size(); i++) {
        lines.add(letter(i) + ": " + named.get(i).title());
      }
    }
    return lines;
  }

  /** The letter of a stage. */
  static char letter(int place) {
    return (char) ('a' + place);
  }
}
