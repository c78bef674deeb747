package underhold.shell;

import java.util.List;
import java.util.function.Supplier;

/**
 * A word that a command takes.
 *
 * @param name its name in help texts, in capitals
 * @param required whether the command cannot do without it
 * @param repeated whether it may stand several times
 * @param words the words it may be, for completion; empty where any word is allowed
 */
record Parameter(String name, boolean required, boolean repeated, Supplier<List<String>> words) {

  static Parameter needed(String name, Supplier<List<String>> words) {
    return new Parameter(name, true, false, words);
  }

  static Parameter optional(String name, Supplier<List<String>> words) {
    return new Parameter(name, false, false, words);
  }

  static Parameter several(String name, Supplier<List<String>> words) {
    return new Parameter(name, true, true, words);
  }

  /** A site file, which the interactive shell can do without. */
  static Parameter file() {
    return optional("FILE", SiteFiles::here);
  }

  /** The parameter in a usage line. */
  String usage() {
    String shown = repeated ? name + "..." : name;
    return required ? shown : "[" + shown + "]";
  }
}
