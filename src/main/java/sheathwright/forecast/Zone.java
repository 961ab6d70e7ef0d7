package sheathwright.forecast;

import org.apache.commons.math3.distribution.BinomialDistribution;
import org.apache.commons.math3.util.FastMath;

/**
 * A part of a roof whose places are alike: as likely to be bad, and seen equally well. Plain
 * numbers.
 *
 * @param name as the estimator calls it
 * @param places in it, 0 or more
 * @param seen of them, at most as many
 * @param bad of those seen
 * @param odds of a place being bad, as a multiple of a plain place's odds; above 0
 * @param recognized the share of bad places that show as bad to whoever looks, above 0 up to 1
 */
public record Zone(String name, int places, int seen, int bad, double odds, double recognized) {

  public Zone {
    if (seen > places || bad > seen || odds <= 0 || recognized <= 0 || recognized > 1) {
      throw new IllegalArgumentException("no zone has " + seen + " of " + places + ", " + bad);
    }
  }

  /** How likely a place here is bad where a plain place is with chance p. */
  double chanceOfBad(double p) {
    return odds * p / (1 - p + odds * p);
  }

  /** The logarithm of how likely it is to see what was seen, but for a factor that p is not in. */
  double logLikelihood(double p) {
    double shows = chanceOfBad(p) * recognized;
    return (bad == 0 ? 0 : bad * FastMath.log(shows))
        + (seen == bad ? 0 : (seen - bad) * FastMath.log1p(-shows));
  }

  /** How many are bad here in all, where a plain place is bad with chance p. */
  Chances chances(double p) {
    double here = chanceOfBad(p);
    double missed = here * (1 - recognized) / (1 - here * recognized);
    return Chances.known(bad).and(binomial(places - seen, here)).and(binomial(seen - bad, missed));
  }

  /**
   * The likeliest count first, and from it each count from its neighbor: C(n,k) p^k (1-p)^(n-k).
   */
  private static Chances binomial(int trials, double chance) {
    if (chance <= 0 || trials == 0) {
      return Chances.known(0);
    }
    if (chance >= 1) {
      return Chances.known(trials);
    }
    double odds = chance / (1 - chance);
    int likeliest = (int) Math.min(trials, (trials + 1) * chance);
    double[] mass = new double[trials + 1];
    mass[likeliest] = new BinomialDistribution(null, trials, chance).probability(likeliest);
    for (int bad = likeliest; bad < trials; bad++) {
      mass[bad + 1] = mass[bad] * (trials - bad) / (bad + 1) * odds;
    }
    for (int bad = likeliest; bad > 0; bad--) {
      mass[bad - 1] = mass[bad] * bad / (trials - bad + 1) / odds;
    }
    return Chances.of(trials, count -> mass[count]);
  }
}
