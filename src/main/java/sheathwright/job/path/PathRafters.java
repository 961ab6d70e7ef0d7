package sheathwright.job.path;

import sheathwright.figure.Condition;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Pressure;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.framing.rafter.RoofTriangle;
import sheathwright.wood.ServiceConditions;

/**
 * The rafters whose joints are looked at, as a job tells them.
 *
 * @param triangle from plate to ridge, with the tie
 * @param spacing center to center
 * @param thickness of a rafter, and of the ceiling joist that is nailed to it
 * @param gravity of the wood, by which nails hold
 * @param service how damp and how warm the wood is
 * @param load all of it, on the horizontal projection
 * @param isKnown whether somebody knows what they are, and does not only take it to be so
 */
public record PathRafters(
    RoofTriangle triangle,
    Figure<Length> spacing,
    Figure<Length> thickness,
    Figure<Ratio> gravity,
    ServiceConditions service,
    Figure<Pressure> load,
    Condition isKnown) {}
