package sheathwright.life.firm;

import java.util.Optional;
import sheathwright.figure.Unit;
import sheathwright.figure.Units;

/** What a season's summary says of each job. */
public enum SeasonColumn {
  STAGE("Stage"),
  TOTAL_USD("Total", Units.USD, true),
  WORST_USD("At worst", Units.USD, true),
  INCLUDED("In the price", Units.RATIO, true),
  P50_SHEETS("Bad, in half", Units.RATIO, false),
  P80_SHEETS("in 8 of 10", Units.RATIO, false),
  P95_SHEETS("in 19 of 20", Units.RATIO, false),
  FOUND("Found", Units.RATIO, true),
  BILLED("Billed besides", Units.RATIO, true),
  APPROVED_USD("Orders approved", Units.USD, true),
  UNPAID_STAGE("Next payment"),
  UNPAID_USD("Unpaid", Units.USD, true),
  PRICE_UNTIL("Price good until"),
  NOW_USD("By today's prices", Units.USD, false),
  DAYS("Days", Units.RATIO, false),
  SHEETS("Sheets to buy", Units.RATIO, true);

  private final String label;
  private final Optional<Unit<?>> unit;
  private final boolean isSummed;

  SeasonColumn(String label) {
    this.label = label;
    this.unit = Optional.empty();
    this.isSummed = false;
  }

  SeasonColumn(String label, Unit<?> unit, boolean isSummed) {
    this.label = label;
    this.unit = Optional.of(unit);
    this.isSummed = isSummed;
  }

  /** Its heading in a table. */
  public String word() {
    return name().toLowerCase(java.util.Locale.ROOT);
  }

  /** Its heading on a page. */
  public String label() {
    return label;
  }

  /** What its numbers are in; nothing where it holds words. */
  public Optional<Unit<?>> unit() {
    return unit;
  }

  /** Whether every job says it, and its sum says something. */
  public boolean isSummed() {
    return isSummed;
  }
}
