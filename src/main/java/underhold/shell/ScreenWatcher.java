package underhold.shell;

import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import underhold.consult.screening.ScreeningRun;

/** Tells what happens in a screening: a bar on a terminal, and every zone that is skipped. */
final class ScreenWatcher implements ScreeningRun.Watcher {
  private final Output output;
  private final @Nullable ProgressBar bar;

  ScreenWatcher(Output output, boolean terminal) {
    this.output = output;
    this.bar = terminal ? new ProgressBar(output.messages(), System::nanoTime) : null;
  }

  @Override
  public void skipped(List<String> messages) {
    wipe();
    messages.forEach(output::say);
  }

  @Override
  public void at(double taken, ScreeningRun.Count count) {
    if (bar != null) {
      bar.at(
          taken,
          String.format(Locale.ROOT, "%,d zones", count.zones())
              + (count.skipped() == 0 ? "" : ", " + count.skipped() + " skipped"));
    }
  }

  void wipe() {
    if (bar != null) {
      bar.wipe();
    }
  }
}
