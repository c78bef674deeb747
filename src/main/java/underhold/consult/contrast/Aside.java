package underhold.consult.contrast;

import java.util.function.Function;
import underhold.advice.Finding;
import underhold.advice.SupportOption;
import underhold.sizing.BillItem;
import underhold.sizing.Check;

/** Something an engineer wants to see beside a criterion; it is told and never counts. */
public sealed interface Aside {
  /** Handles all kinds. */
  <R> R fold(
      Function<CautionOfOne, R> caution,
      Function<CheckOnSheet, R> check,
      Function<TimeOnSheet, R> time,
      Function<UsualCost, R> cost);

  /** A caution that only one of the two options raises. */
  record CautionOfOne(SupportOption option, Finding finding) implements Aside {
    @Override
    public <R> R fold(
        Function<CautionOfOne, R> caution,
        Function<CheckOnSheet, R> check,
        Function<TimeOnSheet, R> time,
        Function<UsualCost, R> cost) {
      return caution.apply(this);
    }
  }

  /** A check on the sheet of an option. */
  record CheckOnSheet(SupportOption option, Check check) implements Aside {
    @Override
    public <R> R fold(
        Function<CautionOfOne, R> caution,
        Function<CheckOnSheet, R> check,
        Function<TimeOnSheet, R> time,
        Function<UsualCost, R> cost) {
      return check.apply(this);
    }
  }

  /** A time on the sheet of an option. */
  record TimeOnSheet(SupportOption option, BillItem item) implements Aside {
    @Override
    public <R> R fold(
        Function<CautionOfOne, R> caution,
        Function<CheckOnSheet, R> check,
        Function<TimeOnSheet, R> time,
        Function<UsualCost, R> cost) {
      return time.apply(this);
    }
  }

  /** Which of the two usually costs less: judgement of the rule pack. */
  record UsualCost(SupportOption cheaper, SupportOption dearer) implements Aside {
    @Override
    public <R> R fold(
        Function<CautionOfOne, R> caution,
        Function<CheckOnSheet, R> check,
        Function<TimeOnSheet, R> time,
        Function<UsualCost, R> cost) {
      return cost.apply(this);
    }
  }
}
