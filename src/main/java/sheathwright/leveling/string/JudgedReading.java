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
 * A reading and what its neighbours say to it. It is kept whatever they say.
 *
 * @param reading itself
 * @param expected what they say that the drop should be
 * @param departure of the drop from that
 * @param doubt how many times more than between two neighbours that answer is to be doubted
 * @param spread by which half of the readings round it depart, for each time of doubt
 * @param beside the greatest drop or rise of the readings beside it
 * @param usual departure allowed between two neighbours
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

  private static final Source NEIGHBOURS =
      Source.derived("straight line through the readings on either side, along or across");

  static JudgedReading of(
      StringReading reading,
      Neighbours neighbours,
      Neighbours.Spot spot,
      SuspicionRules rules,
      Solution solution) {
    Figure<Length> drop = reading.drop();
    Figure<Length> expected =
        solution.figure("expected_in", neighbours.expected(spot), Units.INCH, NEIGHBOURS);
    Figure<Ratio> doubt = solution.figure("doubt", neighbours.doubt(spot), Units.RATIO, NEIGHBOURS);
    Figure<Length> spread =
        solution.figure("spread_in", neighbours.spread(spot), Units.INCH, NEIGHBOURS);
    Figure<Length> beside =
        solution.figure("beside_in", neighbours.beside(spot), Units.INCH, NEIGHBOURS);
    Figure<Length> departure = drop.minus(expected).as("departure_in", Units.INCH);
    Figure<Length> usual =
        rules
            .multiple()
            .times(spread)
            .in(Units.INCH)
            .orIfMore(rules.floor())
            .as("usual_in", Units.INCH);
    Figure<Length> allowed =
        doubt
            .times(usual)
            .in(Units.INCH)
            .orIfMore(rules.part().times(beside).in(Units.INCH))
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
            isSuspect() ? ", its neighbours say %s: read it again".formatted(expected) : "");
  }
}
