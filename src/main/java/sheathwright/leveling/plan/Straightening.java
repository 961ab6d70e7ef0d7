package sheathwright.leveling.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import sheathwright.figure.Figure;
import sheathwright.figure.Lengths;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.RefusedException;
import sheathwright.figure.Units;
import sheathwright.leveling.string.RafterStation;
import sheathwright.leveling.string.StringReading;
import sheathwright.leveling.string.StringReadings;
import sheathwright.leveling.string.SuspicionRules;
import sheathwright.leveling.target.TargetRules;
import sheathwright.wood.LumberSize;

/** Straightening rafters in few words, as at a prompt: the usual rules, a line over each rafter. */
public final class Straightening {

  /** Two at the blocks and one between. */
  private static final int LEAST_DROPS = 3;

  private static final String PLANE = "S";

  private Straightening() {}

  /**
   * The drops below a string over each rafter of one plane, as they are read out: a rafter a text,
   * from the eave up, the first and the last at the string's blocks and the others evenly between.
   *
   * @param spacing of the rafters, center to center, the first at the plane's left edge
   * @param length from block to block
   * @param drops of each rafter, such as {@code "0 3/8 7/8 1/2 0"}; low wood positive
   * @throws RefusedException if a rafter has fewer than 3 drops, or one that cannot be read
   */
  public static StringReadings stringLines(
      Figure<Length> spacing, Figure<Length> length, String... drops) {
    List<StringReading> readings = new ArrayList<>();
    for (int rafter = 0; rafter < drops.length; rafter++) {
      String[] each = drops[rafter].strip().split("\\s+");
      if (each.length < LEAST_DROPS) {
        throw new RefusedException(
            "rafter %s is \"%s\"; a string line has 3 drops or more, the first and the last at its blocks: \"0 3/8 7/8 1/2 0\""
                .formatted(rafter + 1, drops[rafter]));
      }
      for (int station = 0; station < each.length; station++) {
        Figure<Ratio> share = Figure.of((double) station / (each.length - 1), Units.RATIO);
        readings.add(
            StringReading.ofDrop(
                String.valueOf(rafter + 1),
                spacing.times(Figure.of(rafter, Units.RATIO)).in(Units.INCH),
                length.times(share).in(Units.INCH),
                Figure.of(Lengths.inches(each[station]), Units.INCH)));
      }
    }
    return StringReadings.of(PLANE, readings, SuspicionRules.usual());
  }

  /**
   * What it takes to bring each rafter to a straight line, with the trade's usual rules.
   *
   * <p>The first and the last station of the rafters are taken for their bearings. The rules, a
   * plane as target and bounds are for {@link Straightened#of}.
   *
   * @param readings of one plane
   * @param sisters nominal size of the sisters
   * @param rafters nominal size of the old rafters
   * @param used the greatest part used up of what the old rafters can carry, from {@code
   *     rafter_screening}; above 1 a licensed engineer decides before anything is done
   */
  public static Straightened straighten(
      StringReadings readings, LumberSize sisters, LumberSize rafters, Figure<Ratio> used) {
    List<Figure<Length>> places =
        readings.profiles().stream()
            .flatMap(profile -> profile.stations().stream())
            .map(RafterStation::up)
            .sorted(Comparator.comparingDouble(up -> up.in(Units.INCH).value()))
            .toList();
    return Straightened.of(
        readings,
        TargetRules.usual(),
        places.get(0),
        places.get(places.size() - 1),
        LevelRules.usual(sisters, rafters),
        FramingAnswer.of(used));
  }

  /** What the crew does, rafter by rafter; who decides stands first. */
  public static RepairList repairList(Straightened straightened) {
    return RepairList.of(straightened.plan());
  }
}
