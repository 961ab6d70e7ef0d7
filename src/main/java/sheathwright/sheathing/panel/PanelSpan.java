package sheathwright.sheathing.panel;

import sheathwright.catalog.Column;
import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Pressure;
import sheathwright.figure.YesNo;

/**
 * What a stamped panel is allowed.
 *
 * @param maxSpan center to center of the supports, in inches
 * @param live live load left at the spacing asked for, in psf; none beyond the span
 * @param ok whether the spacing is within the span and some live load is left
 * @param countedAs the printed rating that the answer goes by
 */
public record PanelSpan(
    @Column("max_span_in") Figure<Length> maxSpan,
    @Column("live_psf") Figure<Pressure> live,
    @Column("ok") Choice<YesNo> ok,
    @Column("counted_as") Choice<SpanRating> countedAs) {}
