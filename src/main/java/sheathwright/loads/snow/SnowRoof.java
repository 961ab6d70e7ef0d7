package sheathwright.loads.snow;

import sheathwright.catalog.Column;
import sheathwright.catalog.Columns;
import sheathwright.figure.Figure;
import sheathwright.figure.OneOf;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.YesNo;

/**
 * A roof as snow finds it.
 *
 * @param exposureFactor C_e, how much of the snow the wind leaves
 * @param thermalFactor C_t, how much of it the warmth of the house leaves
 * @param slippery whether snow slides off freely
 */
public record SnowRoof(
    @Column(
            value = "exposure_factor",
            least = 0.7,
            most = 1.2,
            rule = "1 for a partly sheltered roof in a town",
            symbol = "C_e")
        Figure<Ratio> exposureFactor,
    @Column(
            value = "thermal_factor",
            least = 0.85,
            most = 1.3,
            rule = "1.1 for a vented attic well insulated below",
            symbol = "C_t")
        Figure<Ratio> thermalFactor,
    @Column("slippery") OneOf<YesNo> slippery) {

  private static final Columns COLUMNS = Columns.of(SnowRoof.class);

  public SnowRoof {
    exposureFactor = COLUMNS.let("exposureFactor", exposureFactor);
    thermalFactor = COLUMNS.let("thermalFactor", thermalFactor);
    slippery = COLUMNS.let("slippery", slippery);
  }

  /** A roof that the wind reaches so far; its warmth and its surface are still to be said. */
  public static SnowRoof exposureFactor(Figure<Ratio> factor) {
    return new SnowRoof(factor, null, null);
  }

  public SnowRoof thermalFactor(Figure<Ratio> factor) {
    return new SnowRoof(exposureFactor, factor, slippery);
  }

  public SnowRoof slippery(OneOf<YesNo> slides) {
    return new SnowRoof(exposureFactor, thermalFactor, slides);
  }
}
