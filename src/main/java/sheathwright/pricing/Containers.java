package sheathwright.pricing;

import sheathwright.catalog.Column;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Money;
import sheathwright.figure.Quantity.Pieces;

/**
 * Containers to order, and what they cost.
 *
 * @param containers the cheaper number of them
 * @param cost of those, with the tons above what they hold
 */
public record Containers(
    @Column(value = "containers", unit = "piece") Figure<Pieces> containers,
    @Column("cost_usd") Figure<Money> cost) {}
