package sheathwright.forecast;

import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;
import org.apache.commons.math3.special.Beta;
import org.apache.commons.math3.util.CombinatoricsUtils;

/** How likely each count of bad sheets is, from none up: plain numbers for whoever solves. */
public final class Chances {

  /** A sum of chances that reaches a percentile, or a doubt, but for rounding has reached it. */
  static final double ROUNDING = 1e-12;

  private final double[] mass;

  private Chances(double[] mass) {
    this.mass = mass;
  }

  /** As many as are known, and no other number. */
  public static Chances known(int count) {
    double[] mass = new double[count + 1];
    mass[count] = 1;
    return new Chances(mass);
  }

  /**
   * How many of so many sheets are bad, in a house whose share of bad ones is beta-distributed.
   *
   * @param sheets 0 or more
   * @param alpha above 0
   * @param beta above 0
   */
  public static Chances betaBinomial(int sheets, double alpha, double beta) {
    double whole = Beta.logBeta(alpha, beta);
    return of(
        sheets,
        bad ->
            Math.exp(
                CombinatoricsUtils.binomialCoefficientLog(sheets, bad)
                    + Beta.logBeta(bad + alpha, sheets - bad + beta)
                    - whole));
  }

  /** So many chances, from none to the most there can be. */
  public static Chances of(int most, IntToDoubleFunction chance) {
    return new Chances(IntStream.rangeClosed(0, most).mapToDouble(chance).toArray());
  }

  /** These and others that do not depend on them, counted together. */
  public Chances and(Chances other) {
    double[] both = new double[mass.length + other.mass.length - 1];
    for (int here = 0; here < mass.length; here++) {
      if (mass[here] > 0) {
        for (int there = 0; there < other.mass.length; there++) {
          both[here + there] += mass[here] * other.mass[there];
        }
      }
    }
    return new Chances(both);
  }

  /** The greatest count that can be. */
  public int most() {
    return mass.length - 1;
  }

  /** How likely exactly so many are. */
  public double of(int count) {
    return count >= 0 && count < mass.length ? mass[count] : 0;
  }

  public double mean() {
    return expected(count -> count);
  }

  /** The standard deviation. */
  public double sd() {
    double mean = mean();
    return Math.sqrt(expected(count -> (count - mean) * (count - mean)));
  }

  /** How likely more than so many are; the small chances are added first. */
  public double moreThan(int count) {
    double sum = 0;
    for (int more = most(); more > Math.max(count, -1); more--) {
      sum += mass[more];
    }
    return sum;
  }

  /** How many beyond a count there are on average, where none counts for less than that. */
  public double beyond(int count) {
    return expected(each -> Math.max(each - count, 0));
  }

  /**
   * The smallest count that is not exceeded with a given chance.
   *
   * @param chance between 0 and 1
   */
  public int percentile(double chance) {
    double sum = 0;
    for (int count = 0; count < mass.length; count++) {
      sum += mass[count];
      if (sum >= chance - ROUNDING) {
        return count;
      }
    }
    return most();
  }

  /** The average of what each count is worth. */
  public double expected(IntToDoubleFunction worth) {
    double sum = 0;
    for (int count = most(); count >= 0; count--) {
      sum += mass[count] * worth.applyAsDouble(count);
    }
    return sum;
  }
}
