package sheathwright.sheathing.panel;

import sheathwright.catalog.Column;
import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Pieces;
import sheathwright.figure.YesNo;

/**
 * What supports the long edges of panels between the rafters.
 *
 * @param perBay clips on one edge between two supports
 * @param needed whether the span table wants the edges supported at this spacing
 * @param clips for all edges, whether needed or not
 * @param blocking in their place: feet of lumber between the rafters
 * @param countedAs the printed rating that the answer goes by
 */
public record EdgeClips(
    @Column(value = "clips_per_bay", unit = "piece") Figure<Pieces> perBay,
    @Column("needed") Choice<YesNo> needed,
    @Column(value = "clips", unit = "piece") Figure<Pieces> clips,
    @Column("blocking_ft") Figure<Length> blocking,
    @Column("counted_as") Choice<SpanRating> countedAs) {}
