package underhold.advice;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.FutureTask;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** The compiled rules load whichever thread asks for them first. */
class EngineLoadingTest {
  private static final Path SITE = Path.of("cases/demo/alder-row-party-wall.site.json");

  @Test
  @DisplayName(
      "Packed into one jar, whose loader a worker thread does not know, the program still judges when such a thread asks first")
  void a_thread_that_knows_not_the_loader_may_ask_first() throws Exception {
    List<URL> places = new ArrayList<>();
    for (String place : System.getProperty("java.class.path").split(File.pathSeparator)) {
      places.add(Path.of(place).toUri().toURL());
    }
    ClassLoader none = ClassLoader.getPlatformClassLoader();
    try (URLClassLoader own = new URLClassLoader(places.toArray(URL[]::new), none)) {
      FutureTask<String> asked = new FutureTask<>(advice(own, Files.readString(SITE)));
      Thread worker = new Thread(asked);
      worker.setContextClassLoader(none);
      worker.start();
      assertThat(asked.get()).contains("party wall");
    }
  }

  /** The ranking of the zones of a site, by a program that a loader of its own holds. */
  private static Callable<String> advice(ClassLoader own, String site) {
    return () -> {
      Object reading =
          own.loadClass("underhold.site.SiteReader")
              .getMethod("read", String.class, String.class)
              .invoke(null, site, "site");
      Class<?> valid = own.loadClass("underhold.site.SiteReading$Valid");
      Object read = valid.getMethod("site").invoke(reading);
      Class<?> consultants = own.loadClass("underhold.consult.Consultant");
      Object consultant = consultants.getMethod("standard").invoke(null);
      Object answer =
          consultants
              .getMethod("advise", own.loadClass("underhold.site.Site"))
              .invoke(consultant, read);
      return String.valueOf(answer.getClass().getMethod("zones").invoke(answer));
    };
  }
}
