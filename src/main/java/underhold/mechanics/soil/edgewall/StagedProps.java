package underhold.mechanics.soil.edgewall;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import underhold.mechanics.soil.Require;

/**
 * Props set one level after another as the ground in front goes down.
 *
 * <p>Levels stand at fixed depths l1, l1 + s, l1 + 2 s ... Before a level is set the ground is dug
 * to its depth plus the overdig; a level is left out where the whole excavation is no deeper than
 * that. Stage k has k levels and the ground at the next level plus the overdig, the last stage at
 * the bottom of the excavation. The force of a prop is its greatest in any stage. So a deeper
 * excavation never lowers the force of a prop. Basis: statics; the rule of levels is judgement.
 *
 * @param pressure pressure on the back
 * @param firstDepthMetres depth of the first level l1
 * @param spacingMetres spacing s
 * @param overdigMetres ground dug below a level before it is set
 * @param excavationMetres bottom of the excavation below the top of the wall
 */
public record StagedProps(
    BackPressure pressure,
    double firstDepthMetres,
    double spacingMetres,
    double overdigMetres,
    double excavationMetres) {

  /** Most levels (judgement: more is a mistake of units). */
  private static final int MOST_LEVELS = 100;

  public StagedProps {
    Require.notNegative(firstDepthMetres, "depth of the first level", "m");
    Require.positive(spacingMetres, "spacing of the levels", "m");
    Require.positive(overdigMetres, "overdig", "m");
    Require.notNegative(excavationMetres, "depth of the excavation", "m");
    if (excavationMetres / spacingMetres > MOST_LEVELS) {
      throw new IllegalArgumentException(
          "levels every " + spacingMetres + " m in " + excavationMetres + " m are too many");
    }
  }

  /** Depths of the levels; none where the excavation ends before the first is needed. */
  public List<Double> levels() {
    List<Double> levels = new ArrayList<>();
    double next = firstDepthMetres;
    while (next + overdigMetres < excavationMetres) {
      levels.add(next);
      next = firstDepthMetres + levels.size() * spacingMetres;
    }
    return List.copyOf(levels);
  }

  /** Ground in front before the first level is set, or at the end where there is none [m]. */
  public double firstCutMetres() {
    return Math.min(firstDepthMetres + overdigMetres, excavationMetres);
  }

  /** The stages with props, in order. */
  public List<ProppedWall> stages() {
    List<Double> levels = levels();
    List<ProppedWall> stages = new ArrayList<>();
    for (int set = 1; set <= levels.size(); set++) {
      double ground = set < levels.size() ? levels.get(set) + overdigMetres : excavationMetres;
      stages.add(new ProppedWall(pressure, levels.subList(0, set), ground));
    }
    return List.copyOf(stages);
  }

  /** Greatest force of each prop over all stages, by a method [kN per metre]. */
  public List<Double> greatest(Function<ProppedWall, ProppedWall.Forces> method) {
    List<Double> greatest = new ArrayList<>();
    for (ProppedWall stage : stages()) {
      List<Double> forces = method.apply(stage).props();
      for (int i = 0; i < forces.size(); i++) {
        if (i == greatest.size()) {
          greatest.add(forces.get(i));
        } else {
          greatest.set(i, Math.max(greatest.get(i), forces.get(i)));
        }
      }
    }
    return List.copyOf(greatest);
  }
}
