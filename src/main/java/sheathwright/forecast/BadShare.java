package sheathwright.forecast;

import sheathwright.catalog.Column;
import sheathwright.catalog.Columns;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Reading;
import sheathwright.figure.Units;

/**
 * What share of a house's sheets is bad before anything of it was seen: a beta distribution, as the
 * firm's own history gives it. The average share is alpha ÷ (alpha + beta); the smaller the two
 * are, the more one house differs from the next. Without any history, 0.8 and 12 are a guess of
 * ours, and no data.
 *
 * @param alpha weighs the bad sheets
 * @param beta weighs the sound ones
 */
public record BadShare(
    @Column(
            value = "alpha",
            least = 0.001,
            most = 1e6,
            rule = "from the firm's history, as solve fit gives it; 0.8 is a guess without one")
        Figure<Ratio> alpha,
    @Column(
            value = "beta",
            least = 0.001,
            most = 1e6,
            rule = "from the firm's history, as solve fit gives it; 12 is a guess without one")
        Figure<Ratio> beta) {

  private static final Columns COLUMNS = Columns.of(BadShare.class);

  public BadShare {
    alpha = COLUMNS.let("alpha", alpha);
    beta = COLUMNS.let("beta", beta);
  }

  /** Both numbers, as a fit of the firm's history gives them. */
  public static BadShare of(Figure<Ratio> alpha, Figure<Ratio> beta) {
    return new BadShare(alpha, beta);
  }

  /** The same as plain numbers. */
  Plain plain(Reading reading) {
    return new Plain(
        reading.number("alpha", alpha, Units.RATIO), reading.number("beta", beta, Units.RATIO));
  }

  /** Plain numbers. */
  record Plain(double alpha, double beta) {}
}
