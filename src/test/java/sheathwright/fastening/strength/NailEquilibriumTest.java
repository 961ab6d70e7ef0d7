package sheathwright.fastening.strength;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.EnumMap;
import java.util.Map;
import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import sheathwright.fastening.strength.NailLaterals.LateralValue;
import sheathwright.figure.Amounts;

/**
 * The yield equations held against the statics that they were made from: a stiff nail, wood that
 * crushes at one pressure, and hinges that bend at one moment. Each mode's force is searched for
 * until the nail is in balance. Independent of the printed equations.
 */
class NailEquilibriumTest {

  private static final int NAILS = 3_000;

  private record Pinned(double side, double main, double ls, double lm, double hinge) {

    /** Moment about the joint of a part that turns without bending, under a force. */
    private static double turning(double force, double pressure, double length) {
      double forward = (length + force / pressure) / 2;
      return pressure * (forward * forward - length * length / 2);
    }

    /** Moment about the joint of a part that bends where the force is used up. */
    private double bending(double force, double pressure) {
      return force * force / pressure / 2 - hinge;
    }

    private static double balance(double most, DoubleUnaryOperator moment) {
      double low = 0;
      double high = most;
      for (int i = 0; i < 200; i++) {
        double middle = (low + high) / 2;
        if (moment.applyAsDouble(middle) < 0) {
          low = middle;
        } else {
          high = middle;
        }
      }
      return (low + high) / 2;
    }

    Map<YieldMode, Double> forces() {
      double most = 10 * (side * ls + main * lm);
      Map<YieldMode, Double> forces = new EnumMap<>(YieldMode.class);
      forces.put(YieldMode.IM, main * lm);
      forces.put(YieldMode.IS, side * ls);
      forces.put(YieldMode.II, balance(most, f -> turning(f, side, ls) + turning(f, main, lm)));
      forces.put(YieldMode.IIIM, balance(most, f -> bending(f, side) + turning(f, main, lm)));
      forces.put(YieldMode.IIIS, balance(most, f -> turning(f, side, ls) + bending(f, main)));
      forces.put(YieldMode.IV, balance(most, f -> bending(f, side) + bending(f, main)));
      return forces;
    }
  }

  @Test
  void nailLateral_isTheLeastForceInBalance() {
    Random random = new Random(1949);
    Map<YieldMode, Integer> seen = new EnumMap<>(YieldMode.class);
    for (int i = 0; i < NAILS; i++) {
      double d = random.nextDouble(0.05, 0.24);
      double side = random.nextDouble(0.25, 2);
      double length = side + d * random.nextDouble(6.001, 9);
      double sideGravity = random.nextDouble(0.2, 0.8);
      double mainGravity = random.nextDouble(0.2, 0.8);
      double fyb = random.nextDouble(30_000, 250_000);
      LateralValue found =
          NailLaterals.nailLateral(
              ShearNail.diameter(Amounts.in(d))
                  .length(Amounts.in(length))
                  .bendingYield(Amounts.psi(fyb)),
              SideMember.of(Amounts.in(side), Amounts.number(sideGravity)),
              Amounts.number(mainGravity));
      double reduction = d <= 0.17 ? 2.2 : 10 * d + 0.5;
      Map<YieldMode, Double> forces =
          new Pinned(
                  d * bearing(sideGravity),
                  d * bearing(mainGravity),
                  side,
                  length - side - d,
                  fyb * d * d * d / 6)
              .forces();
      double least = forces.values().stream().mapToDouble(force -> force).min().orElseThrow();
      assertThat(found.lateral().value() * reduction)
          .as("nail %d", i)
          .isCloseTo(least, within(1e-6 * least));
      YieldMode mode = found.mode().value();
      assertThat(forces.get(mode)).as("mode of nail %d", i).isCloseTo(least, within(1e-6 * least));
      seen.merge(mode, 1, Integer::sum);
    }
    assertThat(seen).containsKeys(YieldMode.IS, YieldMode.II, YieldMode.IIIM);
    assertThat(seen).containsKeys(YieldMode.IIIS, YieldMode.IV);
  }

  private static double bearing(double gravity) {
    return Math.round(16_600 * Math.pow(gravity, 1.84) / 50) * 50;
  }
}
