package underhold.advice;

import org.jspecify.annotations.Nullable;
import underhold.site.FactView;

/** What the written class of facts stands on: the values of a view, and the limits of the pack. */
public abstract class ZoneFactsBase {
  private final FactView view;
  private final Limits limits;

  ZoneFactsBase(FactView view, Limits limits) {
    this.view = view;
    this.limits = limits;
  }

  /** The limit of that name, in the inside unit of its measure. */
  public final double limit(String name) {
    return limits.require(name).si();
  }

  final @Nullable String word(int index) {
    return view.word(index);
  }

  final @Nullable Double number(int index) {
    return view.number(index);
  }
}
