package sheathwright.wood;

import sheathwright.figure.Figure;
import sheathwright.figure.Limits;
import sheathwright.figure.OneOf;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Source;
import sheathwright.figure.Table;
import sheathwright.figure.Units;
import sheathwright.published.Published;

/**
 * What the equations of the wood design specification share: its sources, the arguments of
 * fasteners, and the duration of loads. What is from memory says so wherever it is used.
 */
public final class Nds {

  /** Clauses known from somebody else's copy. */
  public static final Source COPIED = Source.secondHand("NDS 2018");

  /** Clauses known to exist, their numbers from memory. */
  public static final Source REMEMBERED = Source.fromMemory("NDS 2018");

  /** The range of a specific gravity, wherever one is a column. */
  public static final double LEAST_GRAVITY = 0.2;

  public static final double MOST_GRAVITY = 0.8;
  public static final String GRAVITY_RULE = "spruce-pine-fir has 0.42, OSB 0.50";

  /** The range of the diameter of a nail's shank, wherever one is a column. */
  public static final double LEAST_NAIL_IN = 0.05;

  public static final double MOST_NAIL_IN = 0.24;
  public static final String NAIL_RULE = "an 8d common has 0.131, a 10d common 0.148";

  private static final Table LOAD_DURATION =
      Published.table("nds/2018/load-duration.csv", "load_duration", "load duration factors", 1);

  private Nds() {}

  /** C_D of the shortest load in a combination, under that name. */
  public static Figure<Ratio> loadDuration(String name, OneOf<?> shortest) {
    return LOAD_DURATION.number(Units.RATIO, "cd", shortest).as(name, Units.RATIO).symbol("C_D");
  }

  /** Specific gravity of the wood, under a column of that name, 0.2 to 0.8. */
  public static Figure<Ratio> gravity(String column, Figure<Ratio> gravity) {
    return gravity.within(
        column, Units.RATIO, Limits.between(LEAST_GRAVITY, MOST_GRAVITY, GRAVITY_RULE));
  }

  /** Diameter of a nail's shank, 0.05 in to 0.24 in. */
  public static Figure<Length> nailDiameter(Figure<Length> diameter) {
    return diameter
        .within("diameter_in", Units.INCH, Limits.between(LEAST_NAIL_IN, MOST_NAIL_IN, NAIL_RULE))
        .symbol("D");
  }

  /** An exponent or another pure number of an equation, written as in print. */
  public static Figure<Ratio> number(String name, double number, String print, Source source) {
    return Figure.constant(name, number, Units.RATIO, source).symbol(print);
  }
}
