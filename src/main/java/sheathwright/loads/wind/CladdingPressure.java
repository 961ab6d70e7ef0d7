package sheathwright.loads.wind;

import sheathwright.catalog.Column;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Pressure;
import sheathwright.figure.Quantity.StrengthPressure;

/**
 * Wind on one zone of a roof, all positive.
 *
 * @param outwardStrength away from the roof, strength level
 * @param inwardStrength onto the roof, strength level
 * @param outward away from the roof, allowable level
 * @param inward onto the roof, allowable level
 */
public record CladdingPressure(
    @Column(value = "outward_strength_psf", unit = "psf strength")
        Figure<StrengthPressure> outwardStrength,
    @Column(value = "inward_strength_psf", unit = "psf strength")
        Figure<StrengthPressure> inwardStrength,
    @Column("outward_psf") Figure<Pressure> outward,
    @Column("inward_psf") Figure<Pressure> inward) {

  @Override
  public String toString() {
    return "outward %s, inward %s, at ASD level".formatted(outward, inward);
  }
}
