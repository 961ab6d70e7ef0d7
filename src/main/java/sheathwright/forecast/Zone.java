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

  private static Chances binomial(int trials, double chance) {
    if (chance <= 0 || trials == 0) {
      return Chances.known(0);
    }
    BinomialDistribution bad = new BinomialDistribution(null, trials, Math.min(chance, 1));
    return Chances.of(trials, bad::probability);
  }
}
