package sheathwright.job.life;

import java.util.List;
import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.Option;
import sheathwright.figure.Quantity.Money;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Quantity.Sheets;
import sheathwright.figure.Quantity.Time;
import sheathwright.figure.Units;
import sheathwright.job.table.Field;
import sheathwright.sheathing.place.BillRule;

/** The columns of the tables that a firm keeps beside its jobs. */
public final class FirmFields {

  /** What somebody called back about. */
  public enum Was implements Option<Was> {
    /** A sheet that was left. */
    KEPT,
    /** One that was laid anew. */
    NEW,
    JOINT,
    FASTENER,
    /** Water from elsewhere. */
    LEAK_ELSEWHERE
  }

  public static final Field<Choice<String>> JOB = Field.name("job", "Job");

  public static final Field<Choice<String>> CLOSED_ON = Field.date("closed_on", "Closed on");

  public static final Field<Figure<Ratio>> SHEETS =
      Field.whole("sheets", "Places of the old deck", Units.RATIO, 1, 20_000);

  public static final Field<Figure<Ratio>> BAD =
      Field.whole("bad", "Of which bad", Units.RATIO, 0, 20_000);

  public static final Field<Choice<BillRule>> BILL_RULE =
      Field.word("bill_rule", "Billed by", BillRule.class).ifKnown();

  public static final Field<Figure<Ratio>> SEEN =
      Field.whole("seen", "Seen before", Units.RATIO, 0, 20_000).ifKnown();

  public static final Field<Figure<Ratio>> SEEN_BAD =
      Field.whole("seen_bad", "Of which bad", Units.RATIO, 0, 20_000).ifKnown();

  public static final Field<Figure<Sheets>> INCLUDED = sheets("included", "In the price");

  public static final Field<Figure<Sheets>> BILLED = sheets("billed", "Billed besides");

  public static final Field<Figure<Sheets>> CREDITED = sheets("credited", "Given back");

  public static final Field<Choice<String>> COVERING = Field.line("covering", "Covering").ifKnown();

  public static final Field<Figure<Time>> HOURS =
      Field.number("hours", "Hours of work", Units.HOUR, 0, 20_000).ifKnown();

  public static final Field<Figure<Ratio>> VISITS =
      Field.whole("visits", "Visits", Units.RATIO, 0, 1_000).ifKnown();

  public static final Field<Figure<Money>> DISPUTED =
      Field.number("disputed", "Disputed", Units.USD, 0, 10_000_000).ifKnown();

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

  public static final Field<Choice<String>> ON = Field.date("on", "Called on");

  public static final Field<Choice<String>> SHEET = Field.name("sheet", "Place").ifKnown();

  public static final Field<Choice<Was>> WAS =
      Field.word("was", "What it was", Was.class).ifKnown();

  public static final Field<Figure<Money>> COST =
      Field.number("cost_usd", "What it cost", Units.USD, 0, 1_000_000).ifKnown();

  /** Somebody who called back each. */
  public static final List<Field<?>> CALLBACKS =
      List.of(JOB, ON, SHEET, WAS, COST, MarkFields.CAUSE);

  private FirmFields() {}

  private static Field<Figure<Sheets>> sheets(String name, String label) {
    return Field.number(name, label, Units.SHEET, 0, 20_000).ifKnown();
  }
}
