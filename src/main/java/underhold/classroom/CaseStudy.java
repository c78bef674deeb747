package underhold.classroom;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import underhold.site.Site;
import underhold.site.SiteReading;
import underhold.site.Zone;

/** A case with its site as it is known at every stage. */
public final class CaseStudy {
  private final String name;
  private final CaseFile file;
  private final KnownSite known;
  private final Site full;
  private final Map<FactPlace, Integer> stages = new LinkedHashMap<>();

  /** A case that the reader found whole. */
  CaseStudy(String name, CaseFile file, KnownSite known, Site full) {
    this.name = name;
    this.file = file;
    this.known = known;
    this.full = full;
    for (int i = 0; i < file.stages().size(); i++) {
      int stage = i;
      file.stages().get(i).places().forEach(place -> stages.put(place, stage));
    }
  }

  /** The name of its file without the ending. */
  public String name() {
    return name;
  }

  public CaseFile file() {
    return file;
  }

  /** The site with all that ever becomes known. */
  public Site full() {
    return full;
  }

  public List<CaseStage> stages() {
    return file.stages();
  }

  /** The number of the stage of that name, from 0. */
  public Optional<Integer> stage(String wanted) {
    return IntStream.range(0, stages().size())
        .filter(i -> stages().get(i).name().equalsIgnoreCase(wanted))
        .boxed()
        .findFirst();
  }

  /** The zone of that name; the only one where the name is empty. */
  public Optional<Zone> zone(String wanted) {
    if (wanted.isBlank() && full.zones().size() == 1) {
      return Optional.of(full.zones().get(0));
    }
    return full.zones().stream()
        .filter(zone -> zone.name().equalsIgnoreCase(wanted.strip()))
        .findFirst();
  }

  /** Where a zone has a fact: in the zone itself, or for the whole site. */
  public Optional<FactPlace> place(String zone, String fact) {
    FactPlace own = new FactPlace(zone, fact);
    FactPlace common = new FactPlace("", fact);
    return stages.containsKey(own)
        ? Optional.of(own)
        : stages.containsKey(common) ? Optional.of(common) : Optional.empty();
  }

  /** The stage at which a fact becomes known. */
  public int stageOf(FactPlace place) {
    Integer stage = stages.get(place);
    if (stage == null) {
      throw new IllegalArgumentException("the case has no fact " + place);
    }
    return stage;
  }

  /** Where a mark stands among those of its stage: zones in order, all together, questions. */
  int turn(String about) {
    List<String> all = new ArrayList<>(full.zones().stream().map(Zone::name).toList());
    all.add(SchemeAnswer.ABOUT);
    file.questions().forEach(question -> all.add(question.id()));
    return all.indexOf(about);
  }

  /** The question of that id. */
  public Optional<Question> question(String id) {
    return file.questions().stream().filter(one -> one.id().equalsIgnoreCase(id)).findFirst();
  }

  /**
   * The site as somebody knows it.
   *
   * @param stage the last stage known, from 0
   * @param asked facts known beside
   * @throws IllegalArgumentException if what is known contradicts itself, as a fact asked for may
   *     contradict one believed
   */
  public Site known(int stage, Set<FactPlace> asked) {
    return known
        .reading(stage, asked)
        .fold(
            SiteReading.Valid::site,
            invalid -> {
              throw new IllegalArgumentException(invalid.problems().get(0).text());
            });
  }

  /** Whether what is known with those facts beside is free of contradiction. */
  public boolean consistent(int stage, Set<FactPlace> asked) {
    return known.reading(stage, asked).fold(valid -> true, invalid -> false);
  }
}
