package sheathwright.forecast;

import org.apache.commons.math3.distribution.BetaDistribution;

/** The exact one-sided limits of a share that was counted (Clopper and Pearson 1934). */
final class ShareLimits {

  /** So near that a share of one in millions keeps its digits: the solver's own is 1e-9. */
  private static final double ACCURACY = 1e-20;

  private ShareLimits() {}

  /** The share for which so few of so many have a chance of 1 − confidence. */
  static double atMost(double counted, double of, double confidence) {
    return counted == of ? 1 : share(counted + 1, of - counted, confidence);
  }

  /** The share for which so many of so many have a chance of 1 − confidence. */
  static double atLeast(double counted, double of, double confidence) {
    return counted == 0 ? 0 : share(counted, of - counted + 1, 1 - confidence);
  }

  private static double share(double alpha, double beta, double chance) {
    return new BetaDistribution(null, alpha, beta, ACCURACY).inverseCumulativeProbability(chance);
  }
}
