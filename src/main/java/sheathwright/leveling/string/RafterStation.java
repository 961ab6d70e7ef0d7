package sheathwright.leveling.string;

import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Length;

/**
 * One station on a rafter, with what is told of it: the drop below the string, or the build-up from
 * the wood to the target.
 *
 * @param up from the eave up the slope
 * @param amount low positive, high negative
 */
public record RafterStation(Figure<Length> up, Figure<Length> amount) {}
