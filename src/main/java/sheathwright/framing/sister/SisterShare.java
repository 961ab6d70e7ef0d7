package sheathwright.framing.sister;

import sheathwright.catalog.Column;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Ratio;

/**
 * How a rafter and its sister share the load that both carry.
 *
 * @param rafter the old rafter's part
 * @param sister the sister's part
 */
public record SisterShare(
    @Column("rafter_share") Figure<Ratio> rafter, @Column("sister_share") Figure<Ratio> sister) {}
