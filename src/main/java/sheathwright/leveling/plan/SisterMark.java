package sheathwright.leveling.plan;

import java.util.List;
import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Roll;

/**
 * One mark of the crew's on a sister: how far the old rafter's top lies below the sister's there.
 *
 * @param rafter that the sister goes beside
 * @param along from the sister's lower end
 * @param up from the eave up the slope
 * @param drop between the two tops, negative where the old rafter is the higher
 * @param marked the same to the nearest step of the tape
 */
public record SisterMark(
    String rafter,
    Figure<Length> along,
    Figure<Length> up,
    Figure<Length> drop,
    Figure<Length> marked) {

  static Roll roll(String plane, List<SisterMark> marks) {
    return Roll.of(
        "sister_marks_of_" + plane,
        "the marks on the sisters",
        marks,
        Roll.<SisterMark>column("rafter", mark -> Choice.literal(mark.rafter())),
        Roll.column("along_ft", SisterMark::along),
        Roll.column("up_in", SisterMark::up),
        Roll.column("drop_in", SisterMark::drop),
        Roll.column("mark_in", SisterMark::marked));
  }

  @Override
  public String toString() {
    return "%s along: %s".formatted(along, marked);
  }
}
