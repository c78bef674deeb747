package underhold.review.recheck;

/** What a difference is about, the most important first. */
public enum Topic {
  /** A zone is new, or is no more. */
  ZONE("zone"),
  /** The option that leads. */
  LEADER("leader"),
  /** The method that the scheme takes for a zone, or that there is a scheme at all. */
  SCHEME("scheme"),
  /** That there is a plan at all. */
  PLAN("plan"),
  /** How an option stands. */
  STANDING("standing"),
  /** The verdict of a check, or of a sheet. */
  VERDICT("verdict"),
  /** A safety rule that holds an option. */
  HOLD("hold"),
  /** A finding gained or lost. */
  FINDING("finding"),
  /** The options tied with the leader. */
  TIE("tie"),
  /** The place in the order. */
  RANK("rank"),
  /** Points. */
  POINTS("points"),
  /** A finding that says something else, or counts otherwise. */
  FINDING_TEXT("finding, text"),
  /** A fact, with what follows from it. */
  FACT("fact"),
  /** An input or setting of a sheet. */
  INPUT("input"),
  /** A number on a sheet. */
  NUMBER("number"),
  /** A step or check that a sheet has gained or lost. */
  SHEET("sheet"),
  /** A stage of the plan, its days, or what it waits for. */
  STAGE("stage"),
  /** The questions still open. */
  QUESTION("question"),
  /** How firm the first place is. */
  FIRMNESS("firmness");

  private final String word;

  Topic(String word) {
    this.word = word;
  }

  /** The word on screens and in files. */
  public String word() {
    return word;
  }
}
