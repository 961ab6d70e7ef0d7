package sheathwright.roof;

import sheathwright.catalog.Column;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Area;
import sheathwright.figure.Quantity.Length;

/**
 * How large a plane is and how long its sides are, all along the wood.
 *
 * @param area of the deck, openings not taken off
 * @param ridge along the top
 * @param hip both hips together
 * @param valley both valleys together
 * @param rake both rakes together
 */
public record PlaneMeasures(
    @Column("area_sf") Figure<Area> area,
    @Column("ridge_ft") Figure<Length> ridge,
    @Column("hip_ft") Figure<Length> hip,
    @Column("valley_ft") Figure<Length> valley,
    @Column("rake_ft") Figure<Length> rake) {}
