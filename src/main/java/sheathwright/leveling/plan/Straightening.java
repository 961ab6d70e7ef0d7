package sheathwright.leveling.plan;

import java.util.Comparator;
import java.util.List;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.leveling.string.RafterStation;
import sheathwright.leveling.string.StringReadings;
import sheathwright.leveling.target.TargetRules;
import sheathwright.wood.LumberSize;

/** Straightening rafters in few words, as at a prompt: the usual rules, a line over each rafter. */
public final class Straightening {

  private Straightening() {}

  /**
   * What it takes to bring each rafter to a straight line, with the trade's usual rules.
   *
   * <p>The first and the last station of the rafters are taken for their bearings. The rules, a
   * plane as target and bounds are for {@link Straightened#of}.
   *
   * @param readings of one plane
   * @param sisterSize nominal size of the sisters
   * @param rafterSize nominal size of the old rafters
   * @param framingRatio the greatest part used up of what the old rafters can carry, from {@code
   *     rafter_screening}; above 1 a licensed engineer decides before anything is done
   */
  public static Straightened straighten(
      StringReadings readings,
      LumberSize sisterSize,
      LumberSize rafterSize,
      Figure<Ratio> framingRatio) {
    List<Figure<Length>> places =
        readings.profiles().stream()
            .flatMap(profile -> profile.stations().stream())
            .map(RafterStation::up)
            .sorted(Comparator.comparingDouble(up -> up.in(sheathwright.figure.Units.INCH).value()))
            .toList();
    return Straightened.of(
        readings,
        TargetRules.usual(),
        places.get(0),
        places.get(places.size() - 1),
        LevelRules.usual(sisterSize, rafterSize),
        FramingAnswer.of(framingRatio));
  }

  /** What the crew does, rafter by rafter; who decides stands first. */
  public static RepairList repairList(Straightened straightened) {
    return RepairList.of(straightened.plan());
  }
}
