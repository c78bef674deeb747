package underhold.sizing;

/** What a stage of a sheet does, so that the stages of several zones can be set in one order. */
public enum StageRole {
  /** Survey, trial, investigation: nothing of the ground or the structure is changed. */
  PREPARE,
  /** Drills or drives piles that do not carry yet. */
  DRILL,
  /** Builds, cures or tests parts of a support that does not carry yet. */
  BUILD,
  /** Moves load from soil to the support. */
  LOAD,
  /**
   * Proves, locks off or releases what was loaded, each with its own hold points; at the end of the
   * last one the support carries.
   */
  LOCK,
  /** Drills, builds and loads piles by a sheet of their own. */
  CARRY,
  /** How each pit is dug; no stage of its own. */
  PIT_RULES,
  /** One round of pits. */
  PITS,
  /** Makes one wall of the pits. */
  CLOSE,
  /** Digs, and sets the brace of that level. */
  DIG,
  /** Builds what stays. */
  LASTING,
  /** Gives the load of a temporary support to what stays. */
  HAND_BACK,
  /** Watches while others work. */
  WATCH,
  /** What is done when a reading reaches a level; no stage of its own. */
  TRIGGER,
  /** Readings after the work. */
  AFTER
}
