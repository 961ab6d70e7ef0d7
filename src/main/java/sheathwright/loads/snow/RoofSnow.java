package sheathwright.loads.snow;

import sheathwright.catalog.Column;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Pressure;

/**
 * Snow on a roof, on the horizontal projection, with no least load inside.
 *
 * @param flat if the roof were flat
 * @param sloped on its slope, the same everywhere
 */
public record RoofSnow(
    @Column("flat_psf") Figure<Pressure> flat, @Column("sloped_psf") Figure<Pressure> sloped) {}
