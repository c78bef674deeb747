package underhold.classroom;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;
import underhold.consult.Consultant;
import underhold.review.file.FileReading;

/** The cases of this project, for tests. */
final class Cases {
  private static final Path FOLDER = Path.of("cases/classroom");
  private static final Map<String, CaseStudy> STUDIES = new LinkedHashMap<>();
  private static final Marking MARKING;

  static {
    files().forEach(file -> STUDIES.put(CaseReader.nameOf(nameOf(file)), read(file)));
    MARKING = new Marking(STUDIES, Consultant.standard());
  }

  private Cases() {}

  static List<Path> files() {
    try (Stream<Path> files = Files.walk(FOLDER)) {
      return files.filter(file -> file.toString().endsWith(CaseFile.ENDING)).sorted().toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static List<CaseStudy> all() {
    return List.copyOf(STUDIES.values());
  }

  static CaseStudy of(String name) {
    return Objects.requireNonNull(STUDIES.get(name));
  }

  /** Marks a class; one for all tests, since it keeps the keys that it has reckoned. */
  static ClassFile marked(ClassFile file) {
    synchronized (MARKING) {
      return MARKING.mark(file);
    }
  }

  private static String nameOf(Path file) {
    return String.valueOf(file.getFileName());
  }

  static String text(String name) {
    try {
      return Files.readString(
          files().stream()
              .filter(file -> file.endsWith(name + CaseFile.ENDING))
              .findFirst()
              .orElseThrow());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static CaseStudy read(Path file) {
    FileReading<CaseStudy> reading = CaseReader.read(file);
    assertThat(reading.messages()).isEmpty();
    return reading.content().orElseThrow();
  }

  /** A class with one case open as far as that stage, and two students. */
  static ClassFile classOf(CaseStudy study, int open) {
    return new ClassFile(
        ClassFile.FORM,
        "test",
        List.of(new CaseRef(study.name(), study.name() + CaseFile.ENDING, open)),
        List.of("Ada", "Bo"),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        List.of());
  }
}
