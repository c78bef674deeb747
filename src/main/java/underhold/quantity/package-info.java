/**
 * Quantities at the edges of the program: reading what a person typed, printing what they will
 * read.
 *
 * <p>Inside the program a quantity is a bare {@code double} in one fixed unit per {@link
 * underhold.quantity.Measure}, and the unit stands in the variable's name. This package is the only
 * place where another unit is turned into that one or back:
 *
 * <table>
 *   <caption>Units inside the program</caption>
 *   <tr><td>length, area, volume</td><td>m, m2, m3</td></tr>
 *   <tr><td>force, force per length</td><td>kN, kN/m</td></tr>
 *   <tr><td>pressure, unit weight</td><td>kPa, kN/m3</td></tr>
 *   <tr><td>moment, moment per length</td><td>kN·m, kN·m/m</td></tr>
 *   <tr><td>angle, speed, duration</td><td>degrees, m/s, hours</td></tr>
 *   <tr><td>count, ratio</td><td>a plain number</td></tr>
 * </table>
 *
 * <p><b>What may be typed.</b> A number and a unit: {@code 4 ft}, {@code 4ft}, {@code 4'}, {@code
 * 4'-6"}, {@code 4 ft 6 in}, {@code 1 1/2 in}, {@code 1,200 kN}, {@code 1.2e-5 m/s}. Case does not
 * matter except where it changes a prefix ({@code mm}, {@code MN}, {@code MPa}: {@code mPa} is not
 * guessed at). A comma groups thousands; a decimal comma ({@code 1,5 m}, {@code 0,500 m}) is
 * refused, never guessed. Nothing but a count or a ratio may come without a unit.
 *
 * <p><b>Words with a fixed meaning here.</b> {@code lb} is a pound-force; {@code kip} (also {@code
 * k}) is 1000 lbf; {@code ton} is the US short ton-force, 2000 lbf; {@code tsf} is such a ton per
 * square foot; {@code gal} is the US liquid gallon; a day has 24 hours and a week seven days.
 * {@code tonne}, {@code t}, {@code kg} and {@code month} are refused because two readings differ.
 *
 * <p><b>Accuracy.</b> Every factor is a decimal constant taken from or built on the exact
 * definitions in NIST SP 811 (2008), appendix B, in {@code Factors}. Conversion is done in decimal
 * arithmetic and rounded once, so {@code 48 in}, {@code 4 ft} and {@code 1.2192 m} are the same
 * double. A constant table is used because starting the JSR-385 reference implementation costs a
 * quarter of a second at every program start; the tests hold the table against it.
 */
@NullMarked
package underhold.quantity;

import org.jspecify.annotations.NullMarked;
