package underhold.consult.trial;

import java.util.concurrent.atomic.AtomicReferenceArray;
import org.jspecify.annotations.Nullable;

/**
 * What each thread found last. Threads may share a place and then find again what the other put
 * away, so that what is put here must be right for every thread.
 */
final class Latest<T> {
  private static final int PLACES = 16;

  private final AtomicReferenceArray<@Nullable T> places = new AtomicReferenceArray<>(PLACES);

  @Nullable T get() {
    return places.get(place());
  }

  void put(T found) {
    places.set(place(), found);
  }

  private static int place() {
    return (int) (Thread.currentThread().getId() % PLACES);
  }
}
