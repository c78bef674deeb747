package underhold.shell;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import underhold.classroom.CaseFile;
import underhold.classroom.CaseRef;
import underhold.classroom.CaseStage;
import underhold.classroom.CaseStudy;
import underhold.classroom.QuestionDesk;
import underhold.classroom.StudentSheet;
import underhold.quantity.UnitSystem;
import underhold.report.ClassJson;
import underhold.report.ClassSheetText;
import underhold.report.Json;
import underhold.report.Look;
import underhold.report.document.Document;
import underhold.report.document.DocumentWriter;
import underhold.report.handout.KeyHandout;
import underhold.report.handout.StudentHandout;
import underhold.report.html.HtmlWriter;
import underhold.report.json.JsonWriter;
import underhold.report.markdown.MarkdownWriter;
import underhold.report.pdf.Paper;
import underhold.report.pdf.PdfWriter;
import underhold.site.WholeFile;

/** {@code class sheet} and {@code class key}: what students and trainers have in hand. */
final class ClassHandoutCommands {
  private static final String ENDINGS = ".html, .pdf or .md";

  private final Session session;

  private ClassHandoutCommands(Session session) {
    this.session = session;
  }

  static ShellCommand sheet(Session session) {
    return ClassCommands.command(
        "class sheet",
        "what a student knows of a case and is asked, on the screen or as a handout; nothing else",
        List.of(Parameter.needed("FILE.class.json|CASE", ClassFiles::here)),
        List.of(
            ClassOptions.CASE_OPTION,
            ClassOptions.STUDENT_OPTION,
            ClassOptions.STAGE_OPTION,
            ClassOptions.OUT_OPTION),
        call -> new ClassHandoutCommands(session).sheet(call));
  }

  static ShellCommand key(Session session) {
    return ClassCommands.command(
        "class key",
        "the trainer's key of a case with reasons, workings, trace and sources; not for students",
        List.of(Parameter.needed("CASE", List::of)),
        List.of(ClassOptions.OUT_OPTION),
        call -> new ClassHandoutCommands(session).key(call));
  }

  private int sheet(Call call) {
    String typed = call.needed(0);
    Optional<Path> out = out(call);
    List<StudentSheet> sheets =
        typed.endsWith(underhold.classroom.ClassFile.ENDING)
            ? ofClass(call)
            : List.of(ofCase(call));
    if (out.isEmpty()) {
      session
          .output()
          .answer(look -> text(sheets, look), () -> sheets.stream().map(ClassJson::sheet).toList());
      return Exit.DONE;
    }
    if (sheets.size() != 1) {
      throw Refusal.usage("A handout is of one case: name it with --case.");
    }
    StudentSheet sheet = sheets.get(0);
    write(out.get(), StudentHandout.of(sheet, session.pack()), sheet.site().units());
    return Exit.DONE;
  }

  private static String text(List<StudentSheet> sheets, Look look) {
    return String.join("\n", sheets.stream().map(sheet -> ClassSheetText.of(sheet, look)).toList());
  }

  /** The sheets of a class: of one student, or for anybody. */
  private List<StudentSheet> ofClass(Call call) {
    if (call.has(ClassOptions.STAGE)) {
      throw Refusal.usage("--stage goes with a case; of a class class reveal opens the stages.");
    }
    ClassFiles.Opened opened = ClassFiles.read(call.needed(0));
    Optional<String> student =
        call.option(Options.BY).map(name -> ClassCommands.known(opened.file(), name));
    String typed = ClassCommands.option(call, ClassOptions.CASE);
    List<CaseRef> refs =
        opened.file().cases().stream()
            .filter(ref -> typed.isBlank() || ref.name().equalsIgnoreCase(typed))
            .toList();
    if (refs.isEmpty()) {
      List<String> names = opened.file().cases().stream().map(CaseRef::name).toList();
      throw Refusal.usage(
          "--case is \""
              + typed
              + "\"; the class has "
              + String.join(", ", names)
              + "."
              + Nearest.question(typed, names));
    }
    QuestionDesk questions = new QuestionDesk(session.consultant());
    List<StudentSheet> sheets = new ArrayList<>();
    for (CaseRef ref : refs) {
      CaseStudy study = opened.studies().get(ref.name());
      if (study != null) {
        sheets.add(
            student
                .map(name -> StudentSheet.of(study, opened.file(), ref, name, questions))
                .orElseGet(() -> StudentSheet.of(study, ref.open())));
      }
    }
    return sheets;
  }

  private static StudentSheet ofCase(Call call) {
    if (call.has(Options.BY) || call.has(ClassOptions.CASE)) {
      throw Refusal.usage(
          "--by and --case go with a class file, NAME.class.json; a sheet of a case itself is for"
              + " anybody.");
    }
    CaseStudy study = ClassFiles.oneCase(call.needed(0));
    String typed = ClassCommands.option(call, ClassOptions.STAGE);
    // names of surprises are not told, for a student may be looking on
    List<String> names =
        study.stages().stream().filter(one -> !one.surprise()).map(CaseStage::name).toList();
    int open =
        typed.isBlank()
            ? 0
            : study
                .stage(typed)
                .orElseThrow(
                    () ->
                        Refusal.usage(
                            "--stage is \""
                                + typed
                                + "\"; the stages are "
                                + String.join(", ", names)
                                + "."
                                + Nearest.question(typed, names)));
    return StudentSheet.of(study, open);
  }

  private int key(Call call) {
    Optional<Path> out = out(call);
    CaseStudy study = ClassFiles.oneCase(call.needed(0));
    Document document = KeyHandout.of(study, session.consultant());
    if (out.isPresent()) {
      write(out.get(), document, study.full().units());
    } else {
      DocumentWriter writer =
          session.output().json() ? new JsonWriter(Map.of()) : new MarkdownWriter();
      session.output().print(new String(bytes(writer, document), StandardCharsets.UTF_8));
    }
    return Exit.DONE;
  }

  private static Optional<Path> out(Call call) {
    Optional<Path> out = call.option(Options.OUT).map(SiteFiles::path);
    out.ifPresent(file -> ReportCommand.refuseForeign(file, format(file)));
    return out;
  }

  private static ReportFormat format(Path file) {
    String name = String.valueOf(file.getFileName());
    return ReportFormat.of(name)
        .filter(format -> format != ReportFormat.JSON && !name.endsWith(CaseFile.ENDING))
        .orElseThrow(
            () ->
                Refusal.usage(
                    "--out is "
                        + file
                        + "; its ending says the format of a handout and must be "
                        + ENDINGS
                        + "."));
  }

  private void write(Path file, Document document, UnitSystem units) {
    byte[] bytes = bytes(writer(format(file), units), document);
    WholeFile.replace(file, bytes)
        .fold(
            written -> {
              said(file, document, bytes.length);
              return true;
            },
            refused -> {
              throw Refusal.site(refused.message() + ".");
            });
  }

  private void said(Path file, Document document, int size) {
    if (session.output().json()) {
      session
          .output()
          .print(
              Json.text(
                  Json.object(
                      "written", file.toString(), "title", document.title(), "bytes", size)));
      return;
    }
    session
        .output()
        .say(file + " is written: " + document.title() + ". " + document.status() + ".");
  }

  private static DocumentWriter writer(ReportFormat format, UnitSystem units) {
    return switch (format) {
      case HTML -> new HtmlWriter();
      case PDF -> new PdfWriter(Paper.of(units));
      case MARKDOWN -> new MarkdownWriter();
      case JSON -> throw new IllegalArgumentException("no handout is JSON");
    };
  }

  private static byte[] bytes(DocumentWriter writer, Document document) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try {
      writer.write(document, bytes);
    } catch (IOException e) {
      throw new UncheckedIOException("a handout could not be made in memory", e);
    }
    return bytes.toByteArray();
  }
}
