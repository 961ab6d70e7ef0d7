package sheathwright.life.bill;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import sheathwright.figure.Condition;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Money;
import sheathwright.figure.Quantity.Ratio;

/**
 * What may be done before anybody says yes, so that an open roof is not left in the rain.
 *
 * @param sheets up to so many over all; none, if the agreement does not speak of sheets
 * @param sum up to so much over all; none, if it does not speak of a sum
 */
public record PreAgreed(Optional<Figure<Ratio>> sheets, Optional<Figure<Money>> sum) {

  /** Whether so much, with everything that was done so before, stays within it. */
  public Condition covers(Figure<Ratio> allSheets, Figure<Money> allMoney) {
    List<Condition> within = new ArrayList<>();
    sheets.map(allSheets::isAtMost).ifPresent(within::add);
    sum.map(allMoney::isAtMost).ifPresent(within::add);
    return Condition.all(within.toArray(Condition[]::new));
  }
}
