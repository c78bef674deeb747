package underhold.sizing.zone;

import java.util.Map;
import java.util.Optional;

/** The site's soil classes as the classes of the sizing; judgement, the weaker where in doubt. */
public final class SiteSoils {
  private static final Map<String, SoilClass> CLASSES =
      Map.ofEntries(
          Map.entry("rock", SoilClass.ROCK),
          Map.entry("decomposed-rock", SoilClass.DENSE_SAND),
          Map.entry("hard-clay-or-till", SoilClass.STIFF_CLAY),
          Map.entry("cemented-sand", SoilClass.HARD),
          Map.entry("dense-gravel", SoilClass.DENSE_GRAVEL),
          Map.entry("dense-sand", SoilClass.DENSE_SAND),
          Map.entry("loose-sand", SoilClass.LOOSE_SAND),
          Map.entry("mixed-fine-sand", SoilClass.SILT),
          Map.entry("silt", SoilClass.SILT),
          Map.entry("stiff-clay", SoilClass.STIFF_CLAY),
          Map.entry("soft-clay", SoilClass.SOFT_CLAY),
          Map.entry("cohesive-fill", SoilClass.FILL),
          Map.entry("fill", SoilClass.FILL),
          Map.entry("peat", SoilClass.PEAT));

  /** What a bearing layer is called; hard clay is taken as stiff until its strength is stated. */
  private static final Map<String, SoilClass> BEARING =
      Map.of(
          "rock", SoilClass.ROCK,
          "dense-granular", SoilClass.DENSE_SAND,
          "hard-clay", SoilClass.STIFF_CLAY,
          "stiff-clay", SoilClass.STIFF_CLAY);

  private SiteSoils() {}

  public static Optional<SoilClass> soil(String word) {
    return Optional.ofNullable(CLASSES.get(word));
  }

  public static Optional<SoilClass> bearing(String word) {
    return Optional.ofNullable(BEARING.get(word));
  }
}
