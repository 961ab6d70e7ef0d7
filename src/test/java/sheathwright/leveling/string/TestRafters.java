package sheathwright.leveling.string;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleBinaryOperator;
import sheathwright.figure.Amounts;

/** Rafters for tests, named R1, R2 and so on from the left. */
public final class TestRafters {

  private TestRafters() {}

  public static RafterProfile rafter(
      String name, double center, double[] places, double[] amounts) {
    List<RafterStation> stations = new ArrayList<>();
    for (int i = 0; i < places.length; i++) {
      stations.add(new RafterStation(Amounts.in(places[i]), Amounts.in(amounts[i])));
    }
    return new RafterProfile(name, Amounts.in(center), stations);
  }

  static List<RafterProfile> grid(double[] centers, double[] places, DoubleBinaryOperator amount) {
    List<RafterProfile> rafters = new ArrayList<>();
    for (double center : centers) {
      double[] amounts = new double[places.length];
      for (int i = 0; i < places.length; i++) {
        amounts[i] = amount.applyAsDouble(center, places[i]);
      }
      rafters.add(rafter("R" + (rafters.size() + 1), center, places, amounts));
    }
    return rafters;
  }
}
