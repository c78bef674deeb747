package underhold.report.dossier;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Supplier;
import underhold.advice.Limit;
import underhold.advice.Rule;
import underhold.advice.RulePack;
import underhold.report.document.Prose;
import underhold.sizing.Basis;
import underhold.sizing.Source;

/**
 * The sources a package cites. Whatever is cited through here comes into the bibliography, with its
 * basis and the places where it is cited.
 */
final class Citations {
  private static final int LONGEST_SLUG = 40;

  private final RulePack pack;
  private final Map<String, Cited> cited = new LinkedHashMap<>();

  Citations(RulePack pack) {
    this.pack = pack;
  }

  /**
   * A source that was cited.
   *
   * @param anchor its anchor in the bibliography
   * @param words author, title, edition
   * @param worth what sort of source it is and how much of it was read; empty where not noted
   * @param bases on what basis it is cited
   * @param places what cites it, with the anchor of each
   */
  record Cited(
      String anchor, String words, String worth, Set<String> bases, Map<String, String> places) {}

  /** The sources cited so far, those of the rules first, each group by its words. */
  List<Cited> all() {
    List<Cited> all = new ArrayList<>(cited.values());
    all.sort(
        java.util.Comparator.comparing((Cited one) -> one.worth().isEmpty())
            .thenComparing(Cited::words)
            .thenComparing(Cited::anchor));
    return all;
  }

  /** Whether a source of a sheet is a source at all, and not statics, judgement or a fact. */
  static boolean isSource(Source source) {
    return !source.citation().isEmpty()
        && source.basis() != Basis.STATICS
        && source.basis() != Basis.SITE_FACT
        && source.basis() != Basis.JUDGEMENT;
  }

  /** The source of a sheet, not noting where it is cited. */
  Prose of(Source source) {
    return of(source, Optional.empty());
  }

  /** The source of something on a sheet. */
  Prose of(Source source, ZoneSheet sheet) {
    return of(source, Optional.of(sheet));
  }

  private Prose of(Source source, Optional<ZoneSheet> sheet) {
    if (!isSource(source)) {
      return Prose.of(source.words());
    }
    String anchor = anchor(source);
    Cited one = note(anchor, source.basis().label(), () -> entry(anchor, source.citation(), ""));
    sheet.ifPresent(
        from ->
            one.places().put("zone " + from.zone() + ", " + from.option().label(), from.anchor()));
    return Prose.empty().link(source.citation(), anchor).then(" (" + source.basis().label() + ")");
  }

  /** The sources of a rule, each with its place. */
  Prose of(Rule rule) {
    if (rule.citations().isEmpty()) {
      return Prose.of("none; " + rule.basis().notice());
    }
    List<Prose> all =
        rule.citations().stream()
            .map(
                citation ->
                    of(
                        citation.key(),
                        citation.place(),
                        rule.basis().notice(),
                        rule.id(),
                        Anchor.rule(rule.id())))
            .toList();
    return Cells.joined(all, "; ").then(" (" + rule.basis().notice() + ")");
  }

  /** The sources of a limit: a key and a place each, parted by semicolons. */
  Prose of(Limit limit) {
    List<Prose> all = new ArrayList<>();
    for (String part : limit.source().split(";")) {
      String[] words = part.strip().split("\\s+", 2);
      if (pack.sources().containsKey(words[0])) {
        String place = words.length > 1 ? words[1] : "";
        all.add(of(words[0], place, limit.basis().notice(), limit.label(), limit(limit.name())));
      }
    }
    return all.isEmpty()
        ? Prose.of("none; " + limit.basis().notice())
        : Cells.joined(all, "; ").then(" (" + limit.basis().notice() + ")");
  }

  /** The anchor of a limit. */
  static String limit(String name) {
    return Anchor.of("limit", name);
  }

  private Prose of(String key, String place, String basis, String label, String target) {
    underhold.advice.Source source = pack.source(key);
    String anchor = Anchor.source(key);
    note(anchor, basis, () -> entry(anchor, source.cite(""), worth(source)))
        .places()
        .put(label, target);
    return Prose.empty().link(source.cite(place), anchor);
  }

  private Cited note(String anchor, String basis, Supplier<Cited> fresh) {
    Cited one = cited.get(anchor);
    if (one == null) {
      one = fresh.get();
      cited.put(anchor, one);
    }
    one.bases().add(basis);
    return one;
  }

  private static Cited entry(String anchor, String words, String worth) {
    return new Cited(anchor, words, worth, new TreeSet<>(), new LinkedHashMap<>());
  }

  private static String worth(underhold.advice.Source source) {
    Set<String> words = new LinkedHashSet<>();
    words.add(source.kind());
    words.add(source.read().equals("not read") ? "not read" : "read " + source.read());
    if (!source.extent().isEmpty()) {
      words.add(source.extent());
    }
    return String.join("; ", words);
  }

  /** The same words give the same anchor, whatever else is cited. */
  private static String anchor(Source source) {
    String slug = Anchor.slug(source.citation());
    String start = slug.substring(0, Math.min(LONGEST_SLUG, slug.length()));
    return Anchor.of("cited", start, Integer.toHexString(source.citation().hashCode()));
  }
}
