package sheathwright.loads.wind;

import sheathwright.catalog.Column;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Pressure;

/**
 * Wind on one zone of a roof, not under the code's least.
 *
 * @param uplift away from the roof, allowable level
 * @param inward onto the roof, allowable level
 */
public record SheathingUplift(
    @Column("uplift_psf") Figure<Pressure> uplift, @Column("inward_psf") Figure<Pressure> inward) {

  @Override
  public String toString() {
    return "uplift %s, inward %s, at ASD level".formatted(uplift, inward);
  }
}
