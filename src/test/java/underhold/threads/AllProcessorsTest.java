package underhold.threads;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.concurrent.ForkJoinPool;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Results in order, faults thrown, pieces that spread their own work. */
class AllProcessorsTest {
  private static final List<Integer> MANY = IntStream.range(0, 500).boxed().toList();

  /** Fibonacci numbers by the definition: pieces within pieces, far more than there are threads. */
  private static int fibonacci(int n) {
    return n < 2
        ? n
        : AllProcessors.each(List.of(n - 1, n - 2), AllProcessorsTest::fibonacci).stream()
            .mapToInt(one -> one)
            .sum();
  }

  @Test
  void results_stand_in_the_order_of_the_items() {
    assertThat(AllProcessors.each(MANY, one -> one * one))
        .isEqualTo(MANY.stream().map(one -> one * one).toList());
    assertThat(AllProcessors.each(List.of(), one -> one)).isEmpty();
  }

  @Test
  void a_piece_may_spread_its_own_work() {
    assertThat(fibonacci(15)).isEqualTo(610); // F(15), OEIS A000045
  }

  @Test
  void one_thread_is_enough() {
    ForkJoinPool alone = new ForkJoinPool(1);

    assertThat(alone.submit(() -> fibonacci(12)).join()).isEqualTo(144); // F(12), OEIS A000045

    alone.shutdown();
  }

  @Test
  void work_begun_goes_on_and_gives_its_result() {
    AllProcessors.Begun<Integer> begun = AllProcessors.begin(() -> fibonacci(10));

    assertThat(fibonacci(11)).isEqualTo(89);
    assertThat(begun.result()).isEqualTo(55);
  }

  @Test
  void what_a_piece_throws_is_thrown() {
    assertThatThrownBy(
            () ->
                AllProcessors.each(
                    MANY,
                    one -> {
                      if (one == 321) {
                        throw new IllegalArgumentException("piece 321");
                      }
                      return one;
                    }))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("piece 321");
    assertThatThrownBy(
            () ->
                AllProcessors.begin(
                        () -> {
                          throw new IllegalStateException("begun");
                        })
                    .result())
        .isInstanceOf(IllegalStateException.class)
        .hasMessageContaining("begun");
  }
}
