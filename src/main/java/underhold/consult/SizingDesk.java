package underhold.consult;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import underhold.advice.SupportOption;
import underhold.site.FactView;
import underhold.site.GroundProfile;
import underhold.site.Site;
import underhold.sizing.Guesses;
import underhold.sizing.MissingInput;
import underhold.sizing.SettingTable;
import underhold.sizing.Sheet;
import underhold.sizing.SheetBuilder;
import underhold.sizing.SizingMethod;
import underhold.sizing.bracketpiles.BracketPilesMethod;
import underhold.sizing.drilledpiles.DrilledPiles;
import underhold.sizing.edgepits.EdgePitsMethod;
import underhold.sizing.edgepits.PileSizer;
import underhold.sizing.monitoring.MonitoringMethod;
import underhold.sizing.needles.NeedleMethod;
import underhold.sizing.pits.PitsMethod;

/**
 * Sizes a chosen option in a zone, from the site's facts and ground. Where there is no calculation
 * for an option it says so and gives no number.
 */
public final class SizingDesk {
  private static final Map<SupportOption, SizingMethod> METHODS =
      Map.of(
          SupportOption.PITS, new PitsMethod(),
          SupportOption.NEEDLES, new NeedleMethod(),
          SupportOption.DRILLED_PILES, new DrilledPiles(),
          SupportOption.BRACKET_PILES, new BracketPilesMethod(),
          SupportOption.EDGE_PITS, new EdgePitsMethod(),
          SupportOption.MONITOR, new MonitoringMethod());

  /**
   * Sizes an option in a zone.
   *
   * @param site the site; its file may hold settings, by option and name
   * @param advice what was advised of the zone
   * @param option the option to size, whatever its rank
   * @param settings NAME=VALUE, each in place of the site's own or the default
   */
  public Sized size(Site site, ZoneAdvice advice, SupportOption option, List<String> settings) {
    SizingMethod method = method(site, option);
    if (method == null) {
      return new Sized.NotThere(
          option,
          "There is nothing to size: a specialist decides what is built. The advice lists why and what to hand over.");
    }
    SettingTable table = method.settings();
    SettingTable.Read filed = table.parse(filed(site, method));
    SettingTable.Read read = table.parse(words(site, method, settings));
    List<String> problems = new ArrayList<>();
    for (String problem : read.problems()) {
      boolean inFile = filed.problems().contains(problem);
      problems.add(inFile ? "in the site's settings: " + problem : problem);
    }
    if (!problems.isEmpty()) {
      return new Sized.BadSettings(problems);
    }
    Sheet sheet = method.size(advice.view(), ground(site, advice.name()), read.settings());
    return new Sized.Done(
        StandingCaution.of(advice.ranking().of(option)).map(sheet::withFirst).orElse(sheet));
  }

  /**
   * The sheet of an option with the site's own settings, for its checks alone; empty where there is
   * no calculation. Where the file's settings cannot be used it asks about them.
   */
  public Optional<Sheet> quick(Site site, String zone, FactView facts, SupportOption option) {
    return quick(site, zone, facts, option, Guesses.TRIED);
  }

  /**
   * The same sheet.
   *
   * @param guesses what is done about inputs that nobody stated
   */
  Optional<Sheet> quick(
      Site site, String zone, FactView facts, SupportOption option, Guesses guesses) {
    return quick(site, zone, facts, option, guesses, piles(site));
  }

  /**
   * The same sheet.
   *
   * @param guesses what is done about inputs that nobody stated
   * @param piles sizes the drilled piles, those beside edge pits too, as {@link #piles} does
   */
  Optional<Sheet> quick(
      Site site,
      String zone,
      FactView facts,
      SupportOption option,
      Guesses guesses,
      PileSizer piles) {
    SizingMethod method =
        option == SupportOption.EDGE_PITS ? new EdgePitsMethod(piles) : METHODS.get(option);
    if (method == null) {
      return Optional.empty();
    }
    SettingTable.Read read = method.settings().parse(filed(site, method));
    if (!read.problems().isEmpty()) {
      return Optional.of(refused(option, read.problems()));
    }
    GroundProfile ground = ground(site, zone);
    return Optional.of(
        option == SupportOption.DRILLED_PILES
            ? piles.sized(facts, ground, guesses).sheet()
            : method.size(facts, ground, read.settings(), guesses));
  }

  /** Sizes drilled piles with the site's settings of them. */
  static PileSizer piles(Site site) {
    SizingMethod piles = Objects.requireNonNull(METHODS.get(SupportOption.DRILLED_PILES));
    return PileSizer.with(piles.settings().parse(filed(site, piles)).settings());
  }

  /** The method of an option; edge pits stand beside piles sized with the site's settings. */
  private static @Nullable SizingMethod method(Site site, SupportOption option) {
    return option == SupportOption.EDGE_PITS
        ? new EdgePitsMethod(piles(site))
        : METHODS.get(option);
  }

  /** A sheet without numbers that asks about the settings in the site's file. */
  private static Sheet refused(SupportOption option, List<String> problems) {
    return SheetBuilder.titled(option.label(), option.id())
        .missing(
            List.of(
                new MissingInput(
                    "the sizing settings in the site's file",
                    "What should these settings be?",
                    String.join("; ", problems))))
        .build();
  }

  /** The settings of an option; none where there is no calculation for it. */
  public List<SettingHelp> settings(SupportOption option) {
    SizingMethod method = METHODS.get(option);
    if (method == null) {
      return List.of();
    }
    SettingTable table = method.settings();
    return Stream.concat(
            table.numbers().stream().map(SettingHelp::of),
            table.choices().stream().map(SettingHelp::of))
        .toList();
  }

  /** The file's settings, then those given, so that the later word holds. */
  private static List<String> words(Site site, SizingMethod method, List<String> given) {
    List<String> words = new ArrayList<>(filed(site, method));
    words.addAll(given);
    return words;
  }

  private static List<String> filed(Site site, SizingMethod method) {
    return site.sizing().getOrDefault(method.id(), Map.of()).entrySet().stream()
        .map(entry -> entry.getKey() + "=" + entry.getValue())
        .toList();
  }

  /** The profile that holds at the zone: its own, else the site's. */
  private static GroundProfile ground(Site site, String zoneName) {
    return site.zones().stream()
        .filter(zone -> zone.name().equals(zoneName))
        .findFirst()
        .map(zone -> zone.ground().isEmpty() ? site.ground() : zone.ground())
        .orElseThrow(() -> new IllegalArgumentException("the site has no zone " + zoneName));
  }
}
