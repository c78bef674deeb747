package underhold.consult;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import underhold.advice.SupportOption;
import underhold.site.GroundProfile;
import underhold.site.Site;
import underhold.sizing.Sheet;
import underhold.sizing.pits.PitsFromSite;
import underhold.sizing.pits.PitsSetting;
import underhold.sizing.pits.PitsSettings;
import underhold.sizing.pits.PitsSizing;

/**
 * Sizes a chosen option in a zone, from the site's facts and ground. Where there is no calculation
 * for an option it says so and gives no number.
 */
public final class SizingDesk {

  /**
   * Sizes an option in a zone.
   *
   * @param site the site; its file may hold settings, by option and name
   * @param advice what was advised of the zone
   * @param option the option to size, whatever its rank
   * @param settings NAME=VALUE, each in place of the site's own or the default
   */
  public Sized size(Site site, ZoneAdvice advice, SupportOption option, List<String> settings) {
    return switch (option) {
      case PITS -> pits(site, advice, settings);
      case NEEDLES, DRILLED_PILES, BRACKET_PILES, EDGE_PITS ->
          new Sized.NotThere(
              option,
              "There is no calculation sheet for "
                  + option.label()
                  + " yet. Nothing was sized: an engineer must size them.");
      case MONITOR ->
          new Sized.NotThere(
              option,
              "There is nothing to size: to protect and monitor is a plan of readings, limits and actions, not a structure."
                  + " The advice lists what it requires.");
      case REFER ->
          new Sized.NotThere(
              option,
              "There is nothing to size: a specialist decides what is built. The advice lists why and what to hand over.");
    };
  }

  /** The settings of an option; none where there is no calculation for it. */
  public List<SettingHelp> settings(SupportOption option) {
    if (option != SupportOption.PITS) {
      return List.of();
    }
    return Stream.concat(
            Arrays.stream(PitsSetting.values()).map(one -> SettingHelp.of(one.setting())),
            Stream.of(timber()))
        .toList();
  }

  private static SettingHelp timber() {
    return new SettingHelp(
        PitsSettings.TIMBER,
        PitsSettings.TIMBER_LABEL,
        Optional.empty(),
        PitsSettings.timbers(),
        PitsSettings.TIMBER_SOURCE);
  }

  private static Sized pits(Site site, ZoneAdvice advice, List<String> settings) {
    PitsSettings.Read filed = PitsSettings.parse(filed(site));
    PitsSettings.Read read = PitsSettings.parse(words(site, settings));
    List<String> problems = new ArrayList<>();
    for (String problem : read.problems()) {
      boolean inFile = filed.problems().contains(problem);
      problems.add(inFile ? "in the site's settings: " + problem : problem);
    }
    if (!problems.isEmpty()) {
      return new Sized.BadSettings(problems);
    }
    Sheet sheet = PitsFromSite.size(advice.view(), ground(site, advice.name()), read.settings());
    return new Sized.Done(
        StandingCaution.of(advice.ranking().of(SupportOption.PITS))
            .map(sheet::withFirst)
            .orElse(sheet));
  }

  /** The file's settings, then those given, so that the later word holds. */
  private static List<String> words(Site site, List<String> given) {
    List<String> words = new ArrayList<>(filed(site));
    words.addAll(given);
    return words;
  }

  private static List<String> filed(Site site) {
    return site.sizing().getOrDefault(PitsSizing.METHOD, Map.of()).entrySet().stream()
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
