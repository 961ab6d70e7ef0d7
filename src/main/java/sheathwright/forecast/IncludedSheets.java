package sheathwright.forecast;

import sheathwright.catalog.Column;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Quantity.Sheets;

/**
 * How many sheets to have in the price, and why.
 *
 * @param included that many
 * @param ratio the share of houses that should get by with them
 */
public record IncludedSheets(
    @Column(value = "included", unit = "sheet") Figure<Sheets> included,
    @Column("ratio") Figure<Ratio> ratio) {}
