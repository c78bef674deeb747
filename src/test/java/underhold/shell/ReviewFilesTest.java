package underhold.shell;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static underhold.shell.ShellClient.file;

import java.nio.file.Path;
import java.time.Clock;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import underhold.review.record.Draft;
import underhold.review.record.Entering;
import underhold.review.record.EntryKind;
import underhold.review.record.ReviewDesk;
import underhold.review.record.ReviewFile;
import underhold.review.saved.SavedSamples;

/** Two programs with one review: the second to write is told, and nothing of the first is lost. */
class ReviewFilesTest {
  private final ReviewDesk desk =
      new ReviewDesk(SavedSamples.saved("ferry-street-column"), Clock.systemUTC());

  @TempDir Path folder;

  @Test
  void the_second_to_write_is_told() {
    ReviewFile started = made(desk.start("a.advice.json", "Ines Okafor", Optional.empty()));
    String name = file(folder, "a.review.json", ReviewFile.FILES.text(started));
    ReviewFiles.Opened one = ReviewFiles.read(name);
    ReviewFiles.Opened other = ReviewFiles.read(name);

    ReviewFiles.write(one.file(), with(one, "First."), one.state());
    assertThatThrownBy(() -> ReviewFiles.write(other.file(), with(other, "Second."), other.state()))
        .isInstanceOf(Refusal.class)
        .hasMessageContaining("has changed since it was read");

    ReviewFiles.Opened now = ReviewFiles.read(name);
    assertThat(now.record().intact()).isTrue();
    assertThat(now.record().entries()).hasSize(2);
    assertThat(now.record().entries().get(1).text()).contains("First.");
  }

  private ReviewFile with(ReviewFiles.Opened opened, String text) {
    return made(
        desk.enter(
            opened.record(), Draft.of(EntryKind.COMMENT, "Ines Okafor").on("whole").saying(text)));
  }

  private static ReviewFile made(Entering entering) {
    return ((Entering.Done) entering).file();
  }
}
