package underhold.sizing.drilledpiles;

import static underhold.sizing.drilledpiles.PileInputs.BRACING;

import java.util.ArrayList;
import java.util.List;
import underhold.mechanics.pile.PileSection;
import underhold.mechanics.pile.column.BaringStages;
import underhold.mechanics.pile.column.DepthOfFixity;
import underhold.mechanics.pile.column.SteelColumn;
import underhold.mechanics.pile.structure.IbcAllowable;
import underhold.mechanics.pile.structure.IbcAllowable.Concrete;
import underhold.mechanics.pile.structure.IbcAllowable.Steel;
import underhold.sizing.drilledpiles.BondLayer.Kind;

/** Strength of the pile's own section, held by the ground and bared. */
final class PileStrength {
  private final PileCase site;

  PileStrength(PileCase site) {
    this.site = site;
  }

  Steel steel() {
    boolean micropile =
        switch (site.settings().get(PileChoices.STEEL_RULE)) {
          case "micropile" -> true;
          case "pipe" -> false;
          default -> site.diameter() <= PileCase.WIDEST_MICROPILE;
        };
    return micropile ? Steel.MICROPILE_PIPE : Steel.OTHER_PIPE;
  }

  double steelStress() {
    return steel().stressKilopascals(site.get(PileNumbers.CASING_YIELD));
  }

  double barStress() {
    return Steel.BARS.stressKilopascals(site.get(PileNumbers.BAR_YIELD));
  }

  double concreteStress(Concrete where) {
    return IbcAllowable.concreteKilopascals(where, site.get(PileNumbers.CONCRETE));
  }

  /** Allowable load of the cased pile, kN. */
  double cased() {
    return concreteStress(Concrete.IN_CASING_OR_ROCK)
            * (site.rusted().fillAreaSquareMetres() - site.barArea())
        + steelStress() * site.rusted().casingAreaSquareMetres()
        + barStress() * site.barArea();
  }

  /** Allowable load where the casing ends, kN. */
  double uncased(boolean rock) {
    return concreteStress(where(rock)) * (bondArea(rock) - site.barArea())
        + barStress() * site.barArea();
  }

  static Concrete where(boolean rock) {
    return rock ? Concrete.IN_CASING_OR_ROCK : Concrete.UNCASED;
  }

  double bondArea(boolean rock) {
    return PileSection.uncased(rock ? site.socketDiameter() : site.diameter())
        .grossAreaSquareMetres();
  }

  /** Whether the casing reaches rock, so that no soil is met uncased. */
  static boolean startsInRock(List<SidePiece> pieces) {
    return !pieces.isEmpty() && pieces.get(0).layer().kind() == Kind.ROCK;
  }

  double allowable(List<SidePiece> pieces) {
    return Math.min(cased(), uncased(startsInRock(pieces)));
  }

  SteelColumn column() {
    PileSection rusted = site.rusted();
    return new SteelColumn(
        rusted.casingAreaSquareMetres(),
        rusted.casingInertia(),
        site.get(PileNumbers.CASING_YIELD),
        site.get(PileNumbers.STEEL_MODULUS));
  }

  double bendingStiffness() {
    return column().inertia() * column().modulusKilopascals();
  }

  /** Whether the ground just below the dug level of any stage is soft. */
  boolean softGround() {
    List<Double> dug = new ArrayList<>(List.of(site.dugLevel()));
    for (double brace : braces()) {
      dug.add(
          Math.min(site.capLevel() + brace + site.get(ColumnNumbers.DIG_BELOW), site.dugLevel()));
    }
    return site.layers().stream()
        .filter(BondLayer::soft)
        .anyMatch(
            one ->
                dug.stream()
                    .anyMatch(
                        level ->
                            one.topMetres() < level + DepthOfFixity.STIFF_METRES
                                && one.bottomMetres() > level));
  }

  double fixity() {
    return switch (site.settings().get(PileChoices.FIXITY)) {
      case "sand" -> DepthOfFixity.sandMetres(bendingStiffness(), site.get(ColumnNumbers.NH));
      case "clay" -> DepthOfFixity.clayMetres(bendingStiffness(), site.get(ColumnNumbers.K_CLAY));
      default -> softGround() ? DepthOfFixity.SOFT_METRES : DepthOfFixity.STIFF_METRES;
    };
  }

  boolean headHeld() {
    return site.is(PileChoices.HEAD_HELD, "yes");
  }

  /** Depths of braces below the cap, m; none without room for them. */
  List<Double> braces() {
    double height = site.baredHeight();
    double first = site.get(ColumnNumbers.FIRST_BRACE);
    int levels = (int) Math.round(site.get(ColumnNumbers.BRACE_LEVELS));
    List<Double> braces = new ArrayList<>();
    if (site.is(BRACING, "yes") && height > first) {
      for (int i = 0; i < levels; i++) {
        braces.add(first + i * (height - first) / levels);
      }
    }
    return braces;
  }

  List<BaringStages.Stage> stages() {
    if (site.is(PileChoices.BARED, "no")) {
      return List.of();
    }
    return BaringStages.stages(
        new BaringStages.Case(
            site.baredHeight(),
            braces(),
            site.get(ColumnNumbers.DIG_BELOW),
            fixity(),
            site.get(headHeld() ? ColumnNumbers.K_HELD : ColumnNumbers.K_SWAY)));
  }

  /** Allowable load as a column, least of all stages, kN. */
  double bared(List<BaringStages.Stage> stages) {
    return stages.stream()
        .mapToDouble(one -> column(one.factor(), one.spanMetres()))
        .min()
        .orElseGet(() -> column(1, 0));
  }

  boolean lrfd() {
    return site.is(PileChoices.STEEL_DESIGN, "lrfd");
  }

  /** Working load that the bared casing may carry over a length, kN. */
  double column(double factor, double length) {
    return lrfd()
        ? column().designKilonewtons(factor, length) / site.get(ColumnNumbers.STEEL_LOAD_FACTOR)
        : column().allowableKilonewtons(factor, length);
  }
}
