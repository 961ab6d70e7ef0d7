package sheathwright.leveling.string;

import java.util.List;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Reading;
import sheathwright.figure.Source;
import sheathwright.figure.Units;

/**
 * How far a deck may depart from a straightedge of some length. Whoever uses the tool chooses the
 * limit; there is no code for it.
 *
 * @param what it is, in words
 * @param window length of the straightedge
 * @param allowed departure, low or high
 */
public record FlatnessLimit(String what, Figure<Length> window, Figure<Length> allowed) {

  private static final Source SPECIFICATIONS =
      Source.fromMemory("common in specifications of metal panels; as the default our suggestion");
  private static final Source MAKER =
      Source.read("a metal-roof maker's bulletin on irregular wood substrates, 2018");
  private static final Source ENGINEER =
      Source.fromMemory("a sag that is large or moves is for an engineer: about 1 in in 8 ft");

  /** A quarter of an inch in 10 ft: the default. */
  public static List<FlatnessLimit> usual() {
    return List.of(of("1/4 in in 10 ft", 10, 0.25, SPECIFICATIONS));
  }

  /** An eighth in 10 ft and a quarter in 20 ft: the strict choice, for flat metal pans. */
  public static List<FlatnessLimit> strict() {
    return List.of(of("1/8 in in 10 ft", 10, 0.125, MAKER), of("1/4 in in 20 ft", 20, 0.25, MAKER));
  }

  /** An inch in 8 ft: beyond it a licensed engineer decides before any leveling. */
  public static FlatnessLimit engineer() {
    return of("1 in in 8 ft, where an engineer decides", 8, 1, ENGINEER);
  }

  private static FlatnessLimit of(String what, double feet, double inches, Source source) {
    return new FlatnessLimit(
        what,
        Figure.constant("window_of_%s_ft".formatted((int) feet), feet, Units.FOOT, source),
        Figure.constant("allowed_in_%s_ft_in".formatted((int) feet), inches, Units.INCH, source));
  }

  /** The length of the straightedge in inches, read. */
  double window(Reading reading) {
    return reading.number("the window of " + what, window, Units.INCH);
  }
}
