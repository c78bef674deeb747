package underhold.site;

import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * What a fact means while nobody knows it.
 *
 * @param treatment ask for it, assume the worse value meanwhile, or note that it is open
 * @param value the value assumed, as text of the dictionary; null unless assumed
 * @param because why
 * @param cases values assumed instead where other facts are known to be such
 */
public record Unknown(
    Treatment treatment, @Nullable String value, String because, List<Case> cases) {
  public Unknown {
    cases = List.copyOf(cases);
    if ((treatment == Treatment.ASSUME) != (value != null)) {
      throw new IllegalArgumentException("a value is assumed exactly where the treatment says so");
    }
  }

  /** What is done while the fact is unknown. */
  public enum Treatment {
    ASK,
    ASSUME,
    NOTE
  }

  /** A value assumed, and why, where every fact named has one of the values given. */
  public record Case(Map<String, Set<String>> when, String value, String because) {
    public Case {
      when = Map.copyOf(when);
    }
  }
}
