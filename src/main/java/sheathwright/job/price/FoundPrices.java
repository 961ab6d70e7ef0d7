package sheathwright.job.price;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Money;
import sheathwright.figure.Quantity.Nails;
import sheathwright.figure.Quantity.Per;
import sheathwright.figure.Quantity.Pieces;
import sheathwright.figure.Quantity.Sheets;
import sheathwright.figure.Quantity.Time;
import sheathwright.figure.Source;
import sheathwright.figure.Unit;
import sheathwright.figure.Units;
import sheathwright.job.table.Facts;
import sheathwright.job.table.Field;
import sheathwright.pricing.FootMaterial;
import sheathwright.pricing.FootPrice;
import sheathwright.pricing.PieceMaterial;
import sheathwright.pricing.PiecePrice;
import sheathwright.pricing.Rates;
import sheathwright.pricing.UnitPrices;

/** The prices of what may be found besides bad sheets, as far as a job's tables make them. */
public final class FoundPrices {

  private static final Source RULE = Source.COMMON_PRACTICE;
  private static final Figure<Sheets> SHEET = Figure.of(1, Units.SHEET);
  private static final Figure<Pieces> PIECE = Figure.of(1, Units.PIECE);

  /** In sheet metal over a hole. */
  public static final Figure<Per<Nails, Pieces>> COVER_NAILS =
      Figure.constant("nails_of_a_cover", 8, Units.NAILS_PER_PIECE, RULE);

  /** In a scab. */
  public static final Figure<Per<Nails, Pieces>> SCAB_NAILS =
      Figure.constant("nails_of_a_scab", 10, Units.NAILS_PER_PIECE, RULE);

  /** In a foot of blocking. */
  public static final Figure<Per<Nails, Length>> BLOCK_NAILS =
      Figure.constant("nails_of_a_foot_of_block", 2, Units.NAILS_PER_FOOT, RULE);

  /** In a board at each rafter. */
  private static final Figure<Nails> BOARD_NAILS =
      Figure.constant("nails_of_a_board_at_a_rafter", 2, Units.NAIL, RULE);

  private static final Figure<Quantity.Ratio> WHOLE = Figure.of(1, Units.RATIO);
  private static final Figure<Per<Nails, Length>> NO_NAILS = Figure.of(0, Units.NAILS_PER_FOOT);
  private static final Figure<Per<Nails, Pieces>> NO_NAIL = Figure.of(0, Units.NAILS_PER_PIECE);
  private static final Figure<Quantity.Ratio> SCABS_OF_A_STICK = Figure.of(2, Units.RATIO);
  private static final Figure<Length> STICK =
      Figure.constant("stick_of_blocks_ft", Lumber.BLOCK_FEET, Units.FOOT, RULE);
  private static final Figure<Per<Money, Pieces>> NOTHING = Figure.of(0, Units.USD_PER_PIECE);
  private static final Figure<Per<Money, Length>> NOTHING_BOUGHT = Figure.of(0, Units.USD_PER_FOOT);

  private final Facts prices;
  private final Facts rates;
  private final Lumber lumber;
  private final PriceSteps steps;
  private final Rates office;
  private final Figure<Per<Nails, Sheets>> nailsInASheet;
  private final Figure<Length> spacing;

  /**
   * The prices of a job.
   *
   * @param prices its price book
   * @param rates what it reckons with
   * @param lumber the sticks on sale
   * @param steps what prices go up to
   * @param office what it charges by
   * @param nailsInASheet by the schedule
   * @param spacing of the rafters
   */
  public FoundPrices(
      Facts prices,
      Facts rates,
      Lumber lumber,
      PriceSteps steps,
      Rates office,
      Figure<Per<Nails, Sheets>> nailsInASheet,
      Figure<Length> spacing) {
    this.prices = prices;
    this.rates = rates;
    this.lumber = lumber;
    this.steps = steps;
    this.office = office;
    this.nailsInASheet = nailsInASheet;
    this.spacing = spacing;
  }

  /** Every price that the tables make. */
  public List<FoundPrice> all() {
    List<FoundPrice> all = new ArrayList<>();
    for (FoundUnit unit : FoundUnit.values()) {
      of(unit).ifPresent(all::add);
    }
    return all;
  }

  /** The price of one unit; nothing where the tables do not make it, which is not a price of $0. */
  public Optional<FoundPrice> of(FoundUnit unit) {
    boolean hasItsStick = !unit.takesAStick() || lumber.has(Lumber.BLOCK_SIZE, Lumber.BLOCK_FEET);
    boolean isMade =
        hasItsStick && unit.missingPrices(prices).isEmpty() && unit.missingRates(rates).isEmpty();
    return isMade ? Optional.of(made(unit)) : Optional.empty();
  }

  private FoundPrice made(FoundUnit unit) {
    Figure<Per<Money, Nails>> nail = prices.fact(OfficeFields.NAIL_PRICE);
    return switch (unit) {
      case REFASTEN ->
          piece(
              unit,
              PieceMaterial.piece(NOTHING).nails(rates.fact(FoundFields.REFASTEN_NAILS), nail),
              FoundFields.REFASTEN_HOURS);
      case RELIEF ->
          foot(
              unit,
              FootMaterial.foot(NOTHING_BOUGHT).nails(NO_NAILS, nail),
              FoundFields.RELIEF_HOURS);
      case BLOCK ->
          foot(
              unit,
              FootMaterial.foot(
                      lumber
                          .blockStick()
                          .times(PIECE)
                          .dividedBy(STICK)
                          .as("foot_of_block_usd", Units.USD_PER_FOOT))
                  .nails(BLOCK_NAILS, prices.fact(OfficeFields.SISTER_NAIL_PRICE)),
              FoundFields.BLOCK_HOURS);
      case SCAB ->
          piece(
              unit,
              PieceMaterial.piece(
                      lumber
                          .blockStick()
                          .dividedBy(SCABS_OF_A_STICK)
                          .as("stick_of_a_scab_usd", Units.USD_PER_PIECE))
                  .nails(SCAB_NAILS, prices.fact(OfficeFields.SISTER_NAIL_PRICE)),
              FoundFields.SCAB_HOURS);
      case CLIP ->
          piece(
              unit,
              PieceMaterial.piece(prices.fact(FoundFields.CLIP)).nails(NO_NAIL, nail),
              FoundFields.CLIP_HOURS);
      case LIFT ->
          piece(
              unit,
              PieceMaterial.piece(NOTHING)
                  .nails(
                      nailsInASheet
                          .times(SHEET)
                          .dividedBy(PIECE)
                          .as("nails_of_a_lifted_sheet", Units.NAILS_PER_PIECE),
                      nail),
              FoundFields.LIFT_HOURS);
      case COVER ->
          piece(
              unit,
              PieceMaterial.piece(prices.fact(FoundFields.COVER_METAL)).nails(COVER_NAILS, nail),
              FoundFields.COVER_HOURS);
      case BOARD ->
          foot(
              unit,
              FootMaterial.foot(
                      prices
                          .fact(FoundFields.BOARD)
                          .times(WHOLE.plus(rates.fact(OfficeFields.WASTE)))
                          .as("foot_of_board_usd", Units.USD_PER_FOOT))
                  .nails(boardNails(spacing), nail),
              FoundFields.BOARD_HOURS);
      case RENAIL ->
          foot(
              unit,
              FootMaterial.foot(NOTHING_BOUGHT).nails(boardNails(spacing), nail),
              FoundFields.RENAIL_HOURS);
    };
  }

  /** In a foot of board, over rafters that stand so far apart. */
  public static Figure<Per<Nails, Length>> boardNails(Figure<Length> spacing) {
    return BOARD_NAILS.dividedBy(spacing).as("nails_of_a_foot_of_board", Units.NAILS_PER_FOOT);
  }

  private FoundPrice piece(
      FoundUnit unit, PieceMaterial material, Field<Figure<Per<Time, Pieces>>> hours) {
    PiecePrice price = UnitPrices.pieceUnitPrice(material, rates.fact(hours), office);
    return named(
        unit, Units.USD_PER_PIECE, price.direct(), price.exact(), steps.ofAPiece(price.exact()));
  }

  private FoundPrice foot(
      FoundUnit unit, FootMaterial material, Field<Figure<Per<Time, Length>>> hours) {
    FootPrice price = UnitPrices.footUnitPrice(material, rates.fact(hours), office, steps.foot());
    return named(unit, Units.USD_PER_FOOT, price.direct(), price.exact(), price.quoted());
  }

  private static <Q extends Quantity> FoundPrice named(
      FoundUnit unit, Unit<Q> each, Figure<Q> direct, Figure<Q> exact, Figure<Q> quoted) {
    String name = unit.word();
    return new FoundPrice(
        unit,
        direct.as(name + "_direct_usd", each),
        exact.as(name + "_exact_usd", each),
        quoted.as(name + "_quoted_usd", each));
  }
}
