package underhold.report;

import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import underhold.advice.Effect;
import underhold.advice.Finding;
import underhold.advice.Hold;
import underhold.advice.OptionAdvice;
import underhold.advice.RulePack;
import underhold.advice.SupportOption;
import underhold.consult.Consultation;
import underhold.consult.OpenQuestion;
import underhold.consult.ZoneAdvice;
import underhold.consult.scheme.SchemeDesk;
import underhold.site.ZoneViews;

/** The advice on a site as a JSON tree. */
public final class AdviceJson {
  private AdviceJson() {}

  public static Map<String, Object> of(Consultation consultation) {
    Map<String, Object> root = head(consultation);
    root.put("zones", consultation.zones().stream().map(AdviceJson::zone).toList());
    if (consultation.zones().size() > 1) {
      root.put("scheme", SchemeJson.of(SchemeDesk.of(consultation.pack()).scheme(consultation)));
    }
    return root;
  }

  /** What every answer about a site begins with. */
  static Map<String, Object> head(Consultation consultation) {
    return Json.object(
        "site", Json.object("name", consultation.site().name()),
        "program", Json.object("name", Program.NAME, "version", Program.version()),
        "rulePack", rulePack(consultation.pack()),
        "caution", Program.CAUTION);
  }

  /** The rules that answered; where they are not those built in, with every difference. */
  public static Map<String, Object> rulePack(RulePack pack) {
    return RulePackJson.of(pack);
  }

  private static Map<String, Object> zone(ZoneAdvice zone) {
    return Json.object(
        "name", zone.name(),
        "leader", leader(zone),
        "verdict", new Headline(zone).verdict(),
        "options", zone.ranking().options().stream().map(a -> option(zone, a)).toList(),
        "conditions", told(zone, zone.conditions()),
        "cautions", told(zone, zone.cautions()),
        "openQuestions", zone.questions().list().stream().map(AdviceJson::question).toList(),
        "firmness", firmness(zone),
        "facts", FindingJson.facts(zone.view(), ZoneViews.cautious(zone.view())));
  }

  private static Map<String, Object> firmness(ZoneAdvice zone) {
    Map<String, Object> tree =
        Json.object("trials", zone.questions().trials(), "kept", zone.questions().kept());
    zone.firmness().ifPresent(firmness -> tree.putAll(FirmnessJson.of(firmness)));
    return tree;
  }

  private static @Nullable String leader(ZoneAdvice zone) {
    return zone.ranking().leader().isPresent() ? zone.ranking().leader().get().option().id() : null;
  }

  static Map<String, Object> option(ZoneAdvice zone, OptionAdvice advice) {
    return Json.object(
        "id", advice.option().id(),
        "label", advice.option().label(),
        "standing", advice.standing().word(),
        "score", advice.score(),
        "tied", advice.tied(),
        "findings",
            Stream.concat(advice.findings().stream(), Words.assumed(zone, advice.option()).stream())
                .map(finding -> FindingJson.of(finding, Words.counted(advice, finding)))
                .toList(),
        "sizing", SizingWords.json(zone.sizing(advice.option()).orElse(null)),
        "wayBack", advice.wayBack(),
        "heldBy", advice.holds().stream().map(AdviceJson::hold).toList());
  }

  private static Map<String, Object> hold(Hold hold) {
    return Json.object(
        "rule", hold.rule().id(), "ask", hold.ask(), "explanation", hold.explanation());
  }

  private static List<Map<String, Object>> told(ZoneAdvice zone, List<Finding> findings) {
    return findings.stream()
        .map(
            finding -> {
              Map<String, Object> node = FindingJson.of(finding, false);
              node.put("options", zone.optionsInPlay(finding).map(SupportOption::id).toList());
              if (finding.effect() == Effect.CAUTION) {
                node.put("decides", Decider.of(finding).words());
              }
              return node;
            })
        .toList();
  }

  static Map<String, Object> question(OpenQuestion question) {
    return Json.object(
        "fact", question.fact().name(),
        "question", question.fact().question(),
        "why", question.fact().why(),
        "findOut", question.fact().findOut(),
        "stake", question.stake(),
        "decides", question.decides(),
        "leaderChanges", question.leaderChanges(),
        "tiesChanged", question.tiesChanged(),
        "standingsChanged", question.standingsChanged(),
        "scoreMoved", question.scoreMoved(),
        "frees", question.frees(),
        "answers", question.answers().stream().map(AdviceJson::answer).toList());
  }

  private static Map<String, Object> answer(OpenQuestion.Answer answer) {
    return Json.object(
        "value", answer.value(),
        "leader", answer.leader(),
        "tiedWith", answer.tied(),
        "freed", answer.freed(),
        "won", answer.won(),
        "lost", answer.lost(),
        "scoreMoved", answer.scoreMoved());
  }
}
