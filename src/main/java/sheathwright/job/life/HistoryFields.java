package sheathwright.job.life;

import java.util.List;
import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Quantity.Sheets;
import sheathwright.figure.Quantity.Time;
import sheathwright.figure.Units;
import sheathwright.figure.YesNo;
import sheathwright.job.table.Field;
import sheathwright.sheathing.place.BillRule;

/** The columns of the firm's table of closed jobs, which lies beside them. */
public final class HistoryFields {

  /** The name of its file. */
  public static final String FILE = "history.csv";

  public static final Field<Choice<String>> JOB = Field.line("job", "Job");

  public static final Field<Choice<String>> CLOSED_ON = Field.date("closed_on", "Closed on");

  public static final Field<Figure<Sheets>> SHEETS =
      Field.whole("sheets", "Places of the old deck", Units.SHEET, 0, 100_000);

  public static final Field<Figure<Sheets>> BAD =
      Field.number("bad", "Of which bad", Units.SHEET, 0, 100_000);

  public static final Field<Choice<BillRule>> BILL_RULE =
      Field.word("bill_rule", "Counted by", BillRule.class).ifKnown();

  public static final Field<Figure<Sheets>> SEEN =
      Field.number("seen", "Places seen before", Units.SHEET, 0, 100_000).ifKnown();

  public static final Field<Figure<Sheets>> SEEN_BAD =
      Field.number("seen_bad", "Of which bad then", Units.SHEET, 0, 100_000).ifKnown();

  public static final Field<Figure<Sheets>> INCLUDED =
      Field.number("included", "Sheets in the price", Units.SHEET, 0, 100_000).ifKnown();

  public static final Field<Figure<Sheets>> BILLED =
      Field.number("billed", "Sheets billed besides", Units.SHEET, 0, 100_000).ifKnown();

  public static final Field<Figure<Sheets>> CREDITED =
      Field.number("credited", "Sheets not needed", Units.SHEET, 0, 100_000).ifKnown();

  public static final Field<Choice<String>> COVERING =
      Field.line("covering", "Old covering").ifKnown();

  public static final Field<Figure<Time>> HOURS =
      Field.number("hours", "Hours of work", Units.HOUR, 0, 100_000).ifKnown();

  public static final Field<Figure<Ratio>> VISITS =
      Field.whole("visits", "Visits", Units.RATIO, 0, 1_000).ifKnown();

  public static final Field<Choice<YesNo>> DISPUTED =
      Field.word("disputed", "Disputed", YesNo.class).ifKnown();

  /** A closed job each. */
  public static final List<Field<?>> HISTORY =
      List.of(
          JOB,
          CLOSED_ON,
          SHEETS,
          BAD,
          BILL_RULE,
          SEEN,
          SEEN_BAD,
          INCLUDED,
          BILLED,
          CREDITED,
          LifeFields.LAYERS_ON,
          LifeFields.BUILT_YEAR,
          LifeFields.KNOWN_LEAK,
          LifeFields.FAN_INTO_ATTIC,
          COVERING,
          HOURS,
          VISITS,
          DISPUTED);

  private HistoryFields() {}
}
