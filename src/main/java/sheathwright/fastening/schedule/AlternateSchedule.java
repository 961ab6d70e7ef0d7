package sheathwright.fastening.schedule;

import sheathwright.catalog.Column;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Length;

/**
 * Staples or thin nails of a roof panel.
 *
 * @param length least length of the fastener
 * @param edge spacing on panel edges and gable-end framing
 * @param field spacing on the supports between
 */
public record AlternateSchedule(
    @Column("length_in") Figure<Length> length,
    @Column("edge_spacing_in") Figure<Length> edge,
    @Column("field_spacing_in") Figure<Length> field) {}
