package underhold.review.file;

import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.time.DateTimeException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import underhold.site.FileNode;
import underhold.site.FileNode.Kind;
import underhold.site.ObjectEntries;
import underhold.site.PlainText;
import underhold.site.Problems;
import underhold.site.SiteProblem.Code;

/**
 * Makes records of the values of a file. Every component must be there unless it is optional, no
 * other name may, and what a record refuses is told with its place.
 */
final class RecordReader {
  private final Problems problems;

  RecordReader(Problems problems) {
    this.problems = problems;
  }

  /** The record; null, with problems, where it cannot be made. */
  <T> @Nullable T read(FileNode node, Class<T> type, String place) {
    int before = problems.count();
    RecordComponent[] components = type.getRecordComponents();
    List<String> names = Arrays.stream(components).map(RecordComponent::getName).toList();
    ObjectEntries entries = ObjectEntries.of(node, place, names, problems);
    if (node.kind() != Kind.OBJECT) {
      return null;
    }
    Object[] values = new Object[components.length];
    for (int i = 0; i < components.length; i++) {
      values[i] = component(components[i], entries);
    }
    return problems.count() > before ? null : made(type, components, values, place);
  }

  private @Nullable Object component(RecordComponent component, ObjectEntries entries) {
    String name = component.getName();
    Optional<FileNode> entry = entries.entry(name);
    boolean optional = component.getType() == Optional.class;
    if (entry.isEmpty()) {
      if (!optional) {
        entries.missing(
            name,
            "the entry " + name + " is not there",
            "the file is damaged: save it again, or fetch an earlier copy");
      }
      return Optional.empty();
    }
    Type type = component.getGenericType();
    String place = entries.placeOf(name);
    return optional
        ? Optional.ofNullable(value(entry.get(), argument(type), place))
        : value(entry.get(), type, place);
  }

  private @Nullable Object value(FileNode node, Type type, String place) {
    problems.visit(place, node);
    if (type instanceof ParameterizedType generic) {
      return generic.getRawType() == List.class
          ? list(node, argument(generic), place)
          : map(node, place);
    }
    if (type == String.class) {
      return of(Kind.TEXT, node, place) ? node.text() : null;
    }
    if (type == boolean.class) {
      return of(Kind.BOOLEAN, node, place) ? node.text().equals("true") : null;
    }
    if (type == int.class || type == Integer.class || type == double.class) {
      return of(Kind.NUMBER, node, place) ? number(node, type != double.class, place) : null;
    }
    if (type == Instant.class) {
      return of(Kind.TEXT, node, place) ? instant(node, place) : null;
    }
    if (type == Raw.class) {
      return new Raw(NodeTree.of(node));
    }
    return read(node, (Class<?>) type, place);
  }

  private boolean of(Kind kind, FileNode node, String place) {
    if (node.kind() != kind) {
      ObjectEntries.wrongType(node, place, kind, problems);
    }
    return node.kind() == kind;
  }

  private @Nullable Object number(FileNode node, boolean whole, String place) {
    double value = Double.parseDouble(node.text());
    if (whole && value == Math.rint(value) && Math.abs(value) <= Integer.MAX_VALUE) {
      return (int) value;
    }
    if (!whole && Double.isFinite(value)) {
      return value;
    }
    return bad(place, whole ? "this is no whole number" : "this number is too large");
  }

  private @Nullable Object instant(FileNode node, String place) {
    try {
      return Instant.parse(node.text());
    } catch (DateTimeException e) {
      return bad(place, "this is no instant; one looks like 2026-03-05T14:30:00Z");
    }
  }

  private @Nullable Object bad(String place, String message) {
    problems.add(Code.NOT_ALLOWED_VALUE, place, message, "");
    return null;
  }

  private List<Object> list(FileNode node, Type type, String place) {
    List<Object> items = new ArrayList<>();
    if (of(Kind.LIST, node, place)) {
      for (int i = 0; i < node.items().size() && !problems.isFull(); i++) {
        Object item = value(node.items().get(i), type, place + "[" + i + "]");
        if (item != null) {
          items.add(item);
        }
      }
    }
    return items;
  }

  /** Texts by name. */
  private Map<String, String> map(FileNode node, String place) {
    Map<String, String> texts = new LinkedHashMap<>();
    if (of(Kind.OBJECT, node, place)) {
      for (FileNode.Member member : node.members()) {
        String at = place + "." + PlainText.shown(member.name());
        problems.visit(at, member.value());
        if (of(Kind.TEXT, member.value(), at)
            && texts.put(member.name(), member.value().text()) != null) {
          problems.add(
              Code.DUPLICATE_NAME,
              at,
              PlainText.shown(member.name()) + " stands twice",
              "keep one of the two");
        }
      }
    }
    return texts;
  }

  private static Type argument(Type type) {
    return ((ParameterizedType) type).getActualTypeArguments()[0];
  }

  private <T> @Nullable T made(
      Class<T> type, RecordComponent[] components, Object[] values, String place) {
    Class<?>[] types =
        Arrays.stream(components).map(RecordComponent::getType).toArray(Class<?>[]::new);
    try {
      return type.getDeclaredConstructor(types).newInstance(values);
    } catch (InvocationTargetException e) {
      problems.add(
          Code.NOT_ALLOWED_VALUE, place, String.valueOf(e.getTargetException().getMessage()), "");
      return null;
    } catch (ReflectiveOperationException e) {
      throw new IllegalStateException("a record of a file is public: " + type, e);
    }
  }
}
