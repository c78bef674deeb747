package underhold.classroom;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import underhold.review.file.FileReading;
import underhold.site.NearestName;
import underhold.site.PlainText;
import underhold.site.Problems;
import underhold.site.Site;
import underhold.site.SiteProblem;
import underhold.site.SiteProblem.Code;
import underhold.site.SiteReading;

/**
 * Reads cases. A case is whole, with a site free of problems at every stage, or all problems found
 * are told.
 */
public final class CaseReader {
  private final CaseFile file;
  private final Problems problems;
  private final KnownSite known;

  private CaseReader(CaseFile file, String fileName) {
    this.file = file;
    this.problems = new Problems(fileName);
    this.known = new KnownSite(fileName, file);
  }

  /** Reads a file; nothing is thrown whatever it holds. */
  public static FileReading<CaseStudy> read(Path path) {
    Path name = path.getFileName();
    String fileName = name == null ? path.toString() : name.toString();
    return checked(CaseFile.FILES.read(path), fileName);
  }

  /** Reads a text; messages name the file so. */
  public static FileReading<CaseStudy> read(String text, String fileName) {
    return checked(CaseFile.FILES.read(text, fileName), fileName);
  }

  /** The name by which commands call the case of a file. */
  public static String nameOf(String fileName) {
    return fileName.endsWith(CaseFile.ENDING)
        ? fileName.substring(0, fileName.length() - CaseFile.ENDING.length())
        : fileName;
  }

  private static FileReading<CaseStudy> checked(FileReading<CaseFile> read, String fileName) {
    List<SiteProblem> found = new ArrayList<>(read.problems());
    Optional<CaseStudy> study = Optional.empty();
    if (read.content().isPresent()) {
      CaseReader reader = new CaseReader(read.content().get(), fileName);
      DoubleEntries.find(read.text(), reader.problems);
      study = reader.study(nameOf(fileName));
      found.addAll(reader.problems.all());
    }
    return new FileReading<>(
        found.isEmpty() ? study : Optional.empty(), read.text(), read.state(), found);
  }

  private Optional<CaseStudy> study(String name) {
    SiteReading full = known.full();
    Optional<Site> site = full.fold(valid -> Optional.of(valid.site()), invalid -> none(invalid));
    stages();
    site.ifPresent(this::names);
    if (problems.isEmpty()) {
      for (int i = 0; i < file.stages().size(); i++) {
        stageIsSound(i);
      }
    }
    return site.map(found -> new CaseStudy(name, file, known, found));
  }

  private Optional<Site> none(SiteReading.Invalid invalid) {
    invalid
        .problems()
        .forEach(
            one ->
                problems.add(one.code(), "site." + one.place(), one.message(), one.suggestion()));
    return Optional.empty();
  }

  private void stageIsSound(int stage) {
    known
        .reading(stage, Set.of())
        .fold(
            valid -> true,
            invalid -> {
              invalid
                  .problems()
                  .forEach(
                      one ->
                          problems.add(
                              one.code(),
                              "stages[" + stage + "]",
                              "what is known then is no sound site: "
                                  + one.place()
                                  + ": "
                                  + one.message(),
                              one.suggestion()));
              return false;
            });
  }

  /** Every fact of the site becomes known at one stage, and no other fact. */
  private void stages() {
    Map<FactPlace, Integer> seen = new HashMap<>();
    Set<FactPlace> stated = stated();
    Set<String> stageNames = new HashSet<>();
    boolean ground = false;
    for (int i = 0; i < file.stages().size(); i++) {
      CaseStage stage = file.stages().get(i);
      String at = "stages[" + i + "]";
      if (!stageNames.add(stage.name())) {
        problems.add(
            Code.DUPLICATE_NAME, at, "two stages are called " + PlainText.shown(stage.name()), "");
      }
      if (ground && stage.ground()) {
        problems.add(Code.DUPLICATE_NAME, at, "the ground is known already", "ground is false");
      }
      ground |= stage.ground();
      for (FactPlace place : stage.places()) {
        if (!stated.contains(place)) {
          problems.add(
              Code.UNKNOWN_NAME,
              at,
              "the site states no " + shown(place),
              "state it there or leave it out");
        } else if (seen.put(place, i) != null) {
          problems.add(
              Code.DUPLICATE_NAME, at, shown(place) + " is known already", "keep one of the two");
        }
      }
    }
    for (FactPlace place : stated) {
      if (!seen.containsKey(place)) {
        problems.add(
            Code.MISSING_REQUIRED, "stages", "no stage tells " + shown(place), "add it to one");
      }
    }
    beliefs(seen);
    if (!ground && hasGround()) {
      problems.add(Code.MISSING_REQUIRED, "stages", "no stage tells the ground", "");
    }
    if (file.stages().get(0).surprise()) {
      problems.add(Code.NOT_ALLOWED_VALUE, "stages[0]", "day one is no surprise", "");
    }
  }

  /** A belief ends when the fact becomes known, so that must come later. */
  private void beliefs(Map<FactPlace, Integer> seen) {
    for (int i = 0; i < file.stages().size(); i++) {
      for (Believed belief : file.stages().get(i).believed()) {
        Integer told = seen.get(belief.place());
        if (told == null || told <= i) {
          problems.add(
              Code.NOT_ALLOWED_VALUE,
              "stages[" + i + "].believed",
              shown(belief.place())
                  + " is not told by a later stage, so nothing need be believed of it",
              "");
        }
      }
    }
  }

  private static String shown(FactPlace place) {
    return PlainText.shown(place.toString());
  }

  private boolean hasGround() {
    Map<String, Object> tree = KnownSite.object(file.site().tree());
    return tree.containsKey(KnownSite.GROUND)
        || KnownSite.list(tree.get(KnownSite.ZONES)).stream()
            .anyMatch(zone -> KnownSite.object(zone).containsKey(KnownSite.GROUND));
  }

  private Set<FactPlace> stated() {
    Set<FactPlace> all = new LinkedHashSet<>();
    Map<String, Object> tree = KnownSite.object(file.site().tree());
    KnownSite.object(tree.get(KnownSite.FACTS))
        .keySet()
        .forEach(fact -> all.add(new FactPlace("", fact)));
    for (Object item : KnownSite.list(tree.get(KnownSite.ZONES))) {
      Map<String, Object> zone = KnownSite.object(item);
      String name = String.valueOf(zone.get(KnownSite.NAME));
      KnownSite.object(zone.get(KnownSite.FACTS))
          .keySet()
          .forEach(fact -> all.add(new FactPlace(name, fact)));
    }
    return all;
  }

  /** Zones and stages that are spoken of exist, and every zone has what it teaches. */
  private void names(Site site) {
    List<String> zones = site.zones().stream().map(zone -> zone.name()).toList();
    List<String> expected = file.expects().stream().map(Expected::zone).toList();
    for (int i = 0; i < expected.size(); i++) {
      mustBeOne("expects[" + i + "].zone", "zone", expected.get(i), zones);
    }
    zones.stream()
        .filter(zone -> !expected.contains(zone))
        .forEach(
            zone ->
                problems.add(
                    Code.MISSING_REQUIRED,
                    "expects",
                    "nothing is expected of zone " + PlainText.shown(zone),
                    ""));
    List<String> stages = file.stages().stream().map(CaseStage::name).toList();
    Set<String> ids = new HashSet<>();
    for (int i = 0; i < file.questions().size(); i++) {
      Question question = file.questions().get(i);
      String at = "questions[" + i + "]";
      mustBeOne(at + ".zone", "zone", question.zone(), zones);
      mustBeOne(at + ".stage", "stage", question.stage(), stages);
      if (!ids.add(question.id())) {
        problems.add(
            Code.DUPLICATE_NAME,
            at,
            "two questions are called " + PlainText.shown(question.id()),
            "");
      }
    }
  }

  private void mustBeOne(String place, String what, String name, List<String> names) {
    if (!names.contains(name)) {
      problems.add(
          Code.UNKNOWN_NAME,
          place,
          "there is no " + what + " " + PlainText.quoted(name),
          NearestName.question(name, names));
    }
  }
}
