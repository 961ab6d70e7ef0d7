package sheathwright.life.bill;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Per;
import sheathwright.figure.Quantity.Pieces;
import sheathwright.figure.Quantity.Time;
import sheathwright.figure.Units;
import sheathwright.job.Job;
import sheathwright.job.life.Item;
import sheathwright.job.price.FoundFields;
import sheathwright.job.price.OfficeFields;
import sheathwright.job.table.Facts;
import sheathwright.job.table.Field;

/** How many hours of work one of each item takes, as far as the office's rates say. */
public final class ItemHours {

  private static final Map<Item, Rate<?>> RATES =
      Map.ofEntries(
          Map.entry(
              Item.SHEET, new Rate<>(OfficeFields.EXTRA_SHEET_HOURS, Figure.of(1, Units.SHEET))),
          Map.entry(Item.REFASTEN, piece(FoundFields.REFASTEN_HOURS)),
          Map.entry(Item.RELIEF, foot(FoundFields.RELIEF_HOURS)),
          Map.entry(Item.BLOCK, foot(FoundFields.BLOCK_HOURS)),
          Map.entry(Item.SCAB, piece(FoundFields.SCAB_HOURS)),
          Map.entry(Item.CLIP, piece(FoundFields.CLIP_HOURS)),
          Map.entry(Item.LIFT, piece(FoundFields.LIFT_HOURS)),
          Map.entry(Item.COVER, piece(FoundFields.COVER_HOURS)),
          Map.entry(Item.BOARD, foot(FoundFields.BOARD_HOURS)),
          Map.entry(Item.RENAIL, foot(FoundFields.RENAIL_HOURS)),
          Map.entry(Item.SISTER, piece(OfficeFields.SISTER_HOURS)),
          Map.entry(Item.SHIM, piece(OfficeFields.SHIM_HOURS)));

  /**
   * Where the hours of an item stand.
   *
   * @param field in the rates
   * @param one of what they are for
   */
  private record Rate<Q extends Quantity>(Field<Figure<Per<Time, Q>>> field, Figure<Q> one) {

    Optional<Figure<Time>> in(Facts rates) {
      return rates.knows(field)
          ? Optional.of(rates.fact(field).times(one).in(Units.HOUR))
          : Optional.empty();
    }
  }

  private final Facts rates;

  private ItemHours(Facts rates) {
    this.rates = rates;
  }

  /** The hours that a job's rates say. */
  public static ItemHours of(Job job) {
    return new ItemHours(job.rateBook());
  }

  /** The key of the rate that says the hours of an item. */
  public static String key(Item item) {
    return RATES.get(item).field().name();
  }

  private static Rate<?> piece(Field<Figure<Per<Time, Pieces>>> field) {
    return new Rate<>(field, Figure.of(1, Units.PIECE));
  }

  private static Rate<?> foot(Field<Figure<Per<Time, Length>>> field) {
    return new Rate<>(field, Figure.of(1, Units.FOOT));
  }

  /** The work of one; nothing where the rates do not say. */
  public Optional<Figure<Time>> each(Item item) {
    return RATES
        .get(item)
        .in(rates)
        .map(hours -> hours.as("hours_of_a_" + item.word() + "_h", Units.HOUR));
  }

  /** The work of what the next order asks for; nothing if the rates leave out any of it. */
  Optional<Figure<Time>> of(List<ItemAccount> items) {
    Figure<Time> all = Figure.of(0, Units.HOUR);
    for (ItemAccount item : items) {
      Optional<Figure<Time>> each = each(item.item());
      if (each.isEmpty()) {
        return Optional.empty();
      }
      all = all.plus(item.now().times(each.get()));
    }
    return Optional.of(all.as("work_more_h", Units.HOUR));
  }
}
