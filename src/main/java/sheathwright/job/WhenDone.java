package sheathwright.job;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Roll;
import sheathwright.figure.Units;
import sheathwright.job.life.LifeFields;
import sheathwright.job.table.Row;
import sheathwright.leveling.plan.Straightened.Standing;

/**
 * A rafter that was read again when the work was done: how far below the string it lies there, and
 * how far it was meant to.
 *
 * @param plane it is in
 * @param rafter by its name
 * @param meant below the string, by what is done to it
 * @param read below the string, with the blocks taken off
 */
public record WhenDone(
    Choice<String> plane, Choice<String> rafter, Figure<Length> meant, Figure<Length> read) {

  private static final Figure<Length> STRING = Figure.of(0, Units.INCH);

  /** Those of a job, in the order of its readings. */
  public static List<WhenDone> of(Estimate estimate) {
    List<WhenDone> done = new ArrayList<>();
    List<Row> rows = estimate.job().readings();
    for (int i = 0; i < rows.size(); i++) {
      Row row = rows.get(i);
      if (row.has(LifeFields.WHEN_DONE) && estimate.rafterLeveling().isPresent()) {
        done.add(
            new WhenDone(
                row.of(PlaceFields.PLANE),
                row.of(PlaceFields.RAFTER),
                meant(estimate.rafterLeveling().get(), row, i),
                row.of(LifeFields.WHEN_DONE).in(Units.INCH)));
      }
    }
    return done;
  }

  private static Figure<Length> meant(Leveling leveling, Row row, int line) {
    return leveling
        .atMiddle()
        .map(middle -> below(middle.readings(), line))
        .orElseGet(() -> standing(leveling.survey().orElseThrow(), row).below());
  }

  private static Figure<Length> below(Roll readings, int line) {
    Figure<?> above = (Figure<?>) readings.cellsOf("after_in").get(line);
    return STRING.minus(above.in(Units.INCH)).as("below_when_done_in", Units.INCH);
  }

  private static Standing standing(Survey survey, Row row) {
    return survey.planes().stream()
        .filter(plane -> plane.name().equals(row.of(PlaceFields.PLANE).value()))
        .flatMap(plane -> plane.straightened().standings().stream())
        .filter(each -> each.rafter().value().equals(row.of(PlaceFields.RAFTER).value()))
        .filter(each -> each.up().value() == row.of(PlaceFields.UP).value())
        .findFirst()
        .orElseThrow();
  }

  /** How much further below the string it lies than it was meant to. */
  public Figure<Length> apart() {
    return read.minus(meant).as("apart_in", Units.INCH);
  }

  /** All of them as a list; nothing where none was read again. */
  public static Optional<Roll> roll(List<WhenDone> done) {
    return done.isEmpty()
        ? Optional.empty()
        : Optional.of(
            Roll.of(
                "rafters_when_done",
                "the rafters as they lie when the work is done",
                done,
                Roll.<WhenDone>column("plane", WhenDone::plane),
                Roll.column("rafter", WhenDone::rafter),
                Roll.column("meant_in", WhenDone::meant),
                Roll.column("read_in", WhenDone::read),
                Roll.column("apart_in", WhenDone::apart)));
  }
}
