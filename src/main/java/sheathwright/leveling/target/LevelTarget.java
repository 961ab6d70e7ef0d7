package sheathwright.leveling.target;

import java.util.List;
import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Roll;

/**
 * A new surface over readings, as solved figures.
 *
 * @param buildUps of each reading, in the order of the readings
 * @param readings a line for each: reading, x_in, y_in, z_in, build_up_in
 * @param total of all build-ups
 * @param largest of them
 * @param status {@code optimal}
 */
public record LevelTarget(
    List<Figure<Length>> buildUps,
    Roll readings,
    Figure<Length> total,
    Figure<Length> largest,
    Choice<String> status) {

  @Override
  public String toString() {
    return "total %s, largest %s, %s".formatted(total, largest, status.value());
  }
}
