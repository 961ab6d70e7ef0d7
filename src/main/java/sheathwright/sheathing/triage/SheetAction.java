package sheathwright.sheathing.triage;

import sheathwright.catalog.Column;
import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Ratio;

/**
 * What is done about a sheet, and why.
 *
 * @param action replace, cover, support, relieve, refasten, dry, lift, watch or stop
 * @param reason a sentence with what was measured and its limit
 * @param also the other tests that speak, the first that would decide first
 * @param measured how many of the nine tests that measure had something to go by
 */
public record SheetAction(
    @Column("action") Choice<String> action,
    @Column("reason") Choice<String> reason,
    @Column("also") Choice<String> also,
    @Column("measured") Figure<Ratio> measured) {}
