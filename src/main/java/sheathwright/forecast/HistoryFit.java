package sheathwright.forecast;

import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.optim.InitialGuess;
import org.apache.commons.math3.optim.MaxEval;
import org.apache.commons.math3.optim.nonlinear.scalar.GoalType;
import org.apache.commons.math3.optim.nonlinear.scalar.ObjectiveFunction;
import org.apache.commons.math3.optim.nonlinear.scalar.noderiv.NelderMeadSimplex;
import org.apache.commons.math3.optim.nonlinear.scalar.noderiv.SimplexOptimizer;
import org.apache.commons.math3.special.Beta;
import org.apache.commons.math3.util.CombinatoricsUtils;
import org.apache.commons.math3.util.FastMath;

/**
 * The share of bad sheets in a firm's houses as a beta distribution, fitted to finished ones.
 *
 * @param share bad sheets of all sheets
 * @param alike how much more alike the sheets of one house are than those of two: 0 where houses do
 *     not differ beyond chance, 1 where each is all bad or all sound
 * @param alpha of the distribution
 * @param beta of the distribution
 */
public record HistoryFit(double share, double alike, double alpha, double beta) {

  /** Where houses seem not to differ at all, they differ by so little. */
  private static final double LEAST_ALIKE = 0.000001;

  private static final double MOST_ALIKE = 0.999;

  /** Houses that a fit needs; fewer say next to nothing about how houses differ. */
  public static final int FEWEST = 5;

  /** Whether houses are enough for a fit, some of their sheets bad and some sound. */
  public static boolean isEnough(List<House> houses) {
    return houses.size() >= FEWEST
        && houses.stream().anyMatch(house -> house.bad() > 0)
        && houses.stream().anyMatch(house -> house.bad() < house.sheets());
  }

  /** What houses lack for a fit, and what holds until then; nothing where they are enough. */
  public static Optional<String> lack(List<House> houses) {
    if (isEnough(houses)) {
      return Optional.empty();
    }
    return Optional.of(
        "%s; a fit needs %s jobs with bad sheets and sound ones: until then alpha=0.8 beta=12, a guess and no data"
            .formatted(
                houses.size() < FEWEST
                    ? "it has %s job%s".formatted(houses.size(), houses.size() == 1 ? "" : "s")
                    : "its sheets are all of one kind",
                FEWEST));
  }

  /**
   * A fit by moments, each house weighed by its sheets.
   *
   * <pre>
   * π = Σ bad ÷ N    S = Σ n (bad/n − π)²
   * ρ = (S ÷ (π (1 − π)) − (m − 1)) ÷ (N − Σn²/N − (m − 1))
   * α + β = 1/ρ − 1    α = π (α + β)
   * </pre>
   *
   * @param houses at least two, not all of them sound and not all of them bad throughout
   */
  public static HistoryFit byMoments(List<House> houses) {
    double sheets = houses.stream().mapToDouble(House::sheets).sum();
    double share = houses.stream().mapToDouble(House::bad).sum() / sheets;
    double spread = 0;
    double squares = 0;
    for (House house : houses) {
      double off = (double) house.bad() / house.sheets() - share;
      spread += house.sheets() * off * off;
      squares += (double) house.sheets() * house.sheets();
    }
    double free = houses.size() - 1;
    double room = sheets - squares / sheets - free; // none where each house has one sheet
    double alike = room > 0 ? (spread / (share * (1 - share)) - free) / room : 0;
    return of(share, Math.max(LEAST_ALIKE, Math.min(MOST_ALIKE, alike)));
  }

  private static HistoryFit of(double share, double alike) {
    double both = 1 / alike - 1;
    return new HistoryFit(share, alike, share * both, (1 - share) * both);
  }

  /** Whether houses differ no more than chance makes them: the forecast is binomial then. */
  public boolean isBinomial() {
    return alike <= LEAST_ALIKE;
  }

  /** The fit under which what the houses showed is likeliest, sought from this one. */
  public HistoryFit likeliest(List<House> houses) {
    double[] best =
        new SimplexOptimizer(1e-13, 1e-13)
            .optimize(
                new MaxEval(20_000),
                GoalType.MAXIMIZE,
                new ObjectiveFunction(
                    at -> logLikelihood(houses, FastMath.exp(at[0]), FastMath.exp(at[1]))),
                new InitialGuess(new double[] {FastMath.log(alpha), FastMath.log(beta)}),
                new NelderMeadSimplex(2, 0.1))
            .getPoint();
    double a = FastMath.exp(best[0]);
    double b = FastMath.exp(best[1]);
    return new HistoryFit(a / (a + b), 1 / (a + b + 1), a, b);
  }

  /** The logarithm of how likely the houses are under this fit. */
  public double logLikelihood(List<House> houses) {
    return logLikelihood(houses, alpha, beta);
  }

  private static double logLikelihood(List<House> houses, double alpha, double beta) {
    double sum = -houses.size() * Beta.logBeta(alpha, beta);
    for (House house : houses) {
      sum +=
          CombinatoricsUtils.binomialCoefficientLog(house.sheets(), house.bad())
              + Beta.logBeta(house.bad() + alpha, house.sheets() - house.bad() + beta);
    }
    return sum;
  }

  /** How many sheets of a roof are bad that nobody has looked at. */
  public Chances chances(int sheets) {
    return Chances.betaBinomial(sheets, alpha, beta);
  }
}
