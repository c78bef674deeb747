package underhold.report.html;

import java.io.ByteArrayInputStream;
import java.io.StringReader;
import java.lang.reflect.Field;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.xml.parsers.DocumentBuilderFactory;
import nu.validator.validation.SimpleDocumentValidator;
import org.xml.sax.ErrorHandler;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;
import org.xml.sax.SAXParseException;

/**
 * What is wrong with an HTML file: by the W3C's checker (errors and warnings), and by our own
 * terms: nothing is fetched, no script, every link leads to a place of the file, well-formed as
 * XML.
 */
public final class HtmlChecks {
  private static final Pattern REFERENCE =
      Pattern.compile("\\s(?:src|href|xlink:href|action|data|poster|srcset)=\"([^\"]*)\"");
  private static final Pattern ID = Pattern.compile("<[^>]*\\sid=\"([^\"]*)\"");
  private static final Pattern STYLE =
      Pattern.compile(
          "<style[^>]*>(.*?)</style>|<[^>]* (?:style|fill|stroke)=\"([^\"]*)\"", Pattern.DOTALL);
  private static final Pattern FETCHING_STYLE = Pattern.compile("@import|url\\((?!#)");

  private HtmlChecks() {}

  /** All problems, each in a line; empty for a good file. */
  public static List<String> problems(byte[] html) throws Exception {
    List<String> problems = new ArrayList<>();
    SimpleDocumentValidator validator = new SimpleDocumentValidator(true, false, false);
    ErrorHandler collector = new Collector(problems);
    validator.setUpMainSchema("http://s.validator.nu/html5-rdfalite.rnc", collector);
    withoutGuessingTheLanguage(validator);
    validator.setUpValidatorAndParsers(collector, true, false);
    InputSource source = new InputSource(new ByteArrayInputStream(html));
    source.setEncoding("UTF-8");
    validator.checkHtmlInputSource(source);

    String text = new String(html, StandardCharsets.UTF_8);
    Set<String> ids = new HashSet<>();
    Matcher id = ID.matcher(text);
    while (id.find()) {
      ids.add(id.group(1));
    }
    Matcher reference = REFERENCE.matcher(text);
    while (reference.find()) {
      String target = reference.group(1);
      if (!target.startsWith("#") || !ids.contains(target.substring(1))) {
        problems.add("leads out of the file or nowhere: " + target);
      }
    }
    Matcher style = STYLE.matcher(text);
    while (style.find()) {
      if (FETCHING_STYLE.matcher(style.group()).find()) {
        problems.add("the style fetches something");
      }
    }
    if (text.toLowerCase(Locale.ROOT).contains("<script")) {
      problems.add("holds a script");
    }
    problems.addAll(xmlProblems(text));
    return problems;
  }

  /**
   * The checker would guess the language of the text with a library that does not go with the
   * others on our path; our pages say their language themselves.
   */
  private static void withoutGuessingTheLanguage(SimpleDocumentValidator validator)
      throws ReflectiveOperationException {
    Field guesses = SimpleDocumentValidator.class.getDeclaredField("langdetectSchema");
    Field assertions = SimpleDocumentValidator.class.getDeclaredField("assertionSchema");
    guesses.setAccessible(true);
    assertions.setAccessible(true);
    guesses.set(validator, assertions.get(validator));
  }

  /** Why the text is no well-formed XML; empty when it is. */
  public static List<String> xmlProblems(String text) throws Exception {
    try {
      var builder = DocumentBuilderFactory.newDefaultInstance().newDocumentBuilder();
      builder.setErrorHandler(null);
      builder.parse(new InputSource(new StringReader(text)));
      return List.of();
    } catch (SAXException bad) {
      return List.of("no well-formed XML: " + bad.getMessage());
    }
  }

  private record Collector(List<String> problems) implements ErrorHandler {
    @Override
    public void warning(SAXParseException problem) {
      boolean ofSlashes = problem.getMessage().startsWith("Trailing slash on void elements");
      if (!ofSlashes) {
        add(problem);
      }
    }

    @Override
    public void error(SAXParseException problem) {
      add(problem);
    }

    @Override
    public void fatalError(SAXParseException problem) {
      add(problem);
    }

    /** The checker of 2020 does not know what opens a folded text in print. */
    private static boolean newerThanTheChecker(SAXParseException problem) {
      return problem.getMessage().contains("“::details-content”");
    }

    private void add(SAXParseException problem) {
      if (newerThanTheChecker(problem)) {
        return;
      }
      String line =
          problem.getLineNumber() + ":" + problem.getColumnNumber() + " " + problem.getMessage();
      if (problems.size() < 50 && !problems.contains(line)) {
        problems.add(line);
      }
    }
  }
}
