package underhold.report.dossier;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import underhold.advice.Limit;
import underhold.advice.Rule;
import underhold.advice.RulePack;
import underhold.report.document.Prose;
import underhold.sizing.Basis;
import underhold.sizing.Source;

/**
 * The sources a package cites, each with a number by which it is cited: {@code [12] cl. 7.2}. A
 * number alone is a source that was read; any other basis stands beside it, wherever it is cited.
 * Whatever is cited through here comes into the bibliography, with its basis and the places where
 * it is cited. A package without a bibliography cites in full.
 */
final class Citations {
  private static final int LONGEST_SLUG = 40;

  private final RulePack pack;
  private final boolean numbered;
  private final Map<String, Cited> cited = new LinkedHashMap<>();
  private final Map<String, Cited> unnamed = new LinkedHashMap<>();

  private Citations(RulePack pack, boolean numbered) {
    this.pack = pack;
    this.numbered = numbered;
  }

  /** By numbers, for a package with a bibliography. */
  static Citations numbered(RulePack pack) {
    return new Citations(pack, true);
  }

  /** In full words, for a package without one. */
  static Citations inFull(RulePack pack) {
    return new Citations(pack, false);
  }

  /**
   * A source that was cited.
   *
   * @param number its number, in the order of citing; 0 where no work is named, so none is cited
   * @param anchor its anchor in the bibliography
   * @param words author, title, edition
   * @param worth what sort of source it is and how much of it was read; empty where not noted
   * @param bases on what basis it is cited
   * @param places what cites it, with the anchor of each
   */
  record Cited(
      int number,
      String anchor,
      String words,
      String worth,
      Set<String> bases,
      Map<String, String> places) {
    /** The number in brackets. */
    String mark() {
      return "[" + number + "]";
    }
  }

  /** The sources cited so far, by their numbers. */
  List<Cited> all() {
    return List.copyOf(cited.values());
  }

  /** What was cited that names no work: practice, rules of thumb and memory, in their words. */
  List<Cited> unnamed() {
    return List.copyOf(unnamed.values());
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
    if (!isSource(source) || !numbered) {
      return Prose.of(source.words());
    }
    Work work = Work.of(source.citation());
    boolean read = source.basis() == Basis.STANDARD || source.basis() == Basis.PUBLISHED;
    boolean named = read || work.named();
    Cited one =
        note(
            named ? cited : unnamed,
            anchor(work.title()),
            source.basis().label(),
            work.title(),
            "");
    sheet.ifPresent(
        from ->
            one.places().put("zone " + from.zone() + ", " + from.option().label(), from.anchor()));
    if (!named) {
      return Prose.empty()
          .link(source.citation(), one.anchor())
          .then(" (" + source.basis().label() + ")");
    }
    return Prose.of(work.before().isEmpty() ? "" : work.before() + "; ")
        .then(mark(one, work.place()))
        .then(read ? "" : " (" + source.basis().label() + ")");
  }

  /** The basis of a rule, then its sources, each with its place. */
  Prose of(Rule rule) {
    return all(
        rule.basis(),
        rule.citations().stream()
            .map(
                citation ->
                    of(
                        citation.key(),
                        citation.place(),
                        rule.basis(),
                        rule.id(),
                        Anchor.rule(rule.id())))
            .toList());
  }

  /** The basis of a limit, then its sources: a key and a place each, parted by semicolons. */
  Prose of(Limit limit) {
    List<Prose> all = new ArrayList<>();
    for (String part : limit.source().split(";")) {
      String[] words = part.strip().split("\\s+", 2);
      if (pack.sources().containsKey(words[0])) {
        String place = words.length > 1 ? words[1] : "";
        all.add(of(words[0], place, limit.basis(), limit.label(), limit(limit.name())));
      }
    }
    return all(limit.basis(), all);
  }

  private static Prose all(underhold.advice.Basis basis, List<Prose> sources) {
    return sources.isEmpty()
        ? Prose.of(basis.notice() + "; no source")
        : Prose.of(basis.notice() + ": ").then(Cells.joined(sources, "; "));
  }

  /** The anchor of a limit. */
  static String limit(String name) {
    return Anchor.of("limit", name);
  }

  private Prose of(
      String key, String place, underhold.advice.Basis basis, String label, String target) {
    underhold.advice.Source source = pack.source(key);
    Cited one = note(cited, Anchor.source(key), basis.notice(), source.cite(""), worth(source));
    one.places().put(label, target);
    boolean said = basis == underhold.advice.Basis.FROM_MEMORY || !source.fromMemory();
    return numbered
        ? mark(one, place).then(said ? "" : " (from memory, verify)")
        : Prose.of(source.cite(place));
  }

  private static Prose mark(Cited one, String place) {
    return Prose.empty()
        .link(one.mark(), one.anchor())
        .then(place.isEmpty() ? Prose.empty() : Prose.of(" " + place));
  }

  private Cited note(
      Map<String, Cited> all, String anchor, String basis, String words, String worth) {
    Cited one =
        all.computeIfAbsent(
            anchor,
            fresh ->
                new Cited(
                    all == cited ? cited.size() + 1 : 0,
                    anchor,
                    words,
                    worth,
                    new TreeSet<>(),
                    new LinkedHashMap<>()));
    one.bases().add(basis);
    return one;
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
  private static String anchor(String title) {
    String slug = Anchor.slug(title);
    String start = slug.substring(0, Math.min(LONGEST_SLUG, slug.length()));
    return Anchor.of("cited", start, Integer.toHexString(title.hashCode()));
  }
}
