package underhold.review;

import java.util.ArrayList;
import java.util.List;
import underhold.consult.Consultant;

/**
 * Our answers to published jobs beside what the jobs call for.
 *
 * @param rows one a zone, in the order of the jobs
 */
public record AgreementTable(List<Agreement> rows) {
  public AgreementTable {
    rows = List.copyOf(rows);
  }

  /** Answers every zone of the jobs. */
  public static AgreementTable of(Consultant consultant, List<PublishedJob> jobs) {
    List<Agreement> rows = new ArrayList<>();
    for (PublishedJob job : jobs) {
      for (Expectation expected : job.expectations()) {
        rows.add(new Agreement(job, expected, consultant.weigh(job.site(), job.zone(expected))));
      }
    }
    return new AgreementTable(rows);
  }

  /** The rows of one outcome. */
  public List<Agreement> rows(Outcome outcome) {
    return rows.stream().filter(row -> row.outcome() == outcome).toList();
  }

  /** How many jobs there are. */
  public int jobs() {
    return (int) rows.stream().map(row -> row.job().name()).distinct().count();
  }

  /** How many zones call for a choice. */
  public int scored() {
    return rows.size() - rows(Outcome.NOT_SCORED).size();
  }

  /** How many options that must not lead the jobs name, zone by zone. */
  public int named() {
    return rows.stream().mapToInt(row -> row.expected().out().size()).sum();
  }

  /** How many of those are not kept back. */
  public int letThrough() {
    return rows.stream().mapToInt(row -> row.letThrough().size()).sum();
  }
}
