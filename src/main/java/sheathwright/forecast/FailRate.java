package sheathwright.forecast;

import sheathwright.catalog.Column;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Ratio;

/**
 * How often a kept sheet fails.
 *
 * @param rate as it was counted
 * @param atMost what it could be at most, with the confidence asked for
 */
public record FailRate(
    @Column("rate_pct") Figure<Ratio> rate, @Column("at_most_pct") Figure<Ratio> atMost) {}
