package underhold.advice;

import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The thresholds of a rule pack, by name. */
public final class Limits {
  private final Map<String, Limit> byName;

  /** The limits given; names are unique. */
  public Limits(List<Limit> limits) {
    Map<String, Limit> map = new LinkedHashMap<>();
    for (Limit limit : limits) {
      if (map.put(limit.name(), limit) != null) {
        throw new IllegalArgumentException("the limit " + limit.name() + " stands twice");
      }
    }
    byName = map;
  }

  public Collection<Limit> all() {
    return Collections.unmodifiableCollection(byName.values());
  }

  public Optional<Limit> find(String name) {
    return Optional.ofNullable(byName.get(name));
  }

  /**
   * The limit of that name.
   *
   * @throws IllegalArgumentException if there is none
   */
  public Limit require(String name) {
    Limit limit = byName.get(name);
    if (limit == null) {
      throw new IllegalArgumentException("the rule pack has no limit " + name);
    }
    return limit;
  }
}
