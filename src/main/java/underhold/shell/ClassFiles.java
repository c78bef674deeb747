package underhold.shell;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import underhold.classroom.CaseFile;
import underhold.classroom.CaseReader;
import underhold.classroom.CaseRef;
import underhold.classroom.CaseStudy;
import underhold.classroom.ClassChecks;
import underhold.classroom.ClassFile;
import underhold.review.file.FileReading;
import underhold.site.SavedState;

/** Reads and writes the files of a class for the commands. */
final class ClassFiles {
  /** Where cases lie unless another folder is named. */
  static final String USUAL_FOLDER = "cases/classroom";

  private static final int DEPTH = 3;

  private ClassFiles() {}

  /**
   * A class and its file.
   *
   * @param path as the user named it
   * @param file the class
   * @param studies its cases, by name, in its order
   * @param state the file when it was read
   */
  record Opened(Path path, ClassFile file, Map<String, CaseStudy> studies, SavedState state) {}

  static List<String> here() {
    return SiteFiles.here(ClassFile.ENDING);
  }

  /**
   * Reads a class and its cases.
   *
   * @throws Refusal with all problems of all files
   */
  static Opened read(String typed) {
    Path path = SiteFiles.path(typed);
    SiteFiles.existing(path);
    FileReading<ClassFile> reading = ClassFile.FILES.read(path);
    ClassFile file = reading.content().orElseThrow(() -> Refusal.site(reading.messages()));
    Map<String, CaseStudy> studies = new LinkedHashMap<>();
    List<String> problems = new ArrayList<>();
    for (CaseRef ref : file.cases()) {
      FileReading<CaseStudy> study = CaseReader.read(path.resolveSibling(ref.file()));
      problems.addAll(study.messages());
      study.content().ifPresent(found -> studies.put(ref.name(), found));
    }
    ClassChecks.problems(file, studies).forEach(one -> problems.add(path + ": " + one));
    if (!problems.isEmpty()) {
      throw Refusal.site(problems);
    }
    return new Opened(path, file, studies, reading.state());
  }

  /** Writes a class, whole or not at all. */
  static void write(Path path, ClassFile file, SavedState expected) {
    ClassFile.FILES
        .write(path, file, expected)
        .fold(
            written -> path,
            refused -> {
              throw Refusal.site(refused.message() + ".");
            });
  }

  /**
   * The cases of a folder and of those in it, or the one case of a file.
   *
   * @throws Refusal if there is none, or with all problems of all of them
   */
  static Map<Path, CaseStudy> cases(String typed) {
    Path folder = SiteFiles.path(typed);
    List<Path> files = new ArrayList<>();
    try (Stream<Path> found = Files.walk(folder, DEPTH)) {
      found
          .filter(file -> String.valueOf(file.getFileName()).endsWith(CaseFile.ENDING))
          .sorted()
          .forEach(files::add);
    } catch (IOException | java.io.UncheckedIOException e) {
      throw Refusal.site("There is no folder or case " + folder + ".");
    }
    if (files.isEmpty()) {
      throw Refusal.site(folder + " holds no case, which is a file NAME" + CaseFile.ENDING + ".");
    }
    Map<Path, CaseStudy> studies = new LinkedHashMap<>();
    List<String> problems = new ArrayList<>();
    for (Path file : files) {
      FileReading<CaseStudy> study = CaseReader.read(file);
      problems.addAll(study.messages());
      study.content().ifPresent(found -> studies.put(file, found));
    }
    if (!problems.isEmpty()) {
      throw Refusal.site(problems);
    }
    return studies;
  }

  /**
   * One case, by its file or by its name among the usual ones.
   *
   * @throws Refusal if there is none, or with all its problems
   */
  static CaseStudy oneCase(String typed) {
    Path path = SiteFiles.path(typed);
    if (typed.endsWith(CaseFile.ENDING)) {
      SiteFiles.existing(path);
      FileReading<CaseStudy> reading = CaseReader.read(path);
      return reading.content().orElseThrow(() -> Refusal.site(reading.messages()));
    }
    Map<Path, CaseStudy> usual =
        Files.isDirectory(Path.of(USUAL_FOLDER)) ? cases(USUAL_FOLDER) : Map.of();
    List<String> names = usual.values().stream().map(CaseStudy::name).toList();
    return usual.values().stream()
        .filter(one -> one.name().equalsIgnoreCase(typed))
        .findFirst()
        .orElseThrow(
            () ->
                Refusal.usage(
                    "There is no case \""
                        + typed
                        + "\" in "
                        + USUAL_FOLDER
                        + "; name one of those that class list shows, or a file NAME"
                        + CaseFile.ENDING
                        + "."
                        + Nearest.question(typed, names)));
  }

  /** A case file as seen from the folder of a class file. */
  static String seenFrom(Path classFile, Path caseFile) {
    Path folder = classFile.toAbsolutePath().normalize().getParent();
    Path target = caseFile.toAbsolutePath().normalize();
    Path seen =
        folder != null && java.util.Objects.equals(folder.getRoot(), target.getRoot())
            ? folder.relativize(target)
            : target;
    return seen.toString().replace('\\', '/');
  }
}
