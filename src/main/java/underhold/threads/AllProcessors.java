package underhold.threads;

import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ForkJoinPool;
import java.util.concurrent.ForkJoinTask;
import java.util.function.Function;
import java.util.function.Supplier;

/**
 * Spreads work over the processors. Each piece is handed out by itself, since pieces take from
 * nothing to tenths of a second: a parallel stream cuts a list into a few parts beforehand, and the
 * thread with the light ones then waits. A piece may spread its own work; its thread does other
 * pieces while it waits for them. Pieces must not wait for input or for each other.
 */
public final class AllProcessors {
  private static final ForkJoinPool POOL =
      new ForkJoinPool(Runtime.getRuntime().availableProcessors());

  private AllProcessors() {}

  /** Work that was begun and whose result is taken later. */
  public interface Begun<T> {
    /** The result; what the work threw is thrown here. */
    T result();
  }

  /**
   * Does something with every item; the results stand in the order of the items. What a piece
   * throws is thrown here, itself or as a copy that names it as its cause.
   */
  public static <T, R> List<R> each(List<T> items, Function<? super T, ? extends R> work) {
    if (items.size() < 2) {
      return items.stream().<R>map(work).toList();
    }
    return inPool(
        () -> {
          List<ForkJoinTask<R>> pieces =
              items.stream().map(item -> piece(() -> (R) work.apply(item))).toList();
          ForkJoinTask.invokeAll(pieces);
          return pieces.stream().map(ForkJoinTask::join).toList();
        });
  }

  /** Begins work that goes on while the caller does something else. */
  public static <T> Begun<T> begin(Supplier<T> work) {
    ForkJoinTask<T> piece = piece(work::get);
    if (ForkJoinTask.inForkJoinPool()) {
      piece.fork();
    } else {
      POOL.execute(piece);
    }
    return piece::join;
  }

  /** Does work that spreads parts of itself, on a thread that does other parts while it waits. */
  public static <T> T inPool(Supplier<T> work) {
    return ForkJoinTask.inForkJoinPool() ? work.get() : POOL.invoke(piece(work::get));
  }

  private static <T> ForkJoinTask<T> piece(Callable<T> work) {
    return ForkJoinTask.adapt(work);
  }
}
