package sheathwright.sheathing.panel;

import sheathwright.catalog.Column;
import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.YesNo;

/**
 * Whether a cut piece of panel may lie where it is meant to.
 *
 * @param spans whole spans that it crosses with bearing at both ends
 * @param wideEnough whether it is as wide as the span table wants
 * @param twoSpans whether it crosses at least two spans
 * @param longEnough whether it is as long as is asked for
 * @param ok whether it may lie there
 */
public record PieceFit(
    @Column("spans") Figure<Ratio> spans,
    @Column("wide_enough") Choice<YesNo> wideEnough,
    @Column("two_spans") Choice<YesNo> twoSpans,
    @Column("long_enough") Choice<YesNo> longEnough,
    @Column("ok") Choice<YesNo> ok) {}
