package underhold.review.audit;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Stream;
import underhold.advice.RulePack;
import underhold.threads.AllProcessors;

/**
 * The audit of a pack: its sections, and which of their defects engineers have accepted.
 *
 * @param pack the rules
 * @param cases the sites on which it was audited
 * @param effort how much was tried
 * @param sections what was found, in order
 * @param notes what engineers have written down
 */
public record RulesAudit(
    RulePack pack, List<AuditSite> cases, Effort effort, List<Section> sections, AuditNotes notes) {
  private static final List<Analysis> ANALYSES =
      List.of(
          new UnreachableRules(),
          new ShadowedRules(),
          new OppositeRules(),
          new DoubleCounting(),
          new ThresholdGaps(),
          new DerivedCircles(),
          new UnusedKnowledge(),
          new LeadingOptions(),
          new ExpectationCheck(),
          new Sensitivity(),
          new Coverage());

  public RulesAudit {
    cases = List.copyOf(cases);
    sections = List.copyOf(sections);
  }

  /** The names of all sections, in order. */
  public static List<String> names() {
    return ANALYSES.stream().map(Analysis::name).toList();
  }

  /** Audits a pack in every section. */
  public static RulesAudit of(
      RulePack pack, List<AuditSite> cases, AuditNotes notes, Effort effort) {
    return of(pack, cases, notes, effort, names());
  }

  /** Audits a pack in some sections, by their names. */
  public static RulesAudit of(
      RulePack pack, List<AuditSite> cases, AuditNotes notes, Effort effort, List<String> wanted) {
    return of(pack, cases, notes, effort, wanted, section -> {});
  }

  /**
   * Audits a pack in some sections, by their names, with all threads. Each section has a bench of
   * its own, so that none depends on another.
   *
   * @param done is told each section as it is done, one at a time, for an audit takes its time
   */
  public static RulesAudit of(
      RulePack pack,
      List<AuditSite> cases,
      AuditNotes notes,
      Effort effort,
      List<String> wanted,
      Consumer<String> done) {
    List<Section> sections =
        AllProcessors.each(
            ANALYSES.stream().filter(analysis -> wanted.contains(analysis.name())).toList(),
            analysis -> {
              Section section = analysis.run(Bench.of(pack, cases, notes, effort));
              synchronized (done) {
                done.accept(analysis.name());
              }
              return section;
            });
    return new RulesAudit(pack, cases, effort, sections, notes);
  }

  /** All defects, accepted or not. */
  public List<Defect> defects() {
    return sections.stream().flatMap(section -> section.defects().stream()).toList();
  }

  /** Why a defect may stand, if engineers have said so. */
  public Optional<Accepted> accepted(Defect defect) {
    return notes.accepted().stream().filter(one -> one.covers(defect)).findFirst();
  }

  /** The defects that nobody has accepted. */
  public List<Defect> unaccepted() {
    return defects().stream().filter(defect -> accepted(defect).isEmpty()).toList();
  }

  /** Acceptances of the sections audited, with the findings that are no longer there. */
  public List<Accepted> idle() {
    List<Defect> all = defects();
    List<String> audited = sections.stream().map(Section::name).toList();
    return notes.accepted().stream()
        .filter(one -> audited.contains(one.section()))
        .map(one -> one.of(one.idle(all)))
        .filter(one -> !one.findings().isEmpty())
        .toList();
  }

  /** The sites or combinations tried in all. */
  public long tried() {
    return Stream.of(sections).flatMap(List::stream).mapToLong(Section::tried).sum();
  }
}
