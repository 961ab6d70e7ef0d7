package sheathwright.leveling.string;

import java.util.ArrayList;
import java.util.List;
import sheathwright.figure.Amounts;

/**
 * The invented sagging cottage: drops at mid-length of 15 rafters on each of two planes, 10 ft on
 * the flat at 8 in 12 from bearing to ridge.
 */
public final class TestCottage {

  static final double LENGTH = 120 * Math.hypot(12, 8) / 12;

  public static final double[] A = {
    0, 0.375, 0.625, 0.875, 1.125, 1.375, 1.5, 1.625, 1.5, 1.25, 1, 0.75, 0.5, 0.25, 0
  };
  public static final double[] B = {
    0, 0.25, 0.25, 0.5, 0.625, 0.75, 0.875, 0.75, 0.625, 0.5, 0.375, 0.25, 0.25, 0.125, 0
  };

  private TestCottage() {}

  /** Its rafters, read at mid-length and at both bearings, where the string touches. */
  public static List<LevelRafter> rafters(String plane, double[] drops) {
    List<LevelRafter> rafters = new ArrayList<>();
    for (int i = 0; i < drops.length; i++) {
      rafters.add(
          new LevelRafter(
              TestRafters.rafter(
                  plane + "-" + (i + 1),
                  24 * i,
                  new double[] {0, LENGTH / 2, LENGTH},
                  new double[] {0, drops[i], 0}),
              Amounts.in(0),
              Amounts.in(LENGTH)));
    }
    return rafters;
  }
}
