package sheathwright.cutting.stick;

import java.util.List;
import sheathwright.cutting.program.Certificate;

/**
 * Which sticks to buy and how to cut them.
 *
 * @param sticks every stick, equal ones one after another
 * @param cost of all sticks, in the order's money unit
 * @param atLeast no plan for the same order costs less than this
 * @param certificate proves without any search what every plan costs at least; that may be less
 *     than {@code atLeast}
 */
public record StickPlan(List<CutStick> sticks, long cost, long atLeast, Certificate certificate) {

  public StickPlan {
    sticks = List.copyOf(sticks);
  }

  /** Whether no cheaper plan exists. */
  public boolean isProven() {
    return cost == atLeast;
  }
}
