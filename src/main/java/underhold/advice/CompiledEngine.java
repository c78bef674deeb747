package underhold.advice;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.kie.api.KieBase;
import org.kie.api.runtime.KieSession;
import org.kie.api.runtime.rule.FactHandle;
import underhold.site.FactView;

/**
 * Fires the rules that the build compiled, which are loaded when the first are to fire. Safe for
 * use by several threads in turn.
 */
public final class CompiledEngine implements RuleEngine {
  private final RulePack pack;
  private final Supplier<KieBase> base;
  private @Nullable KieSession session;
  private final FindingSink sink = new FindingSink();
  private final Map<Rule.Phase, Map<String, Rule>> rules;

  CompiledEngine(RulePack pack, Supplier<KieBase> base) {
    this.pack = pack;
    this.base = base;
    this.rules = new EnumMap<>(Rule.Phase.class);
    for (Rule.Phase phase : Rule.Phase.values()) {
      this.rules.put(phase, pack.byId(phase));
    }
  }

  @Override
  public RulePack pack() {
    return pack;
  }

  /**
   * @throws IllegalStateException if the engine fired a rule that the pack's text does not hold
   */
  @Override
  public List<Rule> fire(FactView view, Rule.Phase phase) {
    return fire(view, List.of(phase)).get(0);
  }

  /** The rules of several phases that fire on one and the same view, at the cost of one phase. */
  synchronized List<List<Rule>> fire(FactView view, List<Rule.Phase> phases) {
    phases.forEach(phase -> phase.mustRead(view));
    KieSession session = session();
    FactHandle handle = session.insert(facts(view, phases.get(0)));
    List<List<Rule>> fired = new ArrayList<>();
    for (Rule.Phase phase : phases) {
      session.getAgenda().getAgendaGroup(phase.word()).setFocus();
      session.fireAllRules();
      fired.add(inOrder(new HashSet<>(sink.drain()), phase));
    }
    session.delete(handle);
    return fired;
  }

  private synchronized KieSession session() {
    KieSession made = session;
    if (made == null) {
      made = begun();
      made.setGlobal("findings", sink);
      session = made;
    }
    return made;
  }

  /** The engine looks its parts up by the loader of the thread, which a worker thread may lack. */
  private KieSession begun() {
    Thread thread = Thread.currentThread();
    ClassLoader before = thread.getContextClassLoader();
    thread.setContextClassLoader(CompiledEngine.class.getClassLoader());
    try {
      return base.get().newKieSession();
    } finally {
      thread.setContextClassLoader(before);
    }
  }

  private List<Rule> inOrder(Set<String> fired, Rule.Phase phase) {
    Map<String, Rule> known = rules.getOrDefault(phase, Map.of());
    if (!known.keySet().containsAll(fired)) {
      fired.removeAll(known.keySet());
      throw new IllegalStateException("the engine fired rules the pack does not hold: " + fired);
    }
    return known.values().stream().filter(rule -> fired.contains(rule.id())).toList();
  }

  private Object facts(FactView view, Rule.Phase phase) {
    boolean pair = phase == Rule.Phase.SCHEME;
    return pair ? new PairFacts(view, pack.limits()) : new ZoneFacts(view, pack.limits());
  }
}
