package underhold.consult.screening;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Optional;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Supplier;

/**
 * Work done by several threads and handed on in the order in which it was given out. At most so
 * many pieces are under way or wait for an earlier one, however many there are.
 *
 * @param <T> a piece of work
 * @param <R> what comes of it
 */
final class OrderedWork<T, R> {
  private static final int WINDOW_PER_THREAD = 32;

  private final Function<T, R> work;
  private final Consumer<R> done;
  private final BooleanSupplier stopped;

  /**
   * Work.
   *
   * @param work done by any thread
   * @param done takes the results in order, in the calling thread
   * @param stopped whether nothing more is to be given out; what is done already is handed on
   */
  OrderedWork(Function<T, R> work, Consumer<R> done, BooleanSupplier stopped) {
    this.work = work;
    this.done = done;
    this.stopped = stopped;
  }

  /** Does all pieces; an exception of the work is thrown here. */
  void run(Supplier<Optional<T>> pieces, int threads) {
    ExecutorService service = Executors.newFixedThreadPool(threads, OrderedWork::thread);
    Deque<Future<R>> under = new ArrayDeque<>();
    try {
      Optional<T> next = pieces.get();
      while (next.isPresent() && !stopped.getAsBoolean()) {
        T piece = next.get();
        under.add(service.submit(() -> work.apply(piece)));
        while (!under.isEmpty()
            && (under.size() >= threads * WINDOW_PER_THREAD || under.peek().isDone())) {
          handOn(under.remove());
        }
        next = pieces.get();
      }
      while (!under.isEmpty() && (!stopped.getAsBoolean() || under.peek().isDone())) {
        handOn(under.remove());
      }
    } finally {
      under.forEach(future -> future.cancel(true));
      service.shutdownNow();
    }
  }

  private static Thread thread(Runnable job) {
    Thread thread = new Thread(job, "screen");
    thread.setDaemon(true);
    return thread;
  }

  private void handOn(Future<R> future) {
    try {
      done.accept(future.get());
    } catch (ExecutionException e) {
      if (e.getCause() instanceof Error error) {
        throw error;
      }
      throw new IllegalStateException(e.getCause());
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("the screening was interrupted", e);
    }
  }
}
