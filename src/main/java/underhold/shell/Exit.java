package underhold.shell;

/** Exit codes of the program. */
final class Exit {
  static final int DONE = 0;

  /** The site has a problem that the user must fix. */
  static final int SITE = 1;

  /** The command line is wrong. */
  static final int USAGE = 2;

  /** A fault of the program. */
  static final int FAULT = 3;

  /** Stopped by Ctrl-C, as shells count it: 128 + SIGINT. */
  static final int INTERRUPTED = 130;

  private Exit() {}
}
