package sheathwright.sheathing.board;

import sheathwright.catalog.Column;
import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.YesNo;

/**
 * How far deck boards may span.
 *
 * @param maxSpan center to center of the supports, in inches; none if the boards are too thin
 * @param ok whether the supports stand no further apart
 */
public record BoardSpan(
    @Column("max_span_in") Figure<Length> maxSpan, @Column("ok") Choice<YesNo> ok) {}
