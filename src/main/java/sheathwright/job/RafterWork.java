package sheathwright.job;

import java.util.Optional;
import sheathwright.figure.Condition;
import sheathwright.figure.Figure;
import sheathwright.figure.Gather;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Money;
import sheathwright.figure.Quantity.Nails;
import sheathwright.figure.Quantity.Per;
import sheathwright.figure.Quantity.Pieces;
import sheathwright.figure.Roll;
import sheathwright.figure.Units;
import sheathwright.job.price.OfficeFields;
import sheathwright.job.table.Row;
import sheathwright.leveling.plan.SisterPlan;
import sheathwright.leveling.plan.Sisters;
import sheathwright.leveling.plan.Sisters.SisterStock;
import sheathwright.leveling.string.SaggedSpan;
import sheathwright.pricing.PieceMaterial;
import sheathwright.pricing.PiecePrice;
import sheathwright.pricing.UnitPrices;

/** What it takes to bring the job's rafters to the string line. */
final class RafterWork {

  private static final Figure<Pieces> ONE_RAFTER = Figure.of(1, Units.PIECE);
  private static final Figure<Length> AT_THE_STRING = Figure.of(0, Units.INCH);
  private static final Figure<Pieces> NO_RAFTER = Figure.of(0, Units.PIECE);

  private RafterWork() {}

  /** The leveling of a job that has string-line readings. */
  static Leveling of(Job job, Framing framing) {
    return job.surveysRafters() ? surveyed(job, framing) : atMiddle(job);
  }

  private static Leveling atMiddle(Job job) {
    Roll readings = readings(job);
    SisterStock stock = sisters(job, readings);
    return new Leveling(
        Optional.of(new Leveling.AtMiddle(readings, stock, job.fact(JobFields.SISTER_SPAN))),
        Optional.empty(),
        stock.pieces(),
        stock.nails(),
        readings.sum("shim", Units.PIECE).as("rafters_to_shim", Units.PIECE),
        named(
            job,
            "sister",
            sisterPrice(
                job,
                job.lumber()
                    .needed(
                        job.fact(JobFields.SISTER_SIZE),
                        stock.stock(),
                        "sister_stick_usd",
                        "for the sisters"),
                stock.nails(),
                stock.pieces())),
        named(job, "shim", shimPrice(job)));
  }

  private static Leveling surveyed(Job job, Framing framing) {
    Survey survey = new Survey(job, framing);
    Figure<Per<Money, Pieces>> stick =
        survey
            .sticks()
            .dividedBy(survey.sisters().max(ONE_RAFTER))
            .as("stick_of_a_sister_usd", Units.USD_PER_PIECE);
    return new Leveling(
        Optional.empty(),
        Optional.of(survey),
        survey.sisters(),
        survey.nails(),
        survey.shims(),
        named(job, "sister", sisterPrice(job, stick, survey.nails(), survey.sisters())),
        named(job, "shim", shimPrice(job)));
  }

  private static PiecePrice named(Job job, String what, PiecePrice price) {
    return new PiecePrice(
        price.direct().as(what + "_direct_usd", Units.USD_PER_PIECE),
        price.exact().as(what + "_exact_usd", Units.USD_PER_PIECE),
        job.priceSteps().ofAPiece(price.exact()).as(what + "_quoted_usd", Units.USD_PER_PIECE));
  }

  private static Roll readings(Job job) {
    Figure<Length> sister = job.fact(JobFields.SISTER_TOLERANCE);
    Figure<Length> shim = job.fact(JobFields.SHIM_TOLERANCE);
    return Roll.of(
        "readings",
        "the string-line readings",
        job.readings(),
        Row.column(PlaceFields.PLANE),
        Row.column(PlaceFields.RAFTER),
        Row.column(PlaceFields.DROP_AT_MIDDLE),
        Roll.column("sister", row -> countedIf(drop(row).isMoreThan(sister))),
        Roll.column(
            "shim",
            row ->
                countedIf(Condition.all(drop(row).isMoreThan(shim), drop(row).isAtMost(sister)))),
        Roll.column("before_in", row -> below(drop(row)).as("before_in", Units.INCH)),
        Roll.column(
            "after_in",
            row ->
                Figure.choose(drop(row).isMoreThan(shim), AT_THE_STRING, below(drop(row)))
                    .as("after_in", Units.INCH)));
  }

  private static Figure<Length> drop(Row row) {
    return row.of(PlaceFields.DROP_AT_MIDDLE);
  }

  private static Figure<Length> below(Figure<Length> drop) {
    return AT_THE_STRING.minus(drop);
  }

  private static Figure<Pieces> countedIf(Condition condition) {
    return Figure.choose(condition, ONE_RAFTER, NO_RAFTER);
  }

  private static SisterStock sisters(Job job, Roll readings) {
    Figure<Length> worst =
        readings
            .gathered(Gather.GREATEST, "drop_in", Units.INCH)
            .as("greatest_drop_in", Units.INCH);
    Figure<Pieces> count = readings.sum("sister", Units.PIECE).as("rafters_to_sister", Units.PIECE);
    SisterPlan plan =
        SisterPlan.size(job.fact(JobFields.SISTER_SIZE))
            .tolerance(job.fact(JobFields.SISTER_TOLERANCE))
            .lap(job.fact(JobFields.SISTER_LAP))
            .nailSpacing(job.fact(JobFields.SISTER_NAIL_SPACING))
            .nailRows(job.fact(JobFields.SISTER_NAIL_ROWS));
    return Sisters.sisterStock(
        SaggedSpan.sag(worst).span(job.fact(JobFields.SISTER_SPAN)), plan, count);
  }

  private static PiecePrice sisterPrice(
      Job job, Figure<Per<Money, Pieces>> stick, Figure<Nails> nails, Figure<Pieces> pieces) {
    return UnitPrices.pieceUnitPrice(
        PieceMaterial.piece(stick)
            .nails(
                nails
                    .dividedBy(pieces.max(ONE_RAFTER))
                    .as("nails_in_a_sister", Units.NAILS_PER_PIECE),
                job.price(OfficeFields.SISTER_NAIL_PRICE)),
        job.rate(OfficeFields.SISTER_HOURS),
        job.rates());
  }

  private static PiecePrice shimPrice(Job job) {
    return UnitPrices.pieceUnitPrice(
        PieceMaterial.piece(job.price(OfficeFields.SHIM_PRICE))
            .nails(Figure.of(0, Units.NAILS_PER_PIECE), job.price(OfficeFields.SISTER_NAIL_PRICE)),
        job.rate(OfficeFields.SHIM_HOURS),
        job.rates());
  }
}
