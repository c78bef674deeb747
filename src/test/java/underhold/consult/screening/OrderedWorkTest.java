package underhold.consult.screening;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class OrderedWorkTest {
  private static Supplier<Optional<Integer>> numbers(int count) {
    AtomicInteger next = new AtomicInteger();
    return () -> next.get() < count ? Optional.of(next.getAndIncrement()) : Optional.empty();
  }

  @Test
  void results_come_in_order_whichever_thread_is_done_first() {
    List<Integer> done = new ArrayList<>();
    new OrderedWork<Integer, Integer>(OrderedWorkTest::slowWhereEven, done::add, () -> false)
        .run(numbers(300), 4);

    assertThat(done).isEqualTo(IntStream.range(0, 300).boxed().toList());
  }

  private static int slowWhereEven(int number) {
    if (number % 20 == 0) {
      try {
        Thread.sleep(3);
      } catch (InterruptedException e) {
        Thread.currentThread().interrupt();
      }
    }
    return number;
  }

  @Test
  void no_more_than_a_window_waits_for_a_slow_piece() {
    AtomicInteger given = new AtomicInteger();
    AtomicInteger taken = new AtomicInteger();
    AtomicInteger most = new AtomicInteger();
    Supplier<Optional<Integer>> pieces = numbers(500);
    new OrderedWork<Integer, Integer>(
            OrderedWorkTest::slowWhereEven, number -> taken.incrementAndGet(), () -> false)
        .run(
            () -> {
              most.accumulateAndGet(given.incrementAndGet() - taken.get(), Math::max);
              return pieces.get();
            },
            2);

    assertThat(taken).hasValue(500);
    assertThat(most.get()).isLessThanOrEqualTo(2 * 32 + 1);
  }

  @Test
  void a_failure_of_the_work_comes_out() {
    OrderedWork<Integer, Integer> work =
        new OrderedWork<>(
            number -> {
              throw new IllegalStateException("out of paper");
            },
            number -> {},
            () -> false);

    assertThatThrownBy(() -> work.run(numbers(3), 2)).hasRootCauseMessage("out of paper");
  }
}
