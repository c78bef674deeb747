package underhold.report.html;

import java.util.List;

/** A part of a formula; every character of the text stands in exactly one part. */
sealed interface FormulaPart {

  /** Operators, numbers, names of functions, and whatever was not understood. */
  record Text(String text) implements FormulaPart {}

  /** A symbol such as {@code Wr}, {@code phi} or {@code Fb'}. */
  record Symbol(String name) implements FormulaPart {}

  /** A number with its unit. */
  record Amount(String text) implements FormulaPart {}

  /** Parts one after another. */
  record Row(List<FormulaPart> parts) implements FormulaPart {
    public Row {
      parts = List.copyOf(parts);
    }
  }

  /** A part in brackets. */
  record Group(FormulaPart inside) implements FormulaPart {}

  /** A function of parts set apart by commas. */
  record Call(String name, List<FormulaPart> arguments) implements FormulaPart {
    public Call {
      arguments = List.copyOf(arguments);
    }
  }

  /** A part raised to another. */
  record Power(FormulaPart base, FormulaPart exponent) implements FormulaPart {}

  /**
   * Factors joined by {@code ×} and {@code /}.
   *
   * @param factors at least two
   * @param divides for each factor but the first, whether it divides
   */
  record Product(List<FormulaPart> factors, List<Boolean> divides) implements FormulaPart {
    public Product {
      factors = List.copyOf(factors);
      divides = List.copyOf(divides);
    }
  }

  /** The characters of the part, as they were written. */
  default String plain() {
    if (this instanceof Text text) {
      return text.text();
    } else if (this instanceof Symbol symbol) {
      return symbol.name();
    } else if (this instanceof Amount amount) {
      return amount.text();
    } else if (this instanceof Row row) {
      return String.join("", row.parts().stream().map(FormulaPart::plain).toList());
    } else if (this instanceof Group group) {
      return "(" + group.inside().plain() + ")";
    } else if (this instanceof Call call) {
      return call.name()
          + "("
          + String.join(", ", call.arguments().stream().map(FormulaPart::plain).toList())
          + ")";
    } else if (this instanceof Power power) {
      return power.base().plain() + "^" + power.exponent().plain();
    }
    Product product = (Product) this;
    StringBuilder out = new StringBuilder(product.factors().get(0).plain());
    for (int i = 1; i < product.factors().size(); i++) {
      out.append(product.divides().get(i - 1) ? " / " : " × ");
      out.append(product.factors().get(i).plain());
    }
    return out.toString();
  }
}
