package sheathwright.pricing;

import sheathwright.catalog.Column;
import sheathwright.catalog.Columns;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity;
import sheathwright.figure.Quantity.Money;
import sheathwright.figure.Quantity.Per;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Quantity.Time;
import sheathwright.figure.Source;
import sheathwright.figure.Units;

/**
 * What an office charges by: the same for every price that it makes.
 *
 * @param tax sales tax on material
 * @param labor one hour with its burden
 * @param overhead on direct cost
 * @param margin share of the price that is kept
 */
public record Rates(
    @Column(value = "tax_pct", least = 0, most = 30, rule = "write 6.5 for 6.5 %")
        Figure<Ratio> tax,
    @Column(
            value = "labor_usd_per_h",
            least = 0,
            most = 500,
            rule = "with taxes and insurance",
            symbol = "wage")
        Figure<Per<Money, Time>> labor,
    @Column(
            value = "overhead_pct",
            least = 0,
            most = 200,
            rule = "on direct cost; write 18 for 18 %")
        Figure<Ratio> overhead,
    @Column(value = "margin_pct", least = 0, most = 90, rule = "of the price; write 12 for 12 %")
        Figure<Ratio> margin) {

  private static final Columns COLUMNS = Columns.of(Rates.class);
  private static final Figure<Ratio> ONE = Figure.of(1, Units.RATIO);

  public Rates {
    tax = COLUMNS.let("tax", tax);
    labor = COLUMNS.let("labor", labor);
    overhead = COLUMNS.let("overhead", overhead);
    margin = COLUMNS.let("margin", margin);
  }

  /** An hour at this price; tax, overhead and margin are still to be said. */
  public static Rates labor(Figure<Per<Money, Time>> hour) {
    return new Rates(null, hour, null, null);
  }

  public Rates tax(Figure<Ratio> share) {
    return new Rates(share, labor, overhead, margin);
  }

  public Rates overhead(Figure<Ratio> share) {
    return new Rates(tax, labor, share, margin);
  }

  public Rates margin(Figure<Ratio> share) {
    return new Rates(tax, labor, overhead, share);
  }

  /** Material with its tax. */
  <Q extends Quantity> Figure<Q> taxed(Figure<Q> material) {
    return material.times(ONE.plus(tax)).in(material.unit());
  }

  /** What something sells for that costs so much. */
  <Q extends Quantity> Figure<Q> sellingPrice(Figure<Q> direct) {
    return direct
        .times(ONE.plus(overhead))
        .dividedBy(ONE.minus(margin))
        .as("exact_usd", direct.unit(), Source.COMMON_PRACTICE);
  }
}
