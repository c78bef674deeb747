package underhold.consult.stage;

/** What kind of work a stage of the plan is. */
public enum StageKind {
  SURVEY("survey"),
  DECIDE("decide"),
  PREPARE("prepare"),
  WATER("water"),
  DRILL("drill"),
  BUILD("build"),
  LOAD("load"),
  ACCEPT("accept"),
  PITS("pits"),
  CLOSE("close"),
  DIG("dig"),
  LASTING("lasting"),
  RENEW("new support"),
  HAND_BACK("hand back"),
  REMOVE("remove"),
  AFTER("readings after"),
  REINSTATE("reinstate");

  private final String word;

  StageKind(String word) {
    this.word = word;
  }

  /** The word on screens and in files. */
  public String word() {
    return word;
  }

  /** Whether it takes ground away from a structure or from a face. */
  public boolean opensGround() {
    return this == PITS || this == DIG;
  }
}
