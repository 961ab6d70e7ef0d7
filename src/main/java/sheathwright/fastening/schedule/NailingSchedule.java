package sheathwright.fastening.schedule;

import sheathwright.catalog.Column;
import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Ratio;

/**
 * The code's nailing of a roof panel.
 *
 * @param edge spacing on panel edges
 * @param field spacing on the supports between
 * @param nearEdges spacing on supports within 48 in of roof edges and ridges
 * @param gable spacing on gable-end framing
 * @param item number of the row in the code's table
 * @param reason why it is so
 * @param windDesign whether the house may have to be designed for wind
 */
public record NailingSchedule(
    @Column("edge_spacing_in") Figure<Length> edge,
    @Column("field_spacing_in") Figure<Length> field,
    @Column("near_edges_spacing_in") Figure<Length> nearEdges,
    @Column("gable_spacing_in") Figure<Length> gable,
    @Column("item") Figure<Ratio> item,
    @Column("reason") Choice<NailingReason> reason,
    @Column("wind_design") Choice<WindDesign> windDesign) {}
