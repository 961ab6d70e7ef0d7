package sheathwright.pricing;

import sheathwright.catalog.Column;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Money;
import sheathwright.figure.Quantity.Per;
import sheathwright.figure.Quantity.Pieces;

/**
 * What one piece of lumber costs to put in and sells for.
 *
 * @param direct material with tax, and labor
 * @param exact with overhead and margin
 * @param quoted up to a whole dollar
 */
public record PiecePrice(
    @Column(value = "direct_usd", unit = "$/piece") Figure<Per<Money, Pieces>> direct,
    @Column(value = "exact_usd", unit = "$/piece") Figure<Per<Money, Pieces>> exact,
    @Column(value = "quoted_usd", unit = "$/piece") Figure<Per<Money, Pieces>> quoted) {}
