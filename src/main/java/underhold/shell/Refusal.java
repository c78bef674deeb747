package underhold.shell;

import java.util.List;

/** A command stops because of something the user has to put right. */
final class Refusal extends RuntimeException {
  private static final long serialVersionUID = 1L;

  private final int exitCode;
  private final transient List<String> messages;

  private Refusal(int exitCode, List<String> messages) {
    super(String.join("; ", messages), null, false, false);
    this.exitCode = exitCode;
    this.messages = List.copyOf(messages);
  }

  /** The site has problems. */
  static Refusal site(List<String> problems) {
    return new Refusal(Exit.SITE, problems);
  }

  static Refusal site(String problem) {
    return site(List.of(problem));
  }

  /** The command line is wrong. */
  static Refusal usage(String... messages) {
    return new Refusal(Exit.USAGE, List.of(messages));
  }

  int exitCode() {
    return exitCode;
  }

  List<String> messages() {
    return messages;
  }
}
