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
    if (Files.notExists(path)) {
      throw Refusal.site("There is no class " + path + "; class start begins one.");
    }
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
   * The cases of a folder and of those in it, the one case of a file, or a usual one by its name.
   *
   * @throws Refusal if there is none, or with all problems of all of them
   */
  static Map<Path, CaseStudy> cases(String typed) {
    Path folder = SiteFiles.path(typed);
    return Files.exists(folder) ? in(folder) : Map.ofEntries(usual(typed));
  }

  private static Map<Path, CaseStudy> in(Path folder) {
    List<Path> files = new ArrayList<>();
    try (Stream<Path> found = Files.walk(folder, DEPTH)) {
      found
          .filter(file -> String.valueOf(file.getFileName()).endsWith(CaseFile.ENDING))
          .sorted()
          .forEach(files::add);
    } catch (IOException | java.io.UncheckedIOException e) {
      throw Refusal.site("The folder " + folder + " cannot be read.");
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

  /** A case of the usual folder by its name. */
  private static Map.Entry<Path, CaseStudy> usual(String typed) {
    Path folder = Path.of(USUAL_FOLDER);
    Map<Path, CaseStudy> usual = Files.isDirectory(folder) ? in(folder) : Map.of();
    return usual.entrySet().stream()
        .filter(one -> one.getValue().name().equalsIgnoreCase(typed))
        .findFirst()
        .orElseThrow(
            () ->
                Refusal.usage(
                    "There is no case, file or folder \""
                        + typed
                        + "\": name one of the cases that class list shows, a file NAME"
                        + CaseFile.ENDING
                        + ", or a folder of such files."
                        + Nearest.question(
                            typed, usual.values().stream().map(CaseStudy::name).toList())));
  }

  /**
   * One case, by its file or by its name among the usual ones.
   *
   * @throws Refusal if there is none, or with all its problems
   */
  static CaseStudy oneCase(String typed) {
    Path path = SiteFiles.path(typed);
    if (!typed.endsWith(CaseFile.ENDING)) {
      return usual(typed).getValue();
    }
    SiteFiles.existing(path);
    FileReading<CaseStudy> reading = CaseReader.read(path);
    return reading.content().orElseThrow(() -> Refusal.site(reading.messages()));
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
