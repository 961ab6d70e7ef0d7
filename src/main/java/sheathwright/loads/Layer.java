package sheathwright.loads;

import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.OneOf;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Pressure;
import sheathwright.figure.Quantity.Ratio;

/**
 * One thing that a roof is built up of.
 *
 * @param material what it is
 * @param layers how many of it lie one on the other
 * @param thickness of one of them; 0 for a material that goes by the layer
 * @param load what they weigh together, on the slope
 */
public record Layer(
    Choice<RoofMaterial> material,
    Figure<Ratio> layers,
    Figure<Length> thickness,
    Figure<Pressure> load) {

  /** So many layers of a material, weighed by the table. */
  public static Layer of(
      OneOf<RoofMaterial> material, Figure<Ratio> layers, Figure<Length> thickness) {
    return new Layer(
        material.choice(), layers, thickness, DeadLoads.layerLoad(material, layers, thickness));
  }
}
