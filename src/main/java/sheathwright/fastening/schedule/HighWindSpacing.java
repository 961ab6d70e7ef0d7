package sheathwright.fastening.schedule;

import sheathwright.catalog.Column;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Length;

/**
 * Nailing near the edges of a roof in high wind.
 *
 * @param edge spacing on panel edges
 * @param field spacing on the supports between
 */
public record HighWindSpacing(
    @Column("edge_spacing_in") Figure<Length> edge,
    @Column("field_spacing_in") Figure<Length> field) {}
