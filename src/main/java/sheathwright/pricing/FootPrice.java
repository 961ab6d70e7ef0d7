package sheathwright.pricing;

import sheathwright.catalog.Column;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Money;
import sheathwright.figure.Quantity.Per;

/**
 * What one foot of work costs and sells for.
 *
 * @param direct material with tax, and labor
 * @param exact with overhead and margin
 * @param quoted up to the next step of the price
 */
public record FootPrice(
    @Column(value = "direct_usd", unit = "$/ft") Figure<Per<Money, Length>> direct,
    @Column(value = "exact_usd", unit = "$/ft") Figure<Per<Money, Length>> exact,
    @Column(value = "quoted_usd", unit = "$/ft") Figure<Per<Money, Length>> quoted) {}
