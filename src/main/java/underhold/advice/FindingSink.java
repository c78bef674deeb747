package underhold.advice;

import java.util.ArrayList;
import java.util.List;

/**
 * Where the actions of rules state their findings. What is stated (options, strength, value) is
 * read from the rule's text once; the engine only tells which rules fired, so an action cannot say
 * one thing to the engine and another to the reader.
 */
public final class FindingSink {
  private final List<String> fired = new ArrayList<>();

  public void derive(String fact, String value, org.kie.api.definition.rule.Rule rule) {
    add(rule);
  }

  public void ruleOut(String options, org.kie.api.definition.rule.Rule rule) {
    add(rule);
  }

  public void against(String options, String strength, org.kie.api.definition.rule.Rule rule) {
    add(rule);
  }

  public void speakFor(String options, String strength, org.kie.api.definition.rule.Rule rule) {
    add(rule);
  }

  public void require(String options, String strength, org.kie.api.definition.rule.Rule rule) {
    add(rule);
  }

  public void caution(String options, String strength, org.kie.api.definition.rule.Rule rule) {
    add(rule);
  }

  public void refer(String strength, org.kie.api.definition.rule.Rule rule) {
    add(rule);
  }

  /** The ids of the rules that fired since last asked, in no particular order. */
  List<String> drain() {
    List<String> drained = List.copyOf(fired);
    fired.clear();
    return drained;
  }

  private void add(org.kie.api.definition.rule.Rule rule) {
    fired.add(String.valueOf(rule.getMetaData().get("id")));
  }
}
