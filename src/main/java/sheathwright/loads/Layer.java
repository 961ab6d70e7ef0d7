package sheathwright.loads;

import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.OneOf;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Pressure;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Units;

/**
 * One thing that a roof is built up of.
 *
 * @param material what it is
 * @param layers how many of it lie one on the other
 * @param thickness of one of them; 0 for a material that goes by the layer
 * @param fate whether it stays, comes off or goes on
 * @param load what they weigh together, on the slope
 */
public record Layer(
    Choice<RoofMaterial> material,
    Figure<Ratio> layers,
    Figure<Length> thickness,
    Choice<LayerFate> fate,
    Figure<Pressure> load) {

  private static final Figure<Pressure> NONE = Figure.of(0, Units.PSF);

  /** So many layers of a material, weighed by the table; they stay. */
  public static Layer of(
      OneOf<RoofMaterial> material, Figure<Ratio> layers, Figure<Length> thickness) {
    return new Layer(
        material.choice(),
        layers,
        thickness,
        LayerFate.STAYS.choice(),
        DeadLoads.layerLoad(material, layers, thickness));
  }

  /** The same layers, of which something else becomes. */
  public Layer fate(OneOf<LayerFate> other) {
    return new Layer(material, layers, thickness, other.choice(), load);
  }

  /** What they weigh, if that becomes of them; nothing otherwise. */
  Figure<Pressure> loadIf(LayerFate becomes) {
    return Figure.choose(fate.is(becomes), load, NONE)
        .as(becomes.word().replace('-', '_') + "_psf", Units.PSF);
  }
}
