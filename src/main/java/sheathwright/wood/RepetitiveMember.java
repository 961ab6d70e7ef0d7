package sheathwright.wood;

import sheathwright.figure.Figure;
import sheathwright.figure.Limits;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Source;
import sheathwright.figure.Units;

/** One of many like members under a deck, which carries more because its neighbors help. */
public final class RepetitiveMember {

  public static final Source NDS_2018 = Source.secondHand("NDS 2018");

  /** The range of a spacing, wherever one is a column. */
  public static final double LEAST_SPACING_IN = 4;

  public static final double MOST_SPACING_IN = 48;
  public static final String SPACING_RULE = "center to center; 16 and 24 are usual";

  private static final Figure<Ratio> REPETITIVE =
      Figure.constant("repetitive_member_factor", 1.15, Units.RATIO, NDS_2018.at("4.3.9"))
          .symbol("1.15");
  private static final Figure<Ratio> ALONE = Figure.of(1, Units.RATIO);
  private static final Figure<Length> REPETITIVE_SPACING =
      Figure.constant("repetitive_spacing_in", 24, Units.INCH, NDS_2018.at("4.3.9"))
          .symbol("24 in");

  private RepetitiveMember() {}

  /** Center to center, 4 in to 48 in. */
  public static Figure<Length> spacing(Figure<Length> spacing) {
    return spacing
        .within(
            "spacing_in",
            Units.INCH,
            Limits.between(LEAST_SPACING_IN, MOST_SPACING_IN, SPACING_RULE))
        .symbol("s");
  }

  /** 1.15 where a deck joins members that stand no more than 24 in apart. */
  public static Figure<Ratio> factor(Figure<Length> spacing) {
    return Figure.choose(spacing.isAtMost(REPETITIVE_SPACING), REPETITIVE, ALONE)
        .as("repetitive_factor", Units.RATIO, NDS_2018.at("4.3.9"))
        .symbol("C_r");
  }
}
