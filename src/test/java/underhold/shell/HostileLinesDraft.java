package underhold.shell;

import java.nio.file.Path;
import java.util.List;

/** Opens a site that may lack facts, as the interview does, for tests of other packages. */
public final class HostileLinesDraft {
  private HostileLinesDraft() {}

  /** What is said against the file; empty where it can be gone on with. */
  public static List<String> problems(Path file) {
    try {
      SiteFiles.readDraft(file);
      return List.of();
    } catch (Refusal refusal) {
      return refusal.messages();
    }
  }
}
