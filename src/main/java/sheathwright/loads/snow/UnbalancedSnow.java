package sheathwright.loads.snow;

import sheathwright.catalog.Column;
import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Density;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Pressure;

/**
 * Snow that the wind has carried over the ridge, on the horizontal projection.
 *
 * @param windward all over the slope that the wind meets
 * @param leeward all over the slope behind the ridge
 * @param surcharge on top of it, from the ridge down
 * @param surchargeWidth how far down from the ridge, measured on the horizontal projection
 * @param driftHeight of the drift that the surcharge stands for, whichever case holds
 * @param snowDensity of drifted snow
 * @param unbalanced which case holds
 */
public record UnbalancedSnow(
    @Column("windward_psf") Figure<Pressure> windward,
    @Column("leeward_psf") Figure<Pressure> leeward,
    @Column("drift_surcharge_psf") Figure<Pressure> surcharge,
    @Column("drift_width_ft") Figure<Length> surchargeWidth,
    @Column("drift_height_ft") Figure<Length> driftHeight,
    @Column("snow_density_pcf") Figure<Density> snowDensity,
    @Column("unbalanced_case") Choice<UnbalancedCase> unbalanced) {}
