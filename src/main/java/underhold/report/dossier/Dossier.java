package underhold.report.dossier;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import underhold.report.AdviceJson;
import underhold.report.Json;
import underhold.report.SchemeJson;
import underhold.report.SheetJson;
import underhold.report.StagesJson;
import underhold.report.TurningJson;
import underhold.report.document.Anchors;
import underhold.report.document.Document;
import underhold.report.document.LiveLinks;
import underhold.report.document.Section;
import underhold.threads.AllProcessors;

/** Makes the document of a package: the same for every format. */
public final class Dossier {
  private final Material material;
  private final Commission commission;
  private final Illustrations illustrations;
  private final Citations citations;

  private Dossier(Material material, Commission commission, Illustrations illustrations) {
    this.material = material;
    this.commission = commission;
    this.illustrations = illustrations;
    this.citations =
        commission.audience() == Audience.REVIEWER
            ? Citations.numbered(material.pack())
            : Citations.inFull(material.pack());
  }

  /** The document that is asked for. */
  public static Document of(Material material, Commission commission, Illustrations illustrations) {
    return new Dossier(material, commission, illustrations).document();
  }

  /** What the document was made from, for programs. */
  public static Map<String, Object> data(Material material) {
    Map<String, Object> data = Json.object("advice", AdviceJson.of(material.consultation()));
    data.put("scheme", SchemeJson.of(material.scheme()));
    material
        .madeScheme()
        .ifPresent(
            scheme ->
                material.plan().ifPresent(plan -> data.put("stages", StagesJson.of(scheme, plan))));
    if (!material.turning().isEmpty()) {
      data.put(
          "turningPoints",
          TurningJson.of(material.site().name(), material.turning(), material.pack()));
    }
    data.put(
        "sheets",
        material.sheets().stream()
            .map(
                sheet ->
                    Json.object(
                        "zone",
                        material.consultation().zones().get(sheet.zone() - 1).name(),
                        "sheet",
                        SheetJson.of(sheet.sheet(), material.units())))
            .toList());
    return data;
  }

  private Document document() {
    List<Section> sections =
        switch (commission.audience()) {
          case REVIEWER -> reviewer();
          case SITE -> site();
          case CLIENT -> client();
        };
    Document document =
        new Document(
            material.site().name() + ": " + commission.audience().title(),
            Cover.STATUS,
            Cover.of(material, commission),
            sections);
    boolean whole =
        commission.audience() == Audience.REVIEWER && commission.sheets() == WhichSheets.ALL;
    return whole ? document : LiveLinks.only(document);
  }

  /**
   * What cites is written in the order in which it stands, for that numbers the sources. The rest
   * is written meanwhile.
   */
  private List<Section> reviewer() {
    AllProcessors.Begun<List<Section>> answer = AllProcessors.begin(this::answer);
    Section sheets =
        SheetsSection.of(
            material, commission.sheets(), new SheetSection(material, citations, illustrations));
    Section cautions = new CautionsSection(material, commission, citations).section();
    Section assumptions =
        new AssumptionsSection(material, commission.sheets(), citations).section();
    List<Section> sections = new ArrayList<>(answer.result());
    sections.add(sheets);
    sections.add(QuantitiesSection.of(material));
    sections.add(MonitoringSection.of(material));
    sections.add(cautions);
    sections.add(assumptions);
    Section trace = new TraceAppendix(material, anchors(sections)).section();
    List<Section> spoken = new ArrayList<>(sections);
    spoken.add(trace);
    Section rules =
        new RulesAppendix(material, citations).section(targets(spoken), anchors(spoken));
    sections.add(BibliographySection.of(citations)); // once all that cites is written
    sections.add(trace);
    sections.add(rules);
    return sections;
  }

  /** All that stands before the sheets. */
  private List<Section> answer() {
    List<Section> sections = new ArrayList<>();
    begin(sections);
    sections.add(RecommendationSection.of(material, commission));
    sections.add(new NotProvedSection(material).section());
    sections.add(new BriefSection(material, illustrations).section());
    sections.add(OptionsSection.of(material, illustrations));
    sections.add(ReasonsSection.of(material));
    sections.add(ConditionsSection.of(material, commission));
    sections.add(QuestionsSection.of(material));
    sections.add(ChangesSection.of(material));
    sections.add(new SchemeSection(material).section());
    sections.add(new StageSection(material, illustrations).section());
    PitOrderSection.of(material).ifPresent(sections::add);
    sections.add(HoldSection.of(material));
    return sections;
  }

  private List<Section> site() {
    List<Section> sections = new ArrayList<>();
    begin(sections);
    sections.add(SiteBriefSection.of(material));
    sections.add(new StageSection(material, illustrations).section());
    PitOrderSection.of(material).ifPresent(sections::add);
    new DrawingsSection(material, illustrations).section().ifPresent(sections::add);
    sections.add(HoldSection.of(material));
    sections.add(MonitoringSection.of(material));
    sections.add(new CautionsSection(material, commission, citations).section());
    sections.add(ConditionsSection.of(material, commission));
    sections.add(QuantitiesSection.of(material));
    sections.add(new NotProvedSection(material).section());
    sections.add(RecommendationSection.of(material, commission));
    return sections;
  }

  private List<Section> client() {
    List<Section> sections = new ArrayList<>();
    begin(sections);
    sections.addAll(new ClientSection(material).sections());
    return sections;
  }

  /** What no reader may miss. */
  private void begin(List<Section> sections) {
    sections.add(AboutSection.of(material, commission));
    PackSection.of(material).ifPresent(sections::add);
    if (commission.audience() == Audience.REVIEWER) {
      commission.review().map(ReviewSection::of).ifPresent(sections::add);
    }
  }

  private Document draft(List<Section> sections) {
    return new Document("", "", List.of(), sections);
  }

  private Set<String> anchors(List<Section> sections) {
    return new HashSet<>(Anchors.of(draft(sections)));
  }

  private Set<String> targets(List<Section> sections) {
    return new HashSet<>(Anchors.targets(draft(sections)));
  }
}
