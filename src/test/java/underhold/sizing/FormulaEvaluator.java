package underhold.sizing;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/**
 * Works out a formula as it is printed, the way a reviewer would; knows nothing of the calculators.
 */
public final class FormulaEvaluator {
  private final String text;
  private final Map<String, Double> values;
  private int at;

  private FormulaEvaluator(String text, Map<String, Double> values) {
    this.text = text;
    this.values = values;
  }

  /** The value of a right-hand side whose symbols stand in braces. Angles are in degrees. */
  public static double evaluate(String text, Map<String, Double> values) {
    FormulaEvaluator evaluator = new FormulaEvaluator(text, values);
    double value = evaluator.sum();
    evaluator.blanks();
    if (evaluator.at != text.length()) {
      throw new IllegalArgumentException(
          "cannot read \"" + text.substring(evaluator.at) + "\" in \"" + text + "\"");
    }
    return value;
  }

  private double sum() {
    double value = product();
    while (true) {
      if (taken('+')) {
        value += product();
      } else if (taken('-')) {
        value -= product();
      } else {
        return value;
      }
    }
  }

  private double product() {
    double value = power();
    while (true) {
      if (taken('×')) {
        value *= power();
      } else if (taken('/')) {
        value /= power();
      } else {
        return value;
      }
    }
  }

  private double power() {
    double base = atom();
    return taken('^') ? Math.pow(base, atom()) : base;
  }

  private double atom() {
    blanks();
    if (taken('(')) {
      double value = sum();
      demand(')');
      return value;
    }
    if (taken('{')) {
      int end = text.indexOf('}', at);
      String sign = text.substring(at, end);
      at = end + 1;
      Double value = values.get(sign);
      if (value == null) {
        throw new IllegalArgumentException("no value for " + sign);
      }
      return value;
    }
    int start = at;
    if (Character.isLetter(text.charAt(at))) {
      while (Character.isLetter(text.charAt(at))) {
        at++;
      }
      return function(text.substring(start, at));
    }
    while (at < text.length() && (Character.isDigit(text.charAt(at)) || text.charAt(at) == '.')) {
      at++;
    }
    return Double.parseDouble(text.substring(start, at));
  }

  private double function(String name) {
    demand('(');
    List<Double> arguments = new ArrayList<>(List.of(sum()));
    while (taken(',')) {
      arguments.add(sum());
    }
    demand(')');
    Function<Double, Double> radians = Math::toRadians;
    double first = arguments.get(0);
    return switch (name) {
      case "sqrt" -> Math.sqrt(first);
      case "exp" -> Math.exp(first);
      case "tan" -> Math.tan(radians.apply(first));
      case "sin" -> Math.sin(radians.apply(first));
      case "cos" -> Math.cos(radians.apply(first));
      case "min" -> arguments.stream().mapToDouble(Double::doubleValue).min().orElseThrow();
      case "max" -> arguments.stream().mapToDouble(Double::doubleValue).max().orElseThrow();
      default -> throw new IllegalArgumentException("unknown function " + name);
    };
  }

  private void demand(char wanted) {
    if (!taken(wanted)) {
      throw new IllegalArgumentException(
          "expected " + wanted + " at " + at + " in \"" + text + "\"");
    }
  }

  private boolean taken(char wanted) {
    blanks();
    if (at < text.length() && text.charAt(at) == wanted) {
      at++;
      return true;
    }
    return false;
  }

  private void blanks() {
    while (at < text.length() && text.charAt(at) == ' ') {
      at++;
    }
  }
}
