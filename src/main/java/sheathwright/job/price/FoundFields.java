package sheathwright.job.price;

import java.util.List;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Money;
import sheathwright.figure.Quantity.Nails;
import sheathwright.figure.Quantity.Per;
import sheathwright.figure.Quantity.Pieces;
import sheathwright.figure.Quantity.Time;
import sheathwright.figure.Units;
import sheathwright.job.table.Field;

/** What is asked to price what may be found besides bad sheets; each may be left out. */
public final class FoundFields {

  public static final Field<Figure<Per<Money, Pieces>>> COVER_METAL =
      Field.number("cover_metal", "Sheet metal over a hole", Units.USD_PER_PIECE, 0, 1_000)
          .ifKnown()
          .usually(0.5, 100);

  public static final Field<Figure<Per<Money, Pieces>>> CLIP =
      Field.number("clip", "Panel clip", Units.USD_PER_PIECE, 0, 1_000).ifKnown().usually(0.01, 10);

  public static final Field<Figure<Per<Money, Length>>> BOARD =
      Field.number("board_ft", "Deck board, a foot", Units.USD_PER_FOOT, 0, 1_000)
          .ifKnown()
          .usually(0.2, 50);

  public static final List<Field<?>> PRICES = List.of(COVER_METAL, CLIP, BOARD);

  public static final Field<Figure<Per<Nails, Pieces>>> REFASTEN_NAILS =
      Field.whole("refasten_nails", "Nails to refasten a sheet", Units.NAILS_PER_PIECE, 0, 500)
          .ifKnown();

  public static final Field<Figure<Per<Time, Pieces>>> REFASTEN_HOURS =
      hours("refasten_h", "Refasten a sheet");

  public static final Field<Figure<Per<Time, Length>>> RELIEF_HOURS =
      footHours("relief_ft_h", "Saw a foot of a tight joint");

  public static final Field<Figure<Per<Time, Length>>> BLOCK_HOURS =
      footHours("block_ft_h", "A foot of blocking");

  public static final Field<Figure<Per<Time, Pieces>>> SCAB_HOURS =
      hours("scab_h", "Scab of 48 in");

  public static final Field<Figure<Per<Time, Pieces>>> CLIP_HOURS = hours("clip_h", "Set a clip");

  public static final Field<Figure<Per<Time, Pieces>>> LIFT_HOURS =
      hours("lift_h", "Lift a sheet and lay it again");

  public static final Field<Figure<Per<Time, Pieces>>> COVER_HOURS =
      hours("cover_h", "Cover a hole with sheet metal");

  public static final Field<Figure<Per<Time, Length>>> BOARD_HOURS =
      footHours("board_ft_h", "A foot of board out and a new one in");

  public static final Field<Figure<Per<Time, Length>>> RENAIL_HOURS =
      footHours("renail_ft_h", "Nail a foot of board again");

  public static final Field<Figure<Per<Money, Pieces>>> ROUND =
      Field.number("round_usd", "Prices go up to the next", Units.USD_PER_PIECE, 0.01, 100)
          .ifKnown();

  public static final Field<Figure<Per<Money, Length>>> ROUND_FOOT =
      Field.number(
              "round_foot_usd",
              "Prices by the foot go up to the next",
              Units.USD_PER_FOOT,
              0.01,
              10)
          .ifKnown();

  public static final List<Field<?>> RATES =
      List.of(
          REFASTEN_NAILS,
          REFASTEN_HOURS,
          RELIEF_HOURS,
          BLOCK_HOURS,
          SCAB_HOURS,
          CLIP_HOURS,
          LIFT_HOURS,
          COVER_HOURS,
          BOARD_HOURS,
          RENAIL_HOURS,
          ROUND,
          ROUND_FOOT);

  private FoundFields() {}

  private static Field<Figure<Per<Time, Pieces>>> hours(String name, String label) {
    return Field.number(name, label, Units.HOURS_PER_PIECE, 0, 40).ifKnown();
  }

  private static Field<Figure<Per<Time, Length>>> footHours(String name, String label) {
    return Field.number(name, label, Units.HOURS_PER_FOOT, 0, 40).ifKnown();
  }
}
