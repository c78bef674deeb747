package underhold.site;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import underhold.site.FileNode.Kind;
import underhold.site.SiteProblem.Code;

/** The entries of an object of a site file, with the checks that hold for every object. */
public final class ObjectEntries {
  private final String place;
  private final FileNode node;
  private final Problems problems;
  private final Map<String, FileNode> entries = new LinkedHashMap<>();

  private ObjectEntries(String place, FileNode node, Problems problems) {
    this.place = place;
    this.node = node;
    this.problems = problems;
  }

  /**
   * Takes the entries with allowed names; every other name, every double and every {@code null} is
   * a problem.
   */
  public static ObjectEntries of(
      FileNode node, String place, Collection<String> allowed, Problems problems) {
    ObjectEntries result = new ObjectEntries(place, node, problems);
    problems.visit(place, node);
    if (node.kind() != Kind.OBJECT) {
      wrongType(node, place, Kind.OBJECT, problems);
      return result;
    }
    for (FileNode.Member member : node.members()) {
      result.take(member, allowed);
    }
    return result;
  }

  private void take(FileNode.Member member, Collection<String> allowed) {
    String name = member.name();
    if (!allowed.contains(name)) {
      String suggestion = problems.isFull() ? "" : NearestName.question(name, allowed);
      at(member, Code.UNKNOWN_NAME, "there is no entry " + PlainText.quoted(name), suggestion);
    } else if (entries.containsKey(name)) {
      at(member, Code.DUPLICATE_NAME, name + " stands twice", "keep one of the two");
    } else {
      entries.put(name, member.value());
      problems.visit(placeOf(name), member.value());
    }
  }

  private void at(FileNode.Member member, Code code, String message, String suggestion) {
    problems.add(
        code,
        placeOf(PlainText.shown(member.name())),
        member.line(),
        member.column(),
        PlainText.shown(member.name()),
        message,
        suggestion);
  }

  /** The entries taken, by name. */
  Map<String, FileNode> all() {
    return entries;
  }

  /** The place of an entry in messages. */
  public String placeOf(String name) {
    return place.isEmpty() ? name : place + "." + name;
  }

  /** The entry of that name, if it is there. */
  public Optional<FileNode> entry(String name) {
    return Optional.ofNullable(entries.get(name));
  }

  /** A text entry; empty, with a problem, where it is something else. */
  Optional<String> text(String name) {
    return entry(name).flatMap(value -> text(value, placeOf(name), problems));
  }

  /** A name that must be there and be fit to print. */
  String requiredName(String what) {
    Optional<String> name = text("name");
    if (entry("name").isEmpty()) {
      missing("name", what + " needs a name", "add \"name\": \"…\"");
    }
    name.flatMap(PlainText::whyNoName)
        .ifPresent(why -> problems.add(Code.NOT_ALLOWED_VALUE, placeOf("name"), why, ""));
    return name.orElse("").strip();
  }

  /** The note, if there is one. */
  String note() {
    Optional<String> note = text("note");
    note.flatMap(PlainText::whyNoNote)
        .ifPresent(why -> problems.add(Code.NOT_ALLOWED_VALUE, placeOf("note"), why, ""));
    return note.orElse("");
  }

  /** The items of a list entry; empty, with a problem, where it is something else. */
  List<FileNode> list(String name, int most) {
    Optional<FileNode> value = entry(name);
    if (value.isEmpty()) {
      return List.of();
    }
    if (value.get().kind() != Kind.LIST) {
      wrongType(value.get(), placeOf(name), Kind.LIST, problems);
      return List.of();
    }
    List<FileNode> items = value.get().items();
    if (items.size() > most) {
      problems.add(
          Code.TOO_MANY,
          placeOf(name),
          "there are " + items.size() + " entries; at most " + most + " are read",
          "");
      return List.of();
    }
    return items;
  }

  /** Reports an entry that is not there. */
  public void missing(String name, String message, String suggestion) {
    problems.add(
        Code.MISSING_REQUIRED, placeOf(name), node.line(), node.column(), "", message, suggestion);
  }

  static Optional<String> text(FileNode value, String place, Problems problems) {
    if (value.kind() == Kind.TEXT) {
      return Optional.of(value.text());
    }
    wrongType(value, place, Kind.TEXT, problems);
    return Optional.empty();
  }

  /** Reports a value of another kind than wanted. */
  public static void wrongType(FileNode value, String place, Kind wanted, Problems problems) {
    problems.visit(place, value);
    problems.add(
        Code.WRONG_TYPE,
        place,
        "this is " + value.kind().phrase() + "; " + wanted.phrase() + " is needed",
        value.kind() == Kind.NULL && !place.isEmpty() ? "leave the entry out" : "");
  }
}
