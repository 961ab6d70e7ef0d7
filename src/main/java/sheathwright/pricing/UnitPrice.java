package sheathwright.pricing;

import sheathwright.catalog.Column;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Money;
import sheathwright.figure.Quantity.Per;
import sheathwright.figure.Quantity.Sheets;

/**
 * What one sheet costs and sells for.
 *
 * @param direct material with waste and tax, labor, and disposal
 * @param exact with overhead and margin
 * @param quoted up to a whole dollar
 */
public record UnitPrice(
    @Column(value = "direct_usd", unit = "$/sheet") Figure<Per<Money, Sheets>> direct,
    @Column(value = "exact_usd", unit = "$/sheet") Figure<Per<Money, Sheets>> exact,
    @Column(value = "quoted_usd", unit = "$/sheet") Figure<Per<Money, Sheets>> quoted) {}
