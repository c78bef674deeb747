package underhold.consult.firmness;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Random;
import underhold.advice.PlainRules;
import underhold.consult.trial.Changes;
import underhold.consult.trial.OpenFacts;
import underhold.consult.trial.Trials;
import underhold.site.FactDictionary;
import underhold.site.FactValue;
import underhold.site.FactView;
import underhold.site.Zone;

/**
 * Draws what nobody knows: each unknown fact that matters takes a value of {@link ValueDraws}.
 * Facts that follow from those drawn are not drawn, and values that cannot be with what is known or
 * drawn are drawn again or left open.
 */
final class FactDraws {
  private static final int ATTEMPTS = 4;

  private final Trials trials;
  private final Zone zone;
  private final Changes changes;
  private final ValueDraws values;
  private final OpenFacts open;
  private final List<String> unknown;
  private final FactDictionary dictionary = FactDictionary.standard();

  FactDraws(Trials trials, Zone zone, PlainRules rules) {
    this.trials = trials;
    this.zone = zone;
    this.changes = trials.changes(zone);
    this.values = new ValueDraws(trials.site().units());
    this.open = new OpenFacts(rules);
    this.unknown = open.of(trials.view(zone));
  }

  /** The facts drawn at least. */
  List<String> unknown() {
    return unknown;
  }

  /** One draw: facts and their values; empty where nothing is open. */
  Map<String, FactValue> draw(Random random) {
    Map<String, FactValue> drawn = together(unknown, random);
    if (drawn.isEmpty()) {
      return drawn;
    }
    if (!changes.possible(changes.with(drawn))) {
      drawn = inParts(drawn, random);
    }
    FactView view = trials.view(changes.with(drawn));
    for (String name : open.of(view)) { // open only now, because of what was drawn
      if (!drawn.containsKey(name) && !unknown.contains(name)) {
        add(name, drawn, random);
      }
    }
    return drawn;
  }

  private Map<String, FactValue> together(List<String> names, Random random) {
    Map<String, FactValue> drawn = new LinkedHashMap<>();
    for (String name : names) {
      values.draw(dictionary.require(name), random).ifPresent(value -> drawn.put(name, value));
    }
    return drawn;
  }

  private Map<String, FactValue> inParts(Map<String, FactValue> wanted, Random random) {
    List<String> names = new ArrayList<>(wanted.keySet());
    Collections.shuffle(names, random);
    Map<String, FactValue> drawn = new LinkedHashMap<>();
    addAll(names, wanted, drawn, random, true);
    return drawn;
  }

  /**
   * Adds the values of the facts named that can be together; what cannot is drawn again.
   *
   * @param refused whether it is known already that all of them cannot be together
   * @return whether all were added as wanted
   */
  private boolean addAll(
      List<String> names,
      Map<String, FactValue> wanted,
      Map<String, FactValue> drawn,
      Random random,
      boolean refused) {
    if (!refused) {
      Map<String, FactValue> more = new LinkedHashMap<>(drawn);
      names.forEach(name -> more.put(name, Objects.requireNonNull(wanted.get(name))));
      if (changes.possible(changes.with(more))) {
        drawn.putAll(more);
        return true;
      }
    }
    if (names.size() == 1) {
      add(names.get(0), drawn, random);
    } else {
      int half = names.size() / 2;
      // With the first half added as it is, the second would make up what was refused.
      boolean first = addAll(names.subList(0, half), wanted, drawn, random, false);
      addAll(names.subList(half, names.size()), wanted, drawn, random, first);
    }
    return false;
  }

  /** Adds a value that can be; none if the fact follows already or no value is found. */
  private void add(String name, Map<String, FactValue> drawn, Random random) {
    if (trials.view(changes.with(drawn)).fact(name).value() != null) {
      return;
    }
    for (int attempt = 0; attempt < ATTEMPTS; attempt++) {
      Map<String, FactValue> more = new LinkedHashMap<>(drawn);
      values.draw(dictionary.require(name), random).ifPresent(value -> more.put(name, value));
      if (changes.possible(changes.with(more))) {
        drawn.putAll(more);
        return;
      }
    }
  }

  /** The zone with what was drawn. */
  Zone zone(Map<String, FactValue> drawn) {
    return drawn.isEmpty() ? zone : changes.with(drawn);
  }
}
