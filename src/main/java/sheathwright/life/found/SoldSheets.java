package sheathwright.life.found;

import java.util.Optional;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity;
import sheathwright.figure.Quantity.Money;
import sheathwright.figure.Quantity.Per;
import sheathwright.figure.Quantity.Sheets;
import sheathwright.figure.Unit;
import sheathwright.figure.Units;
import sheathwright.job.Estimate;
import sheathwright.job.JobTable;
import sheathwright.job.life.AgreedFields;
import sheathwright.job.life.Item;
import sheathwright.job.life.TalkFields;
import sheathwright.job.price.FoundPrice;
import sheathwright.job.table.Field;
import sheathwright.job.table.Row;

/**
 * What is sold of sheets and of what else may be found: as the quote has it, and once it is agreed,
 * as it was agreed, whatever the job's tables say of prices since.
 */
public final class SoldSheets {

  private final Estimate estimate;

  public SoldSheets(Estimate estimate) {
    this.estimate = estimate;
  }

  private Optional<Row> row(Item item) {
    return AgreedFields.row(estimate.job().lines(JobTable.AGREED), item.word());
  }

  /** What was agreed of an item; a number that nobody changes any more. */
  private <Q extends Quantity> Optional<Figure<Q>> agreed(
      Item item, Field<? extends Figure<?>> field, Unit<Q> unit) {
    String name = "agreed_%s_%s".formatted(item.word(), field.name());
    return row(item)
        .flatMap(row -> row.read(field))
        .map(read -> Figure.constant(name, read.value(), unit, read.source()));
  }

  /** What both sides agreed of an item since. */
  private <Q extends Quantity> Optional<Figure<Q>> since(
      Item item, Field<? extends Figure<?>> field, Unit<Q> unit) {
    String name = "agreed_since_%s_%s".formatted(item.word(), field.name());
    return TalkFields.last(estimate.job().lines(JobTable.TALKS), item.word(), field)
        .map(read -> Figure.constant(name, read.value(), unit, read.source()));
  }

  /** In the price. */
  public Figure<Sheets> included() {
    return row(Item.SHEET).isEmpty()
        ? estimate.plannedSheets()
        : agreed(Item.SHEET, AgreedFields.INCLUDED, Units.SHEET).orElse(Figure.of(0, Units.SHEET));
  }

  /** No more than these are ever counted. */
  Figure<Sheets> most() {
    return since(Item.SHEET, AgreedFields.MOST, Units.SHEET)
        .or(() -> agreed(Item.SHEET, AgreedFields.MOST, Units.SHEET))
        .orElse(estimate.sheetsAtWorst());
  }

  /** One sheet more. */
  Figure<Per<Money, Sheets>> extraSheet() {
    return agreed(Item.SHEET, AgreedFields.USD, Units.USD_PER_SHEET)
        .orElse(estimate.quote().extraSheet());
  }

  /** What comes back for one that is not needed. */
  Figure<Per<Money, Sheets>> credit() {
    return row(Item.SHEET).isEmpty()
        ? estimate.quote().credit()
        : agreed(Item.SHEET, AgreedFields.CREDIT, Units.USD_PER_SHEET)
            .orElse(Figure.of(0, Units.USD_PER_SHEET));
  }

  /** One of what else may be found. */
  Figure<?> price(FoundPrice price) {
    return sold(Item.valueOf(price.unit().name()), price.quoted());
  }

  private <Q extends Quantity> Figure<Q> sold(Item item, Figure<Q> quoted) {
    return since(item, AgreedFields.USD, quoted.unit())
        .or(() -> agreed(item, AgreedFields.USD, quoted.unit()))
        .orElse(quoted);
  }
}
