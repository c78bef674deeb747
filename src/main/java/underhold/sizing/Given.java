package underhold.sizing;

/**
 * A value with where it comes from.
 *
 * @param value the value
 * @param origin stated, derived, assumed, default or set
 * @param source who says so; for an assumed value why this one
 */
public record Given<T>(T value, Origin origin, Source source) {
  private static final Source USER = new Source("", Basis.SITE_FACT);

  /** A value that the user stated. */
  public static <T> Given<T> stated(T value) {
    return new Given<>(value, Origin.STATED, USER);
  }

  /** A value that follows from stated ones. */
  public static <T> Given<T> derived(T value, String why) {
    return new Given<>(value, Origin.DERIVED, new Source(why, Basis.STATICS));
  }

  /** A value assumed for want of a fact. */
  public static <T> Given<T> assumed(T value, Source why) {
    return new Given<>(value, Origin.ASSUMED, why);
  }
}
