package underhold.report.handout;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;
import underhold.classroom.CaseFile;
import underhold.classroom.CaseReader;
import underhold.classroom.CaseStage;
import underhold.classroom.CaseStudy;
import underhold.classroom.FactPlace;
import underhold.review.file.FileReading;

/** The cases, and each of them with everything changed that students do not know yet. */
final class HiddenCases {
  private static final Path FOLDER = Path.of("cases/classroom");
  private static final Map<String, String> TEXTS = new HashMap<>();
  private static final List<CaseStudy> ALL = readAll();

  private HiddenCases() {}

  static List<CaseStudy> all() {
    return ALL;
  }

  private static List<CaseStudy> readAll() {
    try (Stream<Path> files = Files.walk(FOLDER)) {
      return files
          .filter(file -> file.toString().endsWith(CaseFile.ENDING))
          .sorted()
          .map(HiddenCases::read)
          .toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static CaseStudy of(String name) {
    return all().stream().filter(one -> one.name().equals(name)).findFirst().orElseThrow();
  }

  private static CaseStudy read(Path file) {
    try {
      String text = Files.readString(file);
      CaseStudy study = study(text, String.valueOf(file.getFileName()));
      TEXTS.put(study.name(), text);
      return study;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static CaseStudy study(String text, String name) {
    FileReading<CaseStudy> reading = CaseReader.read(text, name);
    assertThat(reading.messages()).isEmpty();
    return reading.content().orElseThrow();
  }

  /** The case with another key, other facts to come, and other things happening later. */
  static CaseStudy withOtherSecrets(CaseStudy study, int open) {
    ObjectNode tree = (ObjectNode) JsonMapper.shared().readTree(TEXTS.get(study.name()));
    tree.put("teaches", "another thing").put("level", other(tree.get("level").asString()));
    tree.put("lesson", "Another lesson.").put("basis", "judgement");
    tree.get("expects")
        .forEach(one -> ((ObjectNode) one).put("leader", "refer").put("dayOne", "refer"));
    ((ArrayNode) tree.get("questions")).removeAll();
    Map<FactPlace, String> believed = new HashMap<>();
    Set<FactPlace> known = new HashSet<>();
    boolean ground = false;
    for (CaseStage stage : study.stages().subList(0, open + 1)) {
      known.addAll(stage.places());
      stage.believed().forEach(one -> believed.put(one.place(), one.value()));
      ground |= stage.ground();
    }
    ObjectNode site = (ObjectNode) tree.get("site");
    site.put("note", "Another note.");
    facts(site, "", known, believed);
    site.get("zones")
        .forEach(zone -> facts((ObjectNode) zone, zone.get("name").asString(), known, believed));
    if (!ground) {
      site.remove("ground");
      site.get("zones").forEach(zone -> ((ObjectNode) zone).remove("ground"));
    }
    stages((ArrayNode) tree.get("stages"), open, believed.keySet());
    return study(tree.toString(), study.name() + CaseFile.ENDING);
  }

  private static String other(String level) {
    return level.equals("first") ? "third" : "first";
  }

  /** Leaves what is known, and what is believed as it is believed. */
  private static void facts(
      ObjectNode part, String zone, Set<FactPlace> known, Map<FactPlace, String> believed) {
    ObjectNode left = JsonMapper.shared().createObjectNode();
    part.get("facts")
        .properties()
        .forEach(
            fact -> {
              FactPlace place = new FactPlace(zone, fact.getKey());
              if (known.contains(place)) {
                left.set(fact.getKey(), fact.getValue());
              } else if (believed.containsKey(place)) {
                left.put(fact.getKey(), believed.get(place));
              }
            });
    part.set("facts", left);
  }

  /** Later stages tell other things; a surprise that need not stay is gone. */
  private static void stages(ArrayNode stages, int open, Set<FactPlace> believed) {
    for (int i = stages.size() - 1; i > open; i--) {
      ObjectNode stage = (ObjectNode) stages.get(i);
      stage.put("tells", "Something else happens.").put("name", "other-" + i);
      ((ArrayNode) stage.get("believed")).removeAll();
      boolean needed = reveals((ArrayNode) stage.get("reveals"), believed);
      if (stage.get("surprise").asBoolean()) {
        stage.put("title", "Something else").put("days", 99);
        if (!needed) {
          stages.remove(i);
        }
      }
    }
  }

  private static boolean reveals(ArrayNode reveals, Set<FactPlace> believed) {
    boolean needed = false;
    for (JsonNode reveal : reveals) {
      String zone = reveal.has("zone") ? reveal.get("zone").asString() : "";
      ArrayNode left = JsonMapper.shared().createArrayNode();
      reveal
          .get("facts")
          .forEach(
              fact -> {
                if (believed.contains(new FactPlace(zone, fact.asString()))) {
                  left.add(fact.asString());
                }
              });
      needed |= !left.isEmpty();
      ((ObjectNode) reveal).set("facts", left);
    }
    return needed;
  }
}
