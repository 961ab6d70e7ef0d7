package sheathwright.job.price;

import java.util.List;
import java.util.stream.Stream;
import sheathwright.figure.Word;
import sheathwright.job.table.Facts;
import sheathwright.job.table.Field;

/** What may be found besides bad sheets, each with what its price is made of. */
public enum FoundUnit implements Word {
  REFASTEN(
      "A sheet refastened",
      "sheet",
      List.of(),
      List.of(FoundFields.REFASTEN_NAILS, FoundFields.REFASTEN_HOURS),
      List.of()),
  RELIEF("A tight joint sawn open", "ft", List.of(), List.of(FoundFields.RELIEF_HOURS), List.of()),
  BLOCK(
      "A bare edge blocked",
      "ft",
      List.of(),
      List.of(FoundFields.BLOCK_HOURS),
      List.of(OfficeFields.SISTER_NAIL_PRICE)),
  SCAB(
      "A scab of 48 in under an end",
      "piece",
      List.of(),
      List.of(FoundFields.SCAB_HOURS),
      List.of(OfficeFields.SISTER_NAIL_PRICE)),
  CLIP(
      "A panel clip",
      "piece",
      List.of(FoundFields.CLIP),
      List.of(FoundFields.CLIP_HOURS),
      List.of()),
  LIFT(
      "A sheet lifted and laid again",
      "sheet",
      List.of(),
      List.of(FoundFields.LIFT_HOURS),
      List.of()),
  COVER(
      "A hole covered with sheet metal",
      "piece",
      List.of(FoundFields.COVER_METAL),
      List.of(FoundFields.COVER_HOURS),
      List.of()),
  BOARD(
      "Deck board taken out and replaced",
      "foot of board",
      List.of(FoundFields.BOARD),
      List.of(FoundFields.BOARD_HOURS),
      List.of()),
  RENAIL(
      "Deck board nailed again",
      "foot of board",
      List.of(),
      List.of(FoundFields.RENAIL_HOURS),
      List.of());

  private final String label;
  private final String each;
  private final List<Field<?>> prices;
  private final List<Field<?>> rates;
  private final List<Field<?>> sharedPrices;

  FoundUnit(
      String label,
      String each,
      List<Field<?>> prices,
      List<Field<?>> rates,
      List<Field<?>> sharedPrices) {
    this.label = label;
    this.each = each;
    this.prices = prices;
    this.rates = rates;
    this.sharedPrices = sharedPrices;
  }

  /** What it is, as a line of a quote. */
  public String label() {
    return label;
  }

  /** What its price is for one of. */
  public String each() {
    return each;
  }

  /** Whether a job begins to price it: some of what belongs to it alone is given. */
  public boolean isBegun(Facts priceBook, Facts rateBook) {
    return prices.stream().anyMatch(priceBook::knows) || rates.stream().anyMatch(rateBook::knows);
  }

  /** Whether it is cut from a stick. */
  public boolean takesAStick() {
    return this == BLOCK || this == SCAB;
  }

  /** What of the price book its price still wants. */
  public List<Field<?>> missingPrices(Facts priceBook) {
    return Stream.concat(prices.stream(), sharedPrices.stream())
        .<Field<?>>filter(field -> !priceBook.knows(field))
        .toList();
  }

  /** What of the rates its price still wants. */
  public List<Field<?>> missingRates(Facts rateBook) {
    return rates.stream().<Field<?>>filter(field -> !rateBook.knows(field)).toList();
  }
}
