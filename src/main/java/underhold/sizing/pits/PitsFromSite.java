package underhold.sizing.pits;

import static underhold.sizing.pits.PitsFact.*;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import underhold.site.FactView;
import underhold.site.GroundProfile;
import underhold.sizing.Basis;
import underhold.sizing.Caution;
import underhold.sizing.Given;
import underhold.sizing.Guesses;
import underhold.sizing.MissingInput;
import underhold.sizing.Origin;
import underhold.sizing.Phrase;
import underhold.sizing.Sheet;
import underhold.sizing.Source;
import underhold.sizing.zone.SiteFacts;

/**
 * Sizes pits from the facts and the ground of a zone.
 *
 * <p>Every value keeps its origin. What the zone does not say stays unsaid and is asked for by the
 * sheet; where the dictionary has a careful value for it meanwhile, that goes in as assumed, except
 * for what the sheet cannot do without. The footing, where its material is known, is what spans a
 * pit, else the wall; rubble in either counts as rubble. Only a structure in good condition counts
 * as sound.
 */
public final class PitsFromSite {
  private static final Map<String, WallMaterial> FOOTINGS =
      Map.of(
          "strong-concrete", WallMaterial.REINFORCED_CONCRETE,
          "plain-concrete", WallMaterial.PLAIN_CONCRETE,
          "rubble", WallMaterial.RUBBLE);

  private static final Map<String, WallMaterial> WALLS =
      Map.of(
          "reinforced-concrete", WallMaterial.REINFORCED_CONCRETE,
          "reinforced-masonry", WallMaterial.SOLID_MASONRY,
          "unreinforced-masonry", WallMaterial.SOLID_MASONRY,
          "rubble", WallMaterial.RUBBLE);

  /** Facts of the dictionary that answer what the sheet asks for. */
  private static final Map<String, String> FACTS =
      Map.of(
          WALL_LINE_LOAD.id(),
          "lineLoad",
          WALL_LENGTH.id(),
          "wallLength",
          FOOTING_WIDTH.id(),
          "footingWidth",
          FOUNDING_DEPTH.id(),
          "foundingDepth",
          EXCAVATION_BELOW_FOOTING.id(),
          "excavationBelowFooting",
          WATER_ABOVE_PIT_BASE.id(),
          "groundWaterDepth",
          "material",
          "footingStrength",
          "face-soil",
          "worstSoil");

  private final SiteFacts facts;
  private final SiteDepths depths;
  private final GroundProfile ground;
  private final PitsInputBuilder input = PitsInput.builder();
  private String above = "";
  private final SiteAmounts amounts = new SiteAmounts(input);

  private PitsFromSite(FactView view, GroundProfile ground, PitsSettings settings) {
    this.facts = new SiteFacts(view);
    this.depths = new SiteDepths(facts, settings.get(PitsSetting.TOE_EMBEDMENT));
    this.ground = ground;
  }

  /** The sheet of a zone; where pits do not fit the zone it says so and holds no number of ours. */
  public static Sheet size(FactView view, GroundProfile ground, PitsSettings settings) {
    return size(view, ground, settings, Guesses.TRIED);
  }

  /**
   * The same sheet.
   *
   * @param guesses what is done about inputs that nobody stated
   */
  static Sheet size(FactView view, GroundProfile ground, PitsSettings settings, Guesses guesses) {
    PitsFromSite site = new PitsFromSite(view, ground, settings);
    PitsInput input = site.filled();
    PitsFit fit = PitsFit.of(site.facts, site.depths);
    List<MissingInput> bars = new ArrayList<>(fit.problems());
    bars.addAll(site.amounts.refused());
    Sheet sheet = PitsSizing.size(input, settings, bars, guesses);
    if (!fit.holds()) {
      return sheet.withMissing(fit.problems());
    }
    return site.cautioned(sheet)
        .withMissing(sheet.missing().stream().map(site::inWordsOfTheSite).toList());
  }

  private Sheet cautioned(Sheet sheet) {
    Sheet more = sheet;
    if (!above.isEmpty()) {
      more =
          more.withFirst(
              new Caution(
                  "soil above the footing",
                  Phrase.of(
                      "The approach pits also go through: "
                          + above
                          + ". Their boards are reckoned for the soil at the faces below the footing: look at the soil above as they are sunk."),
                  "the competent person",
                  Source.judgement()));
    }
    if (facts.word("artesian").filter(word -> word.value().equals("yes")).isPresent()) {
      more =
          more.withFirst(
              new Caution(
                  "water under pressure",
                  Phrase.of(
                      "The site says that water stands under pressure below the base. This sheet does not check whether it lifts the base of a pit: relieve it or choose another method."),
                  "the engineer of record",
                  Source.judgement()));
    }
    return more;
  }

  /** The question of the dictionary, by whose name the site's file takes the answer. */
  private MissingInput inWordsOfTheSite(MissingInput missing) {
    String fact = FACTS.get(missing.name());
    return fact == null ? missing : new MissingInput(fact, facts.question(fact), missing.why());
  }

  /** The input of the sheet. */
  public static PitsInput input(FactView view, GroundProfile ground, PitsSettings settings) {
    return new PitsFromSite(view, ground, settings).filled();
  }

  private PitsInput filled() {
    amounts.put(WALL_LINE_LOAD, facts.number("lineLoad"));
    amounts.put(WALL_LENGTH, facts.number("wallLength"));
    amounts.put(FOOTING_WIDTH, facts.number("footingWidth"));
    amounts.put(FOUNDING_DEPTH, facts.number("foundingDepth"));
    amounts.put(EXCAVATION_BELOW_FOOTING, depths.excavation());
    amounts.put(PIT_DEPTH, depths.pits().map(d -> SiteFacts.as(d, Math.max(d.value(), 0.3))));
    amounts.put(WATER_ABOVE_PIT_BASE, depths.water());
    amounts.put(CLEAR_SPAN, facts.numberOrAssumed("clearSpan"));
    amounts.put(MOVEMENT_LIMIT, facts.numberOrAssumed("movementLimit"));
    material();
    choices();
    OptionalDouble pits =
        depths.pits().map(Given::value).map(OptionalDouble::of).orElse(OptionalDouble.empty());
    SiteGround soils = new SiteGround(facts, ground, pits);
    soils.write(input, amounts);
    above = soils.above();
    return input.build();
  }

  private void material() {
    Optional<Given<WallMaterial>> footing = named("footingStrength", FOOTINGS);
    Optional<Given<WallMaterial>> wall = named("structureMaterial", WALLS);
    Optional<Given<WallMaterial>> rubble =
        wall.filter(given -> given.value() == WallMaterial.RUBBLE);
    Optional<Given<WallMaterial>> spans = rubble.or(() -> footing).or(() -> wall);
    spans.ifPresent(input::material);
    if (spans.isPresent() && !spans.get().value().concrete()) {
      amounts.put(WALL_THICKNESS, facts.number("wallThickness"));
    }
  }

  private Optional<Given<WallMaterial>> named(String fact, Map<String, WallMaterial> materials) {
    return facts
        .word(fact)
        .flatMap(
            word ->
                Optional.ofNullable(materials.get(word.value()))
                    .map(material -> SiteFacts.as(word, material)));
  }

  private void choices() {
    facts.wordOrAssumed("structureCondition").ifPresent(word -> input.condition(condition(word)));
    facts.wordOrAssumed("standUp").ifPresent(this::standUp);
    facts.word("bracingRoom").ifPresent(word -> input.bracePossible(yes(word)));
    facts
        .wordOrAssumed("stabilitySeen")
        .ifPresent(word -> input.lateralStabilityVerified(yes(word)));
  }

  private static Given<WallCondition> condition(Given<String> word) {
    if (word.value().equals("good")) {
      return SiteFacts.as(word, WallCondition.SOUND);
    }
    return word.origin() == Origin.ASSUMED
        ? SiteFacts.as(word, WallCondition.POOR)
        : new Given<>(
            WallCondition.POOR,
            Origin.DERIVED,
            new Source(
                "the site says " + word.value() + "; only good condition counts as sound",
                Basis.JUDGEMENT));
  }

  /** A time that no one took, but a rule inferred from the soil, is assumed. */
  private void standUp(Given<String> word) {
    Origin origin = word.origin() == Origin.STATED ? Origin.STATED : Origin.ASSUMED;
    StandUp time = StandUp.valueOf(word.value().toUpperCase(Locale.ROOT));
    input.standUp(new Given<>(time, origin, word.source()));
  }

  private static Given<Boolean> yes(Given<String> word) {
    return SiteFacts.as(word, word.value().equals("yes"));
  }
}
