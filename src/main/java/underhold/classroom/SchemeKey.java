package underhold.classroom;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import underhold.advice.Effect;
import underhold.advice.Matched;
import underhold.advice.OptionAdvice;
import underhold.advice.Standing;
import underhold.advice.SupportOption;
import underhold.consult.Consultation;
import underhold.consult.scheme.Combination;
import underhold.consult.scheme.PairFinding;
import underhold.consult.scheme.SchemeDesk;
import underhold.consult.scheme.SchemeOutcome;
import underhold.consult.scheme.ZoneChoice;
import underhold.site.FactDefinition;
import underhold.site.FactDictionary;
import underhold.site.ZoneViews;

/**
 * What the rules say of all zones together as one student knew them.
 *
 * @param consultation the advice zone by zone
 * @param outcome the scheme that the rules put first
 */
public record SchemeKey(Consultation consultation, SchemeOutcome outcome) {

  /** The combination that comes first; empty where there is none. */
  public Optional<Combination> best() {
    return outcome instanceof SchemeOutcome.Made made
        ? Optional.of(made.scheme().best())
        : Optional.empty();
  }

  /** Why there is no scheme; empty where there is one. */
  public String whyNone() {
    return outcome instanceof SchemeOutcome.NotMade none ? none.reason() : "";
  }

  /** How the method named for a zone stands there; empty for no method. */
  Optional<OptionAdvice> of(String zone, String method) {
    return SupportOption.find(method)
        .flatMap(
            option ->
                consultation.zones().stream()
                    .filter(one -> one.name().equals(zone))
                    .findFirst()
                    .map(one -> one.ranking().of(option)));
  }

  /** What the rules between zones say of methods that somebody names. */
  SchemeDesk.Named named(Map<String, String> methods) {
    List<ZoneChoice> choices =
        consultation.zones().stream()
            .map(
                zone -> {
                  Optional<OptionAdvice> option =
                      SupportOption.find(methods.getOrDefault(zone.name(), Expected.NO_METHOD))
                          .map(zone.ranking()::of);
                  return new ZoneChoice(zone, option, option.isPresent() ? "" : "it is left open");
                })
            .toList();
    return SchemeDesk.of(consultation.pack()).named(consultation.site(), choices);
  }

  /** Whether more speaks for the method than against it, and nothing holds it or rules it out. */
  static boolean contends(OptionAdvice option) {
    return option.ranked() && option.spokenFor() && option.score() > 0;
  }

  /** Whether it is out of play in its zone. */
  static boolean ruledOut(OptionAdvice option) {
    return option.standing() == Standing.RULED_OUT;
  }

  /** The facts that a student can name and on which findings between zones rest. */
  public static Map<String, PairFinding> meeting(List<PairFinding> findings) {
    Map<String, PairFinding> facts = new LinkedHashMap<>();
    findings.stream()
        .filter(finding -> finding.effect() != Effect.CAUTION)
        .forEach(
            finding ->
                finding.finding().facts().stream()
                    .map(Matched::name)
                    .flatMap(SchemeKey::nameable)
                    .forEach(fact -> facts.putIfAbsent(fact, finding)));
    return facts;
  }

  /** A fact of two zones as it is stated: of the pair itself, or of the zone that it tells of. */
  private static Stream<String> nameable(String ofPair) {
    FactDefinition pair = FactDictionary.pairs().require(ofPair);
    if (!pair.derived()) {
      return Stream.of(ofPair);
    }
    if (!pair.askInstead().isEmpty()) {
      return pair.askInstead().stream().flatMap(SchemeKey::nameable);
    }
    String bare = ofPair.replaceFirst("^(first|second)", "");
    String own = bare.isEmpty() ? "" : Character.toLowerCase(bare.charAt(0)) + bare.substring(1);
    Set<String> stated = new LinkedHashSet<>();
    FactDictionary.standard()
        .find(own)
        .ifPresent(fact -> stated(fact, stated, new LinkedHashSet<>()));
    return stated.stream();
  }

  private static void stated(FactDefinition fact, Set<String> found, Set<String> seen) {
    if (!seen.add(fact.name())) {
      return;
    }
    if (!fact.derived()) {
      found.add(fact.name());
      return;
    }
    ZoneViews.sources(fact.name())
        .forEach(name -> stated(FactDictionary.standard().require(name), found, seen));
  }
}
