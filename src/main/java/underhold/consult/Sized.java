package underhold.consult;

import java.util.List;
import underhold.advice.SupportOption;
import underhold.sizing.Sheet;

/** What comes of asking for the sizing of an option in a zone. */
public sealed interface Sized {

  /** A sheet; it may lack inputs, which it then asks for. */
  record Done(Sheet sheet) implements Sized {}

  /**
   * No sheet, and no number, for this option.
   *
   * @param option the option asked for
   * @param message why, and what there is instead
   */
  record NotThere(SupportOption option, String message) implements Sized {}

  /**
   * Settings that cannot be used; nothing was sized.
   *
   * @param problems one sentence each
   */
  record BadSettings(List<String> problems) implements Sized {
    public BadSettings {
      problems = List.copyOf(problems);
      if (problems.isEmpty()) {
        throw new IllegalArgumentException("bad settings have at least one problem");
      }
    }
  }
}
