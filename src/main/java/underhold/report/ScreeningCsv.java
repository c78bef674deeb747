package underhold.report;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import underhold.advice.Finding;
import underhold.advice.OptionAdvice;
import underhold.advice.Strength;
import underhold.consult.QuickSizing;
import underhold.consult.screening.ScreenedZone;
import underhold.consult.screening.TableForm;
import underhold.sizing.Check;
import underhold.sizing.Verdict;

/** Screened zones as comma-separated values (RFC 4180), one a line. */
public final class ScreeningCsv implements TableForm {
  private static final List<String> HEAD =
      List.of(
          "source",
          "line",
          "zone",
          "row id",
          "leader",
          "standing",
          "tied with",
          "score",
          "answer stays in draws [%]",
          "next",
          "next standing",
          "next score",
          "conditions",
          "governing check",
          "verdict",
          "ratio",
          "checks failing",
          "checks referring",
          "checks passing",
          "held",
          "held for",
          "ruled out",
          "sheet asks for",
          "open facts",
          "rests on");

  private static final int ID = HEAD.indexOf("row id");
  private static final String BETWEEN = "; ";
  private static final double HUNDRED = 100;
  private static final String LINE_END = "\r\n";

  private final ScreeningBasis basis;

  public ScreeningCsv(ScreeningBasis basis) {
    this.basis = basis;
  }

  @Override
  public String begunEnding() {
    return ".part.csv";
  }

  @Override
  public String head() {
    return CSVFormat.RFC4180.format(HEAD.toArray());
  }

  @Override
  public String row(ScreenedZone zone) {
    List<Object> cells = new ArrayList<>();
    cells.add(SafeCell.of(zone.place().source()));
    cells.add(zone.place().line() == 0 ? "" : zone.place().line());
    cells.add(SafeCell.of(zone.place().zone()));
    cells.add(zone.id());
    ranking(zone, cells);
    cells.add(conditions(zone));
    sizing(zone, cells);
    cells.add(ids(zone.held()));
    cells.add(SafeCell.of(String.join(BETWEEN, zone.heldFor())));
    cells.add(ids(zone.ruledOut()));
    cells.add(SafeCell.of(String.join(BETWEEN, zone.sheetAsks())));
    cells.add(zone.open().size());
    cells.add(SafeCell.of(basis.text()));
    return CSVFormat.RFC4180.format(cells.toArray());
  }

  private void ranking(ScreenedZone zone, List<Object> cells) {
    Optional<OptionAdvice> leader = zone.leader();
    cells.add(leader.map(option -> option.option().id()).orElse(""));
    cells.add(standing(zone));
    cells.add(ids(zone.advice().ranking().tiedWithLeader()));
    cells.add(leader.<Object>map(OptionAdvice::score).orElse(""));
    OptionalInt stayed = zone.stayed();
    cells.add(
        stayed.isPresent() ? (Object) Math.round(HUNDRED * stayed.getAsInt() / basis.draws()) : "");
    OptionAdvice next = zone.next();
    cells.add(next.option().id());
    cells.add(next.standing().word());
    cells.add(next.score());
  }

  /** How the answer stands, in words that need no other cell. */
  static String standing(ScreenedZone zone) {
    return zone.leader()
        .map(leader -> leader.tied() ? "leads in a tie" : leader.standing().word())
        .orElse("no clear choice yet");
  }

  /** The requirements that hold for the leader, on known facts first, by rule. */
  static List<Finding> required(ScreenedZone zone) {
    return zone.leader()
        .map(
            leader ->
                zone.advice().conditions().stream()
                    .filter(finding -> finding.rule().concerns(leader.option()))
                    .toList())
        .orElse(List.of());
  }

  private static String conditions(ScreenedZone zone) {
    List<String> words =
        required(zone).stream()
            .map(
                finding ->
                    finding.rule().id()
                        + finding.strength().map(ScreeningCsv::inBrackets).orElse("")
                        + (finding.assumed() ? " if as assumed" : ""))
            .toList();
    return SafeCell.of(String.join(BETWEEN, words));
  }

  private static String inBrackets(Strength strength) {
    return " (" + strength.word() + ")";
  }

  private static void sizing(ScreenedZone zone, List<Object> cells) {
    Optional<QuickSizing> sizing = zone.sizing().filter(QuickSizing::complete);
    Optional<Check> governing = sizing.flatMap(QuickSizing::governing);
    cells.add(governing.map(check -> SafeCell.of(check.title())).orElse(""));
    cells.add(governing.map(check -> check.verdict().label()).orElse(""));
    cells.add(governing.map(ScreeningCsv::ratio).orElse(""));
    for (Verdict verdict : List.of(Verdict.FAILS, Verdict.REFER, Verdict.PASSES)) {
      cells.add(sizing.<Object>map(sheet -> sheet.count(verdict)).orElse(""));
    }
  }

  private static String ratio(Check check) {
    return check.utilisation().isPresent()
        ? String.format(Locale.ROOT, "%.2f", check.utilisation().getAsDouble())
        : "no capacity";
  }

  private static String ids(List<OptionAdvice> options) {
    return String.join(BETWEEN, options.stream().map(option -> option.option().id()).toList());
  }

  @Override
  public Optional<String> id(String row) {
    try (CSVParser parser = CSVParser.parse(row, CSVFormat.RFC4180)) {
      List<CSVRecord> records = parser.getRecords();
      boolean ours =
          records.size() == 1
              && records.get(0).size() == HEAD.size()
              && records.get(0).get(HEAD.size() - 1).equals(SafeCell.of(basis.text()));
      return ours ? Optional.of(records.get(0).get(ID)) : Optional.empty();
    } catch (IOException | UncheckedIOException e) {
      return Optional.empty();
    }
  }

  @Override
  public void whole(BufferedReader begun, Writer table) throws IOException {
    String line = begun.readLine();
    while (line != null) {
      table.write(line);
      table.write(LINE_END);
      line = begun.readLine();
    }
  }

  @Override
  public boolean isBegun(String beginning) {
    return beginning.startsWith(head()) || head().startsWith(beginning);
  }

  @Override
  public boolean isTable(String beginning) {
    return beginning.startsWith(head());
  }
}
