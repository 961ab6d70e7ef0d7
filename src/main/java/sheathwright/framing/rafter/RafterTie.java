package sheathwright.framing.rafter;

import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.Option;
import sheathwright.figure.Quantity.Force;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.LineForce;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Source;
import sheathwright.figure.Table;
import sheathwright.figure.Units;
import sheathwright.published.Published;

/** What keeps a pair of rafters from pushing the walls apart, and how high it stands. */
final class RafterTie {

  private static final Table FACTORS =
      Published.table("irc/2015-2024/rafter-tie-height.csv", "tie_height", "rafter tie heights", 1);
  static final Source RIGHT_TRIANGLE = Source.derived("right triangle");
  private static final Source FRAME = Source.derived("three-hinged frame");
  private static final Figure<Ratio> ONE = Figure.of(1, Units.RATIO);
  private static final Figure<Ratio> TWO = Figure.of(2, Units.RATIO);
  private static final Figure<Ratio> LEAST = part("seven_and_a_half", 7.5, "7.5");
  private static final Figure<Ratio> SIXTH = part("six", 6, "6");
  private static final Figure<Ratio> FIFTH = part("five", 5, "5");
  private static final Figure<Ratio> FOURTH = part("four", 4, "4");
  private static final Figure<Ratio> THIRD = part("three", 3, "3");

  private final Figure<Length> span;
  private final Figure<Ratio> rise;
  private final Figure<Length> height;
  private final Figure<Length> ridge;
  private final Figure<Ratio> slopeFactor;
  private final Figure<Ratio> partAbove;

  /** Up to which part of the ridge's height a tie stands. */
  enum Height implements Option<Height> {
    TO_LEAST("to-1/7.5"),
    TO_SIXTH("to-1/6"),
    TO_FIFTH("to-1/5"),
    TO_FOURTH("to-1/4"),
    TO_THIRD("to-1/3");

    private final String word;

    Height(String word) {
      this.word = word;
    }

    @Override
    public String word() {
      return word;
    }
  }

  /**
   * The tie of one pair.
   *
   * @param span of one rafter, as the formulas are to write it
   * @param triangle that rafter, plate and tie make
   */
  RafterTie(Figure<Length> span, RoofTriangle triangle) {
    this.span = span;
    rise = triangle.rise();
    slopeFactor =
        ONE.plus(rise.in(Units.RATIO).squared())
            .squareRoot()
            .as("slope_factor", Units.RATIO, RIGHT_TRIANGLE);
    ridge = span.times(rise).as("ridge_height_in", Units.INCH).symbol("H_R");
    var told = triangle.tieHeight();
    height =
        told.onlyIf(
                THIRD.times(told).isAtMost(ridge),
                "the rafter ties are above the lower third of the roof, where the code's factors"
                    + " stop; a licensed engineer decides")
            .as("counted_tie_height_in", Units.INCH, FACTORS.source())
            .symbol("H_C");
    partAbove =
        ONE.minus(height.dividedBy(ridge))
            .as("part_above_the_tie", Units.RATIO, FRAME)
            .symbol("(1 − H_C/H_R)");
  }

  /** What spans are multiplied by. */
  Figure<Ratio> spanFactor() {
    var third = upTo(FOURTH, Height.TO_FOURTH, Choice.literal(Height.TO_THIRD));
    var fourth = upTo(FIFTH, Height.TO_FIFTH, third);
    var fifth = upTo(SIXTH, Height.TO_SIXTH, fourth);
    var tie = upTo(LEAST, Height.TO_LEAST, fifth);
    return FACTORS
        .number(Units.RATIO, "factor", tie)
        .as("tie_span_factor", Units.RATIO, FACTORS.source());
  }

  /** w L ÷ (2 tan θ (1 − H_C ÷ H_R)): what the tie of one pair holds. */
  Figure<Force> thrust(Figure<LineForce> load) {
    return load.times(span)
        .dividedBy(TWO.times(rise))
        .dividedBy(partAbove)
        .as("thrust_lb", Units.POUND, FRAME);
  }

  /** How much of the ridge's height stands above the tie. */
  Figure<Ratio> partAbove() {
    return partAbove;
  }

  /** The rafter along its slope. */
  Figure<Length> alongTheSlope() {
    return span.times(slopeFactor()).as("rafter_length_in", Units.INCH, RIGHT_TRIANGLE);
  }

  /** What a length on the projection is multiplied by, to be one along the slope. */
  Figure<Ratio> slopeFactor() {
    return slopeFactor;
  }

  /** sin θ of the slope. */
  Figure<Ratio> slopeSine() {
    return rise.in(Units.RATIO)
        .dividedBy(slopeFactor)
        .as("slope_sine", Units.RATIO, RIGHT_TRIANGLE)
        .symbol("sin θ");
  }

  private Choice<Height> upTo(Figure<Ratio> part, Height word, Choice<Height> above) {
    return Choice.choose(part.times(height).isAtMost(ridge), word, above)
        .as("tie_" + part.name() + "_or_above");
  }

  private static Figure<Ratio> part(String name, double number, String print) {
    return Figure.constant(name, number, Units.RATIO, FACTORS.source()).symbol(print);
  }
}
