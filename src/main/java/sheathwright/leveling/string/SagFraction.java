package sheathwright.leveling.string;

import sheathwright.catalog.Column;
import sheathwright.figure.Check;
import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.YesNo;

/**
 * A sag beside the span that it hangs in.
 *
 * @param spanOverSag the span divided by the sag: the 89 of L/89
 * @param limit the sag that the chosen fraction allows
 * @param sag what is there against what is allowed
 * @param ok whether it is within
 */
public record SagFraction(
    @Column("span_over_sag") Figure<Ratio> spanOverSag,
    @Column("sag_limit_in") Figure<Length> limit,
    @Column("sag_ratio") Check sag,
    @Column("ok") Choice<YesNo> ok) {}
