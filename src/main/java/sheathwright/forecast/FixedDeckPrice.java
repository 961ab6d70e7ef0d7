package sheathwright.forecast;

import sheathwright.catalog.Column;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Money;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Quantity.Sheets;

/**
 * One price for all bad sheets, however many there are.
 *
 * @param sheets that the price is made for
 * @param fixed what they cost the firm
 * @param left what is left of it on average, or lacking
 * @param loss how likely it is that there are more sheets than the price was made for
 */
public record FixedDeckPrice(
    @Column(value = "sheets", unit = "sheet") Figure<Sheets> sheets,
    @Column("fixed_usd") Figure<Money> fixed,
    @Column("mean_left_usd") Figure<Money> left,
    @Column("chance_of_loss") Figure<Ratio> loss) {}
