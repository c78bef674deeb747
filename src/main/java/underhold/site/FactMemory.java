package underhold.site;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * Results of one calculation on views, kept for views in which all that it looked at is the same.
 * It holds for calculations that depend on nothing but the view. A calculation that looks at the
 * same facts looks next at the same fact, so that the results stand as the leaves of a tree whose
 * branches are the facts looked at and their values. Several threads may ask at once; they may then
 * both make one result, which is the same.
 *
 * @param <T> the result
 */
public final class FactMemory<T> {
  private final boolean worded;
  private @Nullable Place<T> first;

  private FactMemory(boolean worded) {
    this.worded = worded;
  }

  /** For results that show how facts came about: facts are the same if their notes are, too. */
  public static <T> FactMemory<T> ofWords() {
    return new FactMemory<>(true);
  }

  /** For results that depend on values and their origins, whatever the notes say. */
  public static <T> FactMemory<T> ofValues() {
    return new FactMemory<>(false);
  }

  /** A place in the tree: a fact looked at, or the result. */
  private sealed interface Place<T> {}

  private record Leaf<T>(T result) implements Place<T> {}

  private record Fork<T>(int index, boolean assumed, Map<Seen, Place<T>> branches)
      implements Place<T> {}

  private record Seen(Origin origin, @Nullable FactValue value, String how) {
    @Override
    public boolean equals(@Nullable Object other) {
      return other instanceof Seen seen
          && origin == seen.origin
          && Objects.equals(value, seen.value)
          && how.equals(seen.how);
    }

    @Override
    public int hashCode() {
      int words = value == null ? 0 : value.text().hashCode();
      return (origin.ordinal() * 31 + words) * 31 + how.hashCode();
    }
  }

  /**
   * The result for a view: kept from an earlier one, or made. What was looked at counts as looked
   * at in the view either way.
   *
   * @param make the calculation; it must take what it looks at from the view that it is given
   */
  public T of(FactView view, Function<FactView, T> make) {
    Leaf<T> leaf = kept(view);
    if (leaf != null) {
      return leaf.result;
    }
    FactReads reads = new FactReads();
    T made = make.apply(view.noting(reads));
    for (FactReads.Read read : reads.all()) {
      fact(view, read.fact().definition().index(), read.assumed());
    }
    keep(reads.all(), made);
    return made;
  }

  private synchronized @Nullable Leaf<T> kept(FactView view) {
    Place<T> place = first;
    while (place instanceof Fork<T> fork) {
      place = fork.branches.get(seen(fact(view, fork.index, fork.assumed)));
    }
    return place instanceof Leaf<T> leaf ? leaf : null;
  }

  private synchronized void keep(List<FactReads.Read> reads, T made) {
    first = grown(first, reads, 0, made);
  }

  /** The place with a result added; as it was where the looks took another course. */
  private Place<T> grown(@Nullable Place<T> place, List<FactReads.Read> reads, int from, T result) {
    if (from == reads.size()) {
      return new Leaf<>(result);
    }
    FactReads.Read read = reads.get(from);
    int index = read.fact().definition().index();
    Fork<T> fork =
        place instanceof Fork<T> there ? there : new Fork<>(index, read.assumed(), new HashMap<>());
    if (fork.index == index && fork.assumed == read.assumed()) {
      Seen seen = seen(read.fact());
      fork.branches.put(seen, grown(fork.branches.get(seen), reads, from + 1, result));
    }
    return fork;
  }

  private Seen seen(Fact fact) {
    return new Seen(fact.origin(), fact.value(), worded ? fact.how() : "");
  }

  private static Fact fact(FactView view, int index, boolean assumed) {
    if (!assumed) {
      return view.fact(index);
    }
    Fact fact = ZoneViews.cautious(view).fact(index);
    view.reads().ifPresent(reads -> reads.noteAssumed(fact));
    return fact;
  }
}
