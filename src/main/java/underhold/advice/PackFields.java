package underhold.advice;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import underhold.site.NearestName;
import underhold.site.PlainText;

/** Takes the fields of a table of a rule pack; whatever is of the wrong kind is a problem. */
final class PackFields {
  private static final int GREATEST = 1000;
  private static final int LONGEST_NUMBER = 20;

  private final String file;
  private final List<PackProblem> problems;

  PackFields(String file, List<PackProblem> problems) {
    this.file = file;
    this.problems = problems;
  }

  void problem(int line, String message) {
    problems.add(new PackProblem(file, line, message));
  }

  /** Tells every field that the table does not know. */
  void only(PackNode node, String what, Collection<String> known) {
    for (Map.Entry<String, PackNode> member : node.members().entrySet()) {
      if (!known.contains(member.getKey())) {
        problem(
            member.getValue().line(),
            what
                + " has no field "
                + PlainText.quoted(member.getKey())
                + nearest(member.getKey(), known)
                + "; it has "
                + String.join(", ", known));
      }
    }
  }

  static String nearest(String typed, Collection<String> known) {
    String question = NearestName.question(typed, known);
    return question.isEmpty() ? "" : ": " + question;
  }

  /** The piece of that name, if it is there and of that kind. */
  Optional<PackNode> field(PackNode node, String name, PackNode.Kind kind) {
    PackNode field = node.members().get(name);
    if (field == null) {
      return Optional.empty();
    }
    if (field.kind() != kind) {
      problem(field.line(), name + " is " + kind.phrase() + ", not " + field.kind().phrase());
      return Optional.empty();
    }
    return Optional.of(field);
  }

  Optional<String> text(PackNode node, String name) {
    return field(node, name, PackNode.Kind.TEXT).map(PackNode::text);
  }

  boolean truth(PackNode node, String name, boolean otherwise) {
    return field(node, name, PackNode.Kind.TRUTH)
        .map(field -> field.text().equals("true"))
        .orElse(otherwise);
  }

  /** A whole number from 0 to 1000. */
  OptionalInt whole(PackNode node, String name) {
    Optional<PackNode> field = field(node, name, PackNode.Kind.NUMBER);
    if (field.isEmpty()) {
      return OptionalInt.empty();
    }
    String text = field.get().text();
    if (text.length() <= LONGEST_NUMBER) {
      try {
        BigDecimal number = new BigDecimal(text);
        if (number.signum() >= 0 && number.compareTo(BigDecimal.valueOf(GREATEST)) <= 0) {
          return OptionalInt.of(number.intValueExact());
        }
      } catch (ArithmeticException | NumberFormatException e) {
        // told below
      }
    }
    problem(
        field.get().line(),
        name + " is a whole number from 0 to " + GREATEST + ", not " + PlainText.shown(text));
    return OptionalInt.empty();
  }

  /** The objects of a list; what is no object is a problem. */
  List<PackNode> objects(PackNode node, String name) {
    return items(node, name, PackNode.Kind.OBJECT);
  }

  /** The texts of a list; what is no text is a problem. */
  List<PackNode> texts(PackNode node, String name) {
    return items(node, name, PackNode.Kind.TEXT);
  }

  private List<PackNode> items(PackNode node, String name, PackNode.Kind kind) {
    List<PackNode> items = new ArrayList<>();
    field(node, name, PackNode.Kind.LIST)
        .ifPresent(
            list -> {
              for (PackNode item : list.items()) {
                if (item.kind() == kind) {
                  items.add(item);
                } else {
                  problem(
                      item.line(),
                      name + " holds " + kind.phrase() + ", not " + item.kind().phrase());
                }
              }
            });
    return items;
  }
}
