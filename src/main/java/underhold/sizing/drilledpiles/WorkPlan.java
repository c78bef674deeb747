package underhold.sizing.drilledpiles;

import static underhold.sizing.drilledpiles.PileInputs.*;

import underhold.sizing.drilledpiles.BondLayer.Kind;

/**
 * Lengths and hours of one pile and of all.
 *
 * @param casingMetres casing of one pile, from where it is drilled
 * @param soilMetres drilled in soil, one pile
 * @param rockMetres drilled in rock, one pile
 * @param pieceMetres length of a piece of casing that fits
 * @param joints joints of one pile, in the casing that stays
 * @param temporaryMetres depth below ground to which the hole is cased while it is drilled; 0 where
 *     no deeper than the casing that stays
 * @param temporaryJoints joints more for that, made and broken again
 * @param pileHours hours of one pile
 * @param piles piles of all groups
 * @param groups columns, or 1
 */
record WorkPlan(
    double casingMetres,
    double soilMetres,
    double rockMetres,
    double pieceMetres,
    int joints,
    double temporaryMetres,
    int temporaryJoints,
    double pileHours,
    int piles,
    int groups) {

  private static final int MADE_AND_BROKEN = 2;

  static WorkPlan of(PileCase site, PileDesign design) {
    double start = startLevel(site);
    double casing = design.casingBottomMetres() - start;
    double rock =
        site.layers().stream()
            .filter(one -> one.kind() == Kind.ROCK)
            .mapToDouble(
                one ->
                    Math.max(
                        0,
                        Math.min(one.bottomMetres(), design.toeMetres())
                            - Math.max(one.topMetres(), start)))
            .sum();
    double soil = design.toeMetres() - start - rock;
    double piece = piece(site);
    int joints = piece > 0 ? (int) Math.max(0, Math.ceil(casing / piece - 1e-9) - 1) : 0;
    double temporary = temporary(site, design);
    int all = piece > 0 ? (int) Math.ceil((temporary - start) / piece - 1e-9) - 1 : 0;
    int more = Math.max(0, all - joints);
    double slow = site.is(OBSTRUCTIONS, "frequent") ? site.get(WorkNumbers.OBSTRUCTION) : 1;
    double hours =
        site.get(WorkNumbers.SETUP)
            + slow
                * (soil / site.get(WorkNumbers.SOIL_RATE) + rock / site.get(WorkNumbers.ROCK_RATE))
            + (joints + MADE_AND_BROKEN * more) * site.get(WorkNumbers.JOINT_HOURS);
    int groups = site.pattern().equals(COLUMN) ? (int) Math.round(site.get(COLUMN_COUNT)) : 1;
    return new WorkPlan(
        casing,
        soil,
        rock,
        piece,
        joints,
        temporary,
        more,
        hours,
        groups * design.layout().piles(),
        groups);
  }

  /** Depth below ground to which ground that does not stand open is drilled through, m. */
  private static double temporary(PileCase site, PileDesign design) {
    if (site.is(PileChoices.TEMPORARY, "none")) {
      return 0;
    }
    double deepest =
        site.layers().stream()
            .filter(one -> one.topMetres() < design.toeMetres())
            .mapToDouble(
                one -> {
                  double bottom = Math.min(one.bottomMetres(), design.toeMetres());
                  return falls(one, bottom, site.get(WATER)) ? bottom : 0;
                })
            .max()
            .orElse(0);
    return deepest > design.casingBottomMetres() ? deepest : 0;
  }

  /** Whether a hole down to there does not stand open without casing; judgement. */
  private static boolean falls(BondLayer layer, double bottom, double water) {
    return switch (layer.soil()) {
      case FILL, PEAT, SOFT_CLAY, LOOSE_SAND, SILT -> true;
      case DENSE_SAND, DENSE_GRAVEL -> bottom > water;
      case HARD, STIFF_CLAY, ROCK -> false;
    };
  }

  /** Level from which piles are drilled: inside at the caps, else at ground level, m below it. */
  static double startLevel(PileCase site) {
    return site.access().from().equals("inside") ? site.capLevel() : 0;
  }

  /** Headroom less what the rig takes, at most the longest piece; 0 where nothing is left. */
  private static double piece(PileCase site) {
    double room = site.access().headroomMetres() - site.get(WorkNumbers.RIG_TOP);
    return Math.max(0, Math.min(room, site.get(WorkNumbers.LONGEST_PIECE)));
  }

  /** Whether work is possible in night closures only. */
  static boolean byNight(PileCase site) {
    return switch (site.settings().get(PileChoices.WORK_BY)) {
      case "day" -> false;
      case "night" -> site.inputs().has(NIGHT);
      default -> site.is(FROM_TRACK, "yes") && site.inputs().has(NIGHT);
    };
  }

  /** Working hours of a shift or a night, h. */
  static double hoursPerShift(PileCase site) {
    return byNight(site)
        ? Math.max(
            0,
            Math.min(
                site.get(NIGHT) - site.get(WorkNumbers.POSSESSION_LOSS),
                site.get(WorkNumbers.SHIFT)))
        : site.get(WorkNumbers.SHIFT);
  }
}
