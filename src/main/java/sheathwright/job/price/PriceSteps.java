package sheathwright.job.price;

import java.util.Optional;
import sheathwright.figure.Condition;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Money;
import sheathwright.figure.Quantity.Per;
import sheathwright.figure.Quantity.Pieces;
import sheathwright.figure.Quantity.Sheets;
import sheathwright.figure.Source;
import sheathwright.figure.Units;
import sheathwright.job.table.Facts;

/** What every price goes up to: the next step of the office, stated once. */
public final class PriceSteps {

  private static final Figure<Pieces> PIECE = Figure.of(1, Units.PIECE);
  private static final Figure<Sheets> SHEET = Figure.of(1, Units.SHEET);

  /** Where the office does not say; whoever holds the workbook may. */
  private static final Figure<Per<Money, Pieces>> A_DOLLAR =
      Figure.input(
          FoundFields.ROUND.name(),
          1,
          Units.USD_PER_PIECE,
          FoundFields.ROUND.limits(),
          Source.COMMON_PRACTICE);

  private static final Figure<Per<Money, Length>> FIVE_CENTS =
      Figure.constant("step_of_a_foot_usd", 0.05, Units.USD_PER_FOOT, Source.COMMON_PRACTICE);

  private final boolean isUsual;
  private final Figure<Per<Money, Pieces>> each;
  private final Figure<Per<Money, Sheets>> sheet;
  private final Figure<Per<Money, Length>> foot;

  /** The steps that the rates say, or the usual ones. */
  public PriceSteps(Facts rates) {
    isUsual = !rates.knows(FoundFields.ROUND);
    each = isUsual ? A_DOLLAR : rates.fact(FoundFields.ROUND);
    sheet = each.times(PIECE).dividedBy(SHEET).as("round_sheet_usd", Units.USD_PER_SHEET);
    foot = rates.knows(FoundFields.ROUND_FOOT) ? rates.fact(FoundFields.ROUND_FOOT) : FIVE_CENTS;
  }

  /** The step of prices by the piece where no rate says it, to stand beside the rates. */
  public Optional<Figure<Per<Money, Pieces>>> usual() {
    return isUsual ? Optional.of(each) : Optional.empty();
  }

  /** The price of a sheet, up to the next step. */
  public Figure<Per<Money, Sheets>> ofASheet(Figure<Per<Money, Sheets>> exact) {
    return upTo(exact, sheet);
  }

  /** The price of a piece, up to the next step. */
  public Figure<Per<Money, Pieces>> ofAPiece(Figure<Per<Money, Pieces>> exact) {
    return upTo(exact, each);
  }

  /** What prices by the foot go up to. */
  Figure<Per<Money, Length>> foot() {
    return foot;
  }

  private static <Q extends Quantity> Figure<Q> upTo(Figure<Q> exact, Figure<Q> step) {
    return exact.roundedUpTo(step).toCents();
  }

  /** Whether a price that is quoted is the exact one, up to its step. */
  @SuppressWarnings("unchecked") // the unit says of which quantity it is
  public Condition isKept(Figure<?> exact, Figure<?> quoted) {
    Figure<?> up =
        exact.unit().equals(Units.USD_PER_SHEET)
            ? ofASheet((Figure<Per<Money, Sheets>>) exact)
            : exact.unit().equals(Units.USD_PER_FOOT)
                ? upTo((Figure<Per<Money, Length>>) exact, foot)
                : ofAPiece((Figure<Per<Money, Pieces>>) exact);
    return up.isTheSameAs(quoted);
  }
}
