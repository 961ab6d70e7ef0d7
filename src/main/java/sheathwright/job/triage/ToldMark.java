package sheathwright.job.triage;

import java.util.Optional;
import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.YesNo;
import sheathwright.job.table.Row;
import sheathwright.sheathing.patch.Finding;

/**
 * A mark as it was told, and what is known of the framing under it.
 *
 * @param key what it is called
 * @param row what was measured of it
 * @param finding what was found
 * @param width of it, where it was measured
 * @param height of it, where it was measured
 * @param framingStops whether a report stops the framing under it
 * @param overBuildUp whether it lies over a rafter that is built up
 */
public record ToldMark(
    String key,
    Row row,
    Choice<Finding> finding,
    Optional<Figure<Length>> width,
    Optional<Figure<Length>> height,
    Choice<YesNo> framingStops,
    Choice<YesNo> overBuildUp) {}
