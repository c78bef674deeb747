package underhold.sizing.drilledpiles;

import static underhold.sizing.drilledpiles.PileInputs.*;

import java.util.Arrays;
import java.util.List;
import underhold.mechanics.pile.PileSection;
import underhold.mechanics.pile.axial.AllowableLoad.TestRegime;
import underhold.sizing.Amount;
import underhold.sizing.Choice;
import underhold.sizing.Origin;
import underhold.sizing.Setting;
import underhold.sizing.Settings;
import underhold.sizing.Verdict;
import underhold.sizing.zone.Inputs;
import underhold.sizing.zone.NumberInput;
import underhold.sizing.zone.WordInput;

/**
 * The inputs with what follows from them at once: levels, ground, section.
 *
 * @param inputs complete inputs
 * @param settings settings in force
 * @param layers layers from the surface down
 * @param access where the rig stands
 */
record PileCase(Inputs inputs, Settings settings, List<BondLayer> layers, Access access) {
  /** A micropile is at most so wide; larger pipe has other allowable stresses (12 in). */
  static final double WIDEST_MICROPILE = 0.3048 + 1e-9;

  /** Rust takes at most this share of a wall; judgement. */
  private static final double MOST_RUST = 0.9;

  /** A socket keeps at least this share of the casing's inner diameter; judgement. */
  private static final double LEAST_SOCKET = 0.5;

  /** Bars take at most this share of the socket, so that grout surrounds them; judgement. */
  private static final double MOST_BARS = 0.125;

  /** Ec over sqrt(f'c), both in MPa; ACI 318, 19.2.2, from memory. */
  private static final double CONCRETE_MODULUS = 4700;

  PileCase {
    layers = List.copyOf(layers);
  }

  static PileCase of(Inputs inputs, Settings settings, List<LayerInputs> layers) {
    return new PileCase(
        inputs,
        settings,
        layers.stream().map(one -> one.layer(inputs)).toList(),
        Access.of(inputs, settings));
  }

  double get(NumberInput input) {
    return inputs.get(input);
  }

  Amount amount(NumberInput input) {
    return inputs.amount(input);
  }

  double get(Setting setting) {
    return settings.get(setting);
  }

  Amount amount(Setting setting) {
    return settings.amount(setting);
  }

  boolean is(Choice choice, String word) {
    return settings.get(choice).equals(word);
  }

  boolean is(WordInput input, String word) {
    return inputs.find(input).filter(given -> given.value().equals(word)).isPresent();
  }

  String pattern() {
    return inputs.get(PATTERN);
  }

  /** How the piles stand: as under a column, in two rows, or in a grid. */
  String kind() {
    return access.rows() ? WALL : pattern();
  }

  /** Load per length on two rows of piles, kN/m. */
  double lineLoad() {
    return access.rows() ? get(AREA_LOAD) * get(WIDTH) : get(LINE_LOAD);
  }

  /** Length of the rows, m. */
  double lineLength() {
    return access.rows() ? get(LENGTH) : get(WALL_LENGTH);
  }

  double founding() {
    return get(FOUNDING);
  }

  /** Depth of the dug level below ground, m; the foundation's where nothing is dug below it. */
  double dugLevel() {
    return founding() + Math.max(get(DUG), 0);
  }

  /** Depth of the underside of the caps below ground, m. */
  double capLevel() {
    return Math.max(0, founding() - get(PileNumbers.HEAD_ABOVE));
  }

  /**
   * Depth below the dug level where side resistance begins to count, m: below the ground that the
   * dig disturbs and, where the pile is bared, below the depth at which it is taken as held, for
   * the casing is left down to there.
   */
  double notCounted() {
    PileStrength strength = new PileStrength(this);
    double disturbed = get(PileNumbers.DISTURBED);
    return strength.stages().isEmpty() ? disturbed : Math.max(disturbed, strength.fixity());
  }

  /** The same below ground, m. */
  double countedFrom() {
    return dugLevel() + notCounted();
  }

  /** Height that the excavation bares, m. */
  double baredHeight() {
    return dugLevel() - capLevel();
  }

  Setting diameterSetting() {
    return access.large() ? PileNumbers.LARGE_DIAMETER : PileNumbers.SMALL_DIAMETER;
  }

  Setting wallSetting() {
    return access.large() ? PileNumbers.LARGE_WALL : PileNumbers.SMALL_WALL;
  }

  Setting barSetting() {
    return access.large() ? PileNumbers.LARGE_BARS : PileNumbers.SMALL_BAR;
  }

  /** Diameter of casing and of the hole in soil, m. */
  double diameter() {
    return get(diameterSetting());
  }

  /** The casing as installed. */
  PileSection casing() {
    return new PileSection(diameter(), get(wallSetting()));
  }

  /** The casing after rust. */
  PileSection rusted() {
    double rust = Math.min(get(PileNumbers.RUST), MOST_RUST * get(wallSetting()));
    return new PileSection(diameter() - 2 * rust, get(wallSetting()) - rust);
  }

  /** Diameter of a socket in rock, m. */
  double socketDiameter() {
    double inner = casing().innerDiameterMetres();
    return Math.max(inner - get(PileNumbers.SOCKET_CLEARANCE), LEAST_SOCKET * inner);
  }

  /** Area of bars, m2, at most an eighth of the socket. */
  double barArea() {
    return Math.min(
        get(barSetting()),
        MOST_BARS * PileSection.uncased(socketDiameter()).grossAreaSquareMetres());
  }

  /** Modulus of concrete or grout, kPa: 4700 sqrt(f'c) in MPa. */
  double concreteModulus() {
    return CONCRETE_MODULUS * Math.sqrt(get(PileNumbers.CONCRETE) / 1000) * 1000;
  }

  /** E A of casing, fill and bars, kN. */
  double casedStiffness() {
    PileSection casing = casing();
    return get(PileNumbers.STEEL_MODULUS) * (casing.casingAreaSquareMetres() + barArea())
        + concreteModulus() * (casing.fillAreaSquareMetres() - barArea());
  }

  /** E A of an uncased pile of that diameter, kN. */
  double uncasedStiffness(double diameter) {
    double area = PileSection.uncased(diameter).grossAreaSquareMetres();
    return get(PileNumbers.STEEL_MODULUS) * barArea() + concreteModulus() * (area - barArea());
  }

  TestRegime tested() {
    return switch (settings.get(PileChoices.TESTED)) {
      case "static" -> TestRegime.STATIC;
      case "dynamic" -> TestRegime.DYNAMIC;
      default -> TestRegime.NONE;
    };
  }

  double safetyFactor() {
    return tested().usual();
  }

  /** Stated load of the structure on one group, kN. */
  double structureLoad() {
    return switch (pattern()) {
      case COLUMN -> get(COLUMN_LOAD);
      case WALL -> get(LINE_LOAD) * get(WALL_LENGTH);
      default -> get(AREA_LOAD) * get(LENGTH) * get(WIDTH);
    };
  }

  /** Total working load of one group, caps included, kN. */
  double totalLoad() {
    return structureLoad() * (1 + get(GroupNumbers.CAP_ALLOWANCE));
  }

  /** Distance between the two rows of piles either side of a footing, m. */
  double rowDistance() {
    return get(access.rows() ? WIDTH : FOOTING_WIDTH) + 2 * get(GroupNumbers.OFF_WALL);
  }

  /** Least spacing of piles, m. */
  double leastSpacing() {
    return Math.max(get(GroupNumbers.SPACING_RATIO) * diameter(), get(GroupNumbers.LEAST_SPACING));
  }

  /** Width over which the load bears on a transfer beam, m. */
  double loadWidth() {
    double width =
        switch (kind()) {
          case COLUMN -> get(WorkNumbers.LOAD_WIDTH);
          default -> get(access.rows() ? WIDTH : WALL_THICKNESS);
        };
    return Math.min(width, rowDistance());
  }

  /** Verdict of a check that does not pass: a value that nobody stated rules nothing out. */
  Verdict otherwise(NumberInput... used) {
    boolean guessed =
        Arrays.stream(used)
            .anyMatch(
                one -> inputs.find(one).filter(g -> g.origin() == Origin.ASSUMED).isPresent());
    return guessed ? Verdict.REFER : Verdict.FAILS;
  }

  /** The same for a check that rests on a word. */
  Verdict otherwiseWord(WordInput used) {
    boolean guessed = inputs.find(used).filter(g -> g.origin() == Origin.ASSUMED).isPresent();
    return guessed ? Verdict.REFER : Verdict.FAILS;
  }
}
