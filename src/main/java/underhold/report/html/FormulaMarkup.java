package underhold.report.html;

import gg.jte.html.HtmlContent;
import gg.jte.html.HtmlTemplateOutput;
import gg.jte.html.OwaspHtmlTemplateOutput;
import gg.jte.output.StringOutput;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import underhold.report.html.FormulaPart.Amount;
import underhold.report.html.FormulaPart.Call;
import underhold.report.html.FormulaPart.Group;
import underhold.report.html.FormulaPart.Power;
import underhold.report.html.FormulaPart.Product;
import underhold.report.html.FormulaPart.Row;
import underhold.report.html.FormulaPart.Symbol;
import underhold.report.html.FormulaPart.Text;

/**
 * A formula set as an engineer writes it: {@code Wr} with its index, {@code L^2} with a raised 2, a
 * division as a fraction, {@code sqrt} as a root with a bar, {@code phi} as the Greek letter. The
 * markup without its tags is the formula itself, character by character; signs that the setting
 * makes needless (class {@code as}) are only hidden, and the whole carries the plain formula as its
 * label. What is not understood is set plainly.
 */
public final class FormulaMarkup implements HtmlContent {
  /** Letters in one half of a fraction; a longer one is written in line. */
  private static final int LONGEST_HALF = 64;

  private static final String HIDDEN = "<span class=\"as\">";

  /** Greek letters by their English names; the style sheet holds the letters themselves. */
  private static final Set<String> GREEK =
      Set.of(
          "alpha", "beta", "gamma", "delta", "epsilon", "eta", "theta", "lambda", "mu", "nu", "rho",
          "sigma", "tau", "phi", "chi", "psi", "omega");

  private static final Set<String> STACKED_INSIDE = Set.of("min", "max");
  private static final Pattern INDEXED = Pattern.compile("(\\p{L})([\\p{L}\\p{N}]{1,3})('?)");
  private static final Pattern WORD =
      Pattern.compile("(?=\\p{Ll}{3})\\p{Ll}*[aeiou]\\p{Ll}*|\\p{Lu}{2}");
  private static final Pattern RAISED = Pattern.compile("(?<=[a-z])([2-4])(?![0-9])");

  private final String plain;
  private final boolean fractions;
  private final Optional<FormulaPart> whole;

  private FormulaMarkup(String plain, boolean fractions) {
    this.plain = plain;
    this.fractions = fractions;
    this.whole = FormulaParser.read(plain);
  }

  /** A formula or a single symbol, set with its fractions. */
  public static FormulaMarkup of(String plain) {
    return new FormulaMarkup(plain, true);
  }

  /** A calculation, set in one line: its divisions stay as they are written. */
  public static FormulaMarkup inline(String plain) {
    return new FormulaMarkup(plain, false);
  }

  /** Whether signs are hidden by the setting, so that the plain text cannot be read off it. */
  public boolean hidesSigns() {
    StringOutput out = new StringOutput();
    writeTo(new OwaspHtmlTemplateOutput(out));
    return out.toString().contains(HIDDEN);
  }

  @Override
  public void writeTo(HtmlTemplateOutput out) {
    out.writeContent("<span class=\"set\" role=\"math\" aria-label=\"");
    out.setContext("span", "aria-label");
    out.writeUserContent(plain);
    out.setContext("span", null);
    out.writeContent("\">");
    if (whole.isPresent()) {
      write(whole.get(), fractions, out);
    } else {
      out.writeUserContent(plain);
    }
    out.writeContent("</span>");
  }

  private static void write(FormulaPart part, boolean stack, HtmlTemplateOutput out) {
    if (part instanceof Text text) {
      out.writeUserContent(text.text());
    } else if (part instanceof Symbol symbol) {
      write(symbol.name(), out);
    } else if (part instanceof Amount amount) {
      write(amount, out);
    } else if (part instanceof Row row) {
      row.parts().forEach(each -> write(each, stack, out));
    } else if (part instanceof Group group) {
      out.writeContent("(");
      write(group.inside(), false, out);
      out.writeContent(")");
    } else if (part instanceof Call call) {
      write(call, stack, out);
    } else if (part instanceof Power power) {
      write(power.base(), false, out);
      out.writeContent(hidden("^") + "<sup>");
      writeBare(power.exponent(), out);
      out.writeContent("</sup>");
    } else if (part instanceof Product product) {
      write(product, stack && canStack(product), out);
    }
  }

  private static void write(String name, HtmlTemplateOutput out) {
    Matcher indexed = INDEXED.matcher(name);
    if (GREEK.contains(name)) {
      out.writeContent("<span class=\"greek " + name + "\"></span>" + hidden(name));
    } else if (indexed.matches() && !WORD.matcher(name).matches()) {
      out.writeContent("<i>");
      out.writeUserContent(indexed.group(1));
      out.writeContent("</i><sub>");
      out.writeUserContent(indexed.group(2));
      out.writeContent("</sub>");
      out.writeUserContent(indexed.group(3));
    } else {
      out.writeContent("<i>");
      out.writeUserContent(name);
      out.writeContent("</i>");
    }
  }

  private static void write(Amount amount, HtmlTemplateOutput out) {
    out.writeContent("<span class=\"amount\">");
    Matcher raised = RAISED.matcher(amount.text());
    int at = 0;
    while (raised.find()) {
      out.writeUserContent(amount.text().substring(at, raised.start()));
      out.writeContent("<sup>" + raised.group() + "</sup>");
      at = raised.end();
    }
    out.writeUserContent(amount.text().substring(at));
    out.writeContent("</span>");
  }

  private static void write(Call call, boolean stack, HtmlTemplateOutput out) {
    boolean root = call.name().equals("sqrt") && call.arguments().size() == 1;
    if (root) {
      out.writeContent("<span class=\"root\">" + hidden("sqrt(") + "<span class=\"under\">");
      write(call.arguments().get(0), false, out);
      out.writeContent("</span>" + hidden(")") + "</span>");
      return;
    }
    out.writeUserContent(call.name());
    out.writeContent("(");
    boolean inside = stack && STACKED_INSIDE.contains(call.name());
    String between = "";
    for (FormulaPart argument : call.arguments()) {
      out.writeContent(between);
      write(argument, inside, out);
      between = ", ";
    }
    out.writeContent(")");
  }

  private static void write(Product product, boolean stack, HtmlTemplateOutput out) {
    List<FormulaPart> factors = product.factors();
    int at = 0;
    while (at < factors.size()) {
      int end = at;
      while (end < product.divides().size() && !product.divides().get(end)) {
        end++;
      }
      boolean fraction = stack && end < product.divides().size();
      if (at > 0) {
        out.writeContent(!stack && product.divides().get(at - 1) ? " / " : " × ");
      }
      if (fraction) {
        out.writeContent("<span class=\"over\"><span class=\"up\">");
      }
      if (fraction && end == at) {
        writeBare(factors.get(at), out);
      } else {
        for (int i = at; i <= end; i++) {
          out.writeContent(i > at ? " × " : "");
          write(factors.get(i), false, out);
        }
      }
      at = end + 1;
      if (fraction) {
        out.writeContent("</span>" + hidden(" / ") + "<span class=\"down\">");
        writeBare(factors.get(at), out);
        out.writeContent("</span></span>");
        at++;
      }
    }
  }

  /** Without the brackets that the setting makes needless. */
  private static void writeBare(FormulaPart part, HtmlTemplateOutput out) {
    if (part instanceof Group group) {
      out.writeContent(hidden("("));
      write(group.inside(), false, out);
      out.writeContent(hidden(")"));
    } else {
      write(part, false, out);
    }
  }

  private static String hidden(String sign) {
    return HIDDEN + sign + "</span>";
  }

  /** Whether every division has a factor of its own above it and both halves are short. */
  private static boolean canStack(Product product) {
    int above = product.factors().get(0).plain().length();
    boolean divided = false;
    for (int i = 0; i < product.divides().size(); i++) {
      int length = product.factors().get(i + 1).plain().length();
      boolean divides = product.divides().get(i);
      if (divides && (above == 0 || above > LONGEST_HALF || length > LONGEST_HALF)) {
        return false;
      }
      above = divides ? 0 : above + length + (above == 0 ? 0 : 3);
      divided |= divides;
    }
    return divided;
  }
}
