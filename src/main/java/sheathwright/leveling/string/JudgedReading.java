package sheathwright.leveling.string;

import sheathwright.figure.Choice;
import sheathwright.figure.Condition;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Solution;
import sheathwright.figure.Source;
import sheathwright.figure.Units;
import sheathwright.figure.YesNo;

/**
 * A reading and what its neighbors say to it. It is kept whatever they say.
 *
 * @param reading itself
 * @param expected what they say that the drop should be
 * @param departure of the drop from that
 * @param doubt how many times more than between two neighbors that answer is to be doubted
 * @param spread by which half of the readings round it depart, for each time of doubt
 * @param beside the greatest drop or rise of the readings beside it
 * @param usual departure allowed between two neighbors
 * @param allowed departure before it is suspected
 * @param suspect whether it is to be read again
 */
public record JudgedReading(
    StringReading reading,
    Figure<Length> expected,
    Figure<Length> departure,
    Figure<Ratio> doubt,
    Figure<Length> spread,
    Figure<Length> beside,
    Figure<Length> usual,
    Figure<Length> allowed,
    Choice<YesNo> suspect) {

  private static final Source NEIGHBORS =
      Source.derived("straight line through the readings on either side, along or across");

  static JudgedReading of(
      StringReading reading,
      Neighbors neighbors,
      Neighbors.Spot spot,
      SuspicionRules rules,
      Solution solution) {
    Figure<Length> drop = reading.drop();
    Figure<Length> expected =
        solution.figure("expected_in", neighbors.expected(spot), Units.INCH, NEIGHBORS);
    Figure<Ratio> doubt = solution.figure("doubt", neighbors.doubt(spot), Units.RATIO, NEIGHBORS);
    Figure<Length> spread =
        solution.figure("spread_in", neighbors.spread(spot), Units.INCH, NEIGHBORS);
    Figure<Length> beside =
        solution.figure("beside_in", neighbors.beside(spot), Units.INCH, NEIGHBORS);
    Figure<Length> departure = drop.minus(expected).as("departure_in", Units.INCH);
    Figure<Length> usual =
        rules.multiple().times(spread).in(Units.INCH).max(rules.floor()).as("usual_in", Units.INCH);
    Figure<Length> allowed =
        doubt
            .times(usual)
            .in(Units.INCH)
            .max(rules.part().times(beside).in(Units.INCH))
            .as("allowed_in", Units.INCH);
    Choice<YesNo> suspect =
        Condition.any(departure.isMoreThan(allowed), expected.minus(drop).isMoreThan(allowed))
            .as("suspect");
    return new JudgedReading(
        reading, expected, departure, doubt, spread, beside, usual, allowed, suspect);
  }

  /** Whether it is to be read again. */
  public boolean isSuspect() {
    return suspect.value() == YesNo.YES;
  }

  /** Both numbers, for whoever climbs up again. */
  @Override
  public String toString() {
    return "rafter %s at %s: %s below the string%s"
        .formatted(
            reading.rafter(),
            reading.up(),
            reading.drop(),
            isSuspect() ? ", its neighbors say %s: recheck it".formatted(expected) : "");
  }
}
