package sheathwright.forecast;

import sheathwright.catalog.Column;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Money;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Quantity.Sheets;

/**
 * What a promise costs never to bill more than so many sheets.
 *
 * @param chance that there are more
 * @param over how many more there are on average, none counted where there are fewer
 * @param charge what those cost the firm on average
 */
public record CeilingCharge(
    @Column("chance_over") Figure<Ratio> chance,
    @Column(value = "sheets_over", unit = "sheet") Figure<Sheets> over,
    @Column("charge_usd") Figure<Money> charge) {}
