package underhold.advice;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import underhold.quantity.Measure;
import underhold.quantity.ParsedQuantity;
import underhold.quantity.Quantity;
import underhold.site.PlainText;

/** Reads the thresholds of a rule pack, alone or over those of the pack built in. */
final class LimitTable {
  static final String FILE = "limits.json";

  private static final int MOST = 1000;
  private static final List<String> FIELDS =
      List.of("name", "label", "value", "measure", "basis", "source", "note", "plausible", "fine");

  private final PackFields fields;
  private final Map<String, Limit> limits = new LinkedHashMap<>();
  private final Map<String, Integer> lines = new LinkedHashMap<>();
  private final Set<String> broken = new HashSet<>();

  LimitTable(List<PackProblem> problems, @Nullable RulePack base) {
    this.fields = new PackFields(FILE, problems);
    if (base != null) {
      base.limits().all().forEach(limit -> limits.put(limit.name(), limit));
    }
  }

  /** The limits; those with problems are left out and kept in mind. */
  Limits read(PackNode table) {
    Set<String> base = Set.copyOf(limits.keySet());
    fields.only(table, "the table of limits", List.of("note", "limits"));
    List<PackNode> entries = fields.objects(table, "limits");
    if (entries.size() > MOST) {
      fields.problem(entries.get(MOST).line(), "more than " + MOST + " limits");
      return new Limits(List.copyOf(limits.values()));
    }
    for (PackNode entry : entries) {
      String name = fields.text(entry, "name").orElse("");
      fields.only(entry, "a limit", FIELDS);
      if (!name.matches("[a-z0-9][a-z0-9-]{0,59}")) {
        fields.problem(
            entry.line(),
            "a limit has a name of small letters, digits and hyphens, not "
                + PlainText.quoted(name));
      } else if (lines.putIfAbsent(name, entry.line()) != null) {
        problem(entry, name, "stands twice");
      } else {
        Optional<Limit> limit =
            base.contains(name) ? changed(entry, name) : whole(entry, name, base);
        limit.ifPresentOrElse(found -> limits.put(name, found), () -> broken.add(name));
      }
    }
    return new Limits(List.copyOf(limits.values()));
  }

  /** Whether the table names the limit and something is wrong with it, told already. */
  boolean isBroken(String limit) {
    return broken.contains(limit);
  }

  /** Its line in the table; 0 where it comes from the pack built in. */
  int line(String limit) {
    return lines.getOrDefault(limit, 0);
  }

  /** Another value for a limit of the pack built in: who changes it says what it rests on. */
  private Optional<Limit> changed(PackNode entry, String name) {
    Limit was = Objects.requireNonNull(limits.get(name));
    Optional<String> measure = fields.text(entry, "measure");
    if (measure.isPresent() && !measure.get().equals(was.value().measure().name())) {
      problem(entry, name, "measures " + was.value().measure().name() + " in the built-in rules");
    }
    if (fields.text(entry, "basis").isEmpty() || fields.text(entry, "source").isEmpty()) {
      problem(
          entry,
          name,
          "is changed: it needs its own basis and source (which may be empty), for those of the"
              + " built-in limit speak of another value");
    }
    return made(
        entry,
        name,
        was.value().measure(),
        fields.text(entry, "label").orElse(was.label()),
        fields.truth(entry, "fine", was.fine()),
        entry.members().containsKey("plausible") ? null : was.plausible());
  }

  private Optional<Limit> whole(PackNode entry, String name, Set<String> base) {
    String word = fields.text(entry, "measure").orElse("");
    Optional<Measure> measure =
        Arrays.stream(Measure.values()).filter(one -> one.name().equals(word)).findFirst();
    String label = fields.text(entry, "label").orElse("");
    String like = base.isEmpty() ? "" : PackFields.nearest(name, base);
    if (measure.isEmpty()) {
      problem(
          entry,
          name,
          (base.isEmpty() ? "" : "is new" + like + " and ")
              + "needs a measure, one of "
              + String.join(", ", Arrays.stream(Measure.values()).map(Measure::name).toList()));
    }
    if (label.isBlank()) {
      problem(entry, name, "has no label");
    }
    return measure.flatMap(
        found -> made(entry, name, found, label, fields.truth(entry, "fine", false), null));
  }

  private Optional<Limit> made(
      PackNode entry,
      String name,
      Measure measure,
      String label,
      boolean fine,
      @Nullable List<Quantity> inherited) {
    Optional<Basis> basis = fields.text(entry, "basis").flatMap(Basis::find);
    String source = fields.text(entry, "source").orElse("");
    if (basis.isEmpty()) {
      problem(entry, name, "has no basis; it is one of " + String.join(", ", Basis.words()));
    } else if (basis.get().claimsSource() && source.isBlank()) {
      problem(entry, name, "claims to be " + basis.get().word() + " and names no source");
    }
    Optional<String> text = fields.text(entry, "value");
    if (text.isEmpty()) {
      problem(entry, name, "needs a value as text with its unit, such as " + measure.example());
    }
    Optional<Quantity> value = text.flatMap(typed -> quantity(entry, name, typed, measure));
    List<Quantity> plausible = inherited == null ? plausible(entry, name, measure) : inherited;
    return basis.isEmpty() || value.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new Limit(
                name,
                label,
                value.get(),
                fine,
                basis.get(),
                source,
                fields.text(entry, "note").orElse(""),
                plausible));
  }

  private List<Quantity> plausible(PackNode entry, String name, Measure measure) {
    List<Quantity> ends = new ArrayList<>();
    fields
        .texts(entry, "plausible")
        .forEach(end -> quantity(end, name, end.text(), measure).ifPresent(ends::add));
    if (entry.members().containsKey("plausible")
        && (ends.size() != 2 || ends.get(0).si() >= ends.get(1).si())) {
      problem(entry, name, "has a plausible range that is not a least and a greatest value");
      return List.of();
    }
    return ends;
  }

  private Optional<Quantity> quantity(PackNode at, String name, String text, Measure measure) {
    return Quantity.parse(text, measure)
        .fold(
            parsed -> Optional.of(parsed.quantity()),
            (ParsedQuantity.Rejected rejected) -> {
              problem(at, name, rejected.explanation());
              return Optional.empty();
            });
  }

  private void problem(PackNode at, String name, String message) {
    fields.problem(at.line(), "the limit " + name + " " + message);
  }
}
