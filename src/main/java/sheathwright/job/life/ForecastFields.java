package sheathwright.job.life;

import java.util.List;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Money;
import sheathwright.figure.Quantity.Per;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Quantity.Sheets;
import sheathwright.figure.Units;
import sheathwright.job.table.Field;

/** What an office says of the houses it works on, and how it prices what nobody has seen. */
public final class ForecastFields {

  /**
   * Below it the share of bad places is next to all or nothing, and integrating it takes minutes.
   */
  public static final double LEAST = 0.05;

  /** Above it houses differ no more than chance makes them. */
  public static final double MOST = 1e6;

  public static final Field<Figure<Ratio>> BAD_ALPHA =
      Field.number(
              "bad_alpha", "Weight of bad sheets (alpha), by solve fit", Units.RATIO, LEAST, MOST)
          .ifKnown();

  public static final Field<Figure<Ratio>> BAD_BETA =
      Field.number(
              "bad_beta", "Weight of sound sheets (beta), by solve fit", Units.RATIO, LEAST, MOST)
          .ifKnown();

  public static final Field<Figure<Per<Money, Sheets>>> NUISANCE =
      Field.number(
              "nuisance_usd",
              "What one surprise sheet is worth to an owner in delay and worry",
              Units.USD_PER_SHEET,
              0,
              10_000)
          .ifKnown();

  public static final Field<Figure<Ratio>> FIXED_SURE =
      Field.number(
              "fixed_deck_pct",
              "Houses in which a fixed price for the deck is enough",
              Units.PERCENT,
              50,
              99.9)
          .ifKnown();

  public static final Field<Figure<Money>> CEILING_CHARGE =
      Field.number(
              "ceiling_charge_usd",
              "Most that a ceiling may cost the firm on average",
              Units.USD,
              0,
              10_000)
          .ifKnown();

  /** Keys of the table of rates. */
  public static final List<Field<?>> RATES =
      List.of(BAD_ALPHA, BAD_BETA, NUISANCE, FIXED_SURE, CEILING_CHARGE);

  private ForecastFields() {}
}
