package underhold.review.audit;

/**
 * How much an audit tries.
 *
 * @param tries random sites for each question that is answered by trying; at least 1
 * @param seed the same seed tries the same sites
 */
public record Effort(int tries, long seed) {
  public static final int USUAL_TRIES = 1000;
  public static final int MOST_TRIES = 1_000_000;
  public static final long USUAL_SEED = 20261127;
  public static final Effort USUAL = new Effort(USUAL_TRIES, USUAL_SEED);

  public Effort {
    if (tries < 1 || tries > MOST_TRIES) {
      throw new IllegalArgumentException("an audit tries from 1 to " + MOST_TRIES + " sites");
    }
  }
}
