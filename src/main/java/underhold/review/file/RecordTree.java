package underhold.review.file;

import java.lang.reflect.RecordComponent;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Records as trees of maps and lists. */
public final class RecordTree {
  private RecordTree() {}

  /** The tree of a record: its components by name, in their order, without what is empty. */
  public static Map<String, Object> of(Record record) {
    Map<String, Object> tree = new LinkedHashMap<>();
    for (RecordComponent component : record.getClass().getRecordComponents()) {
      Object value = component(component, record);
      if (!(value instanceof Optional<?> maybe)) {
        tree.put(component.getName(), value(value));
      } else if (maybe.isPresent()) {
        tree.put(component.getName(), value(maybe.get()));
      }
    }
    return tree;
  }

  private static Object value(Object value) {
    if (value instanceof Raw raw) {
      return raw.tree();
    }
    if (value instanceof Record record) {
      return of(record);
    }
    if (value instanceof List<?> list) {
      return list.stream().map(RecordTree::value).toList();
    }
    return value instanceof Instant ? value.toString() : value;
  }

  private static Object component(RecordComponent component, Record record) {
    try {
      return component.getAccessor().invoke(record);
    } catch (ReflectiveOperationException e) {
      throw new IllegalStateException("a record of a file is public: " + record.getClass(), e);
    }
  }
}
