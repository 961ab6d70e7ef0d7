package sheathwright.job.price;

import java.util.List;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Area;
import sheathwright.figure.Quantity.Money;
import sheathwright.figure.Quantity.Per;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Quantity.Sheets;
import sheathwright.figure.Quantity.Time;
import sheathwright.figure.Units;
import sheathwright.job.table.Field;

/** What an office reckons with while a roof lies open: work in a day, rain, what fails later. */
public final class OpenFields {

  public static final Field<Figure<Per<Time, Area>>> SQUARE_HOURS =
      Field.number(
              "hours_per_square",
              "Labor of a square, from tear-off to dry-in",
              Units.HOURS_PER_SQUARE,
              0.05,
              100)
          .ifKnown();

  public static final Field<Figure<Money>> LOST_DAY =
      Field.number("lost_day_usd", "A day on which nothing is opened", Units.USD, 0, 100_000)
          .ifKnown();

  public static final Field<Figure<Money>> RAIN_DAMAGE =
      Field.number("rain_damage_usd", "Rain into a wholly open roof", Units.USD, 1, 10_000_000)
          .ifKnown();

  public static final Field<Figure<Per<Time, Sheets>>> REDECK_HOURS =
      Field.number("redeck_sheet_h", "A sheet of a whole new deck", Units.HOURS_PER_SHEET, 0, 40)
          .ifKnown();

  public static final Field<Figure<Ratio>> FAIL =
      Field.number("fail_pct", "Kept sheets that fail later", Units.PERCENT, 0, 100).ifKnown();

  public static final Field<Figure<Money>> FAIL_COST =
      Field.number("fail_usd", "What a failed sheet costs then", Units.USD, 0, 100_000).ifKnown();

  /** Keys of the table of rates. */
  public static final List<Field<?>> RATES =
      List.of(SQUARE_HOURS, LOST_DAY, RAIN_DAMAGE, REDECK_HOURS, FAIL, FAIL_COST);

  private OpenFields() {}
}
