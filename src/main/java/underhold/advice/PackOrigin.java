package underhold.advice;

import java.util.List;

/**
 * Where a rule pack comes from.
 *
 * @param folder the folder as the user named it; empty for the pack built in
 * @param extending whether it is written as changes to the pack built in
 * @param trials the limits set for a trial, as the user typed them
 */
public record PackOrigin(String folder, boolean extending, List<String> trials) {
  /** The pack built into the program. */
  public static final PackOrigin BUILT_IN = new PackOrigin("", false, List.of());

  public PackOrigin {
    trials = List.copyOf(trials);
  }

  /** A pack that stands in a folder. */
  static PackOrigin folder(String folder, boolean extending) {
    return new PackOrigin(folder, extending, List.of());
  }

  /** The same pack with limits set for a trial. */
  PackOrigin with(List<String> typed) {
    return new PackOrigin(folder, extending, typed);
  }

  /** Whether it stands in a folder of the user's. */
  public boolean outside() {
    return !folder.isEmpty();
  }
}
