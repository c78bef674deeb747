package underhold.consult.stage;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import underhold.advice.SupportOption;
import underhold.consult.QuickSizing;
import underhold.consult.scheme.ZoneChoice;
import underhold.sizing.Check;
import underhold.sizing.HoldPoint;
import underhold.sizing.Phrase;
import underhold.sizing.Sheet;
import underhold.sizing.Stage;
import underhold.sizing.StageRole;
import underhold.sizing.Unsettled;
import underhold.sizing.Verdict;

/** What the plan of a zone takes from its sheets: stages, times, and what they leave open. */
final class ZoneSheets {
  /** What the sheet of drilled piles calls the tests before the working piles. */
  private static final String LOAD_TESTS = "load tests";

  private static final int NAMED = 3;

  /** What fails, then what exceeds its capacity, each with the fullest first. */
  private static final Comparator<Check> GRAVEST =
      Comparator.comparing((Check check) -> check.verdict() != Verdict.FAILS)
          .thenComparing(check -> !check.exceeds())
          .thenComparing(check -> -check.utilisation().orElse(Double.MAX_VALUE));

  private final ZoneChoice zone;
  private final SupportOption method;

  ZoneSheets(ZoneChoice zone, SupportOption method) {
    this.zone = zone;
    this.method = method;
  }

  /** The stages of the method's sheet, or the usual ones where it cannot be drawn up yet. */
  List<Stage> stages() {
    return expanded(sheet(method).map(Sheet::stages).orElseGet(() -> UsualStages.of(method)));
  }

  /** Whether a sheet tests a pile before the working ones. */
  boolean testPile() {
    return list().stream()
        .flatMap(sheet -> sheet.quantities().stream())
        .anyMatch(item -> item.name().equals(LOAD_TESTS) && item.amount().si() > 0);
  }

  /** The sheets that time its stages: its own, and that of the piles where it stands on them. */
  List<Sheet> list() {
    Stream<Optional<Sheet>> sheets =
        method == SupportOption.EDGE_PITS
            ? Stream.of(sheet(method), sheet(SupportOption.DRILLED_PILES))
            : Stream.of(sheet(method));
    return sheets.flatMap(Optional::stream).toList();
  }

  /** The sheet of a method, where it could be drawn up. */
  private Optional<Sheet> sheet(SupportOption option) {
    return zone.zone()
        .sizing(option)
        .map(QuickSizing::sheet)
        .filter(sheet -> sheet.complete() && !sheet.stages().isEmpty());
  }

  /** Piles that stand in another sheet are taken from there, or as they usually come. */
  private List<Stage> expanded(List<Stage> stages) {
    if (stages.stream().noneMatch(stage -> stage.role() == StageRole.CARRY)) {
      return stages;
    }
    List<Stage> piles =
        sheet(SupportOption.DRILLED_PILES).map(Sheet::stages).orElseGet(UsualStages::piles);
    List<Stage> expanded = new ArrayList<>();
    for (Stage stage : stages) {
      if (stage.role() == StageRole.CARRY) {
        expanded.addAll(CarriedPiles.of(stage, piles));
      } else if (stage.role() == StageRole.PREPARE) {
        expanded.add(CarriedPiles.prepared(stage, piles));
      } else {
        expanded.add(stage);
      }
    }
    return expanded;
  }

  /**
   * What the sheets leave open is settled before anything is built on it: the gravest by name, the
   * rest by number, for a hold point must be read to its end.
   */
  List<HoldPoint> unsettled() {
    List<Check> open =
        list().stream()
            .flatMap(sheet -> sheet.checks().stream())
            .filter(check -> check.verdict() != Verdict.PASSES)
            .toList();
    if (open.isEmpty()) {
      return List.of();
    }
    List<Check> first = open.stream().sorted(GRAVEST).limit(NAMED).toList();
    int others = open.size() - first.size();
    return List.of(
        new HoldPoint(
            Phrase.of(
                "Nothing is built, loaded or dug before the engineer has settled what does not pass"
                    + " on its sheets: "
                    + Unsettled.words(first)
                    + (others > 0 ? "; and " + others + " more" : "")),
            UsualStages.ENGINEER));
  }
}
