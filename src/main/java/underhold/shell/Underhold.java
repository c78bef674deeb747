package underhold.shell;

/** The program. */
public final class Underhold {
  private Underhold() {}

  public static void main(String[] args) {
    System.out.println("underhold");
  }
}
