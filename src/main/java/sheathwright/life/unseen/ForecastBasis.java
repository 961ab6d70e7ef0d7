package sheathwright.life.unseen;

import sheathwright.figure.Reading;
import sheathwright.forecast.ZoneForecast;
import sheathwright.job.Estimate;
import sheathwright.job.JobTable;

/** What there must be before a forecast of a job says anything. */
public final class ForecastBasis {

  private ForecastBasis() {}

  /**
   * Whether there is anything to forecast from: zones that somebody told apart, or what the office
   * knows of other houses; and a deck that a forecast takes.
   */
  public static boolean isGiven(Estimate estimate) {
    boolean isTold =
        !estimate.job().lines(JobTable.ZONES).isEmpty()
            || !OfficeShare.of(estimate.job()).isGuess();
    return isTold
        && estimate.deck().parts().stream()
                .mapToInt(part -> part.map().places(Reading.aside()).size())
                .sum()
            <= ZoneForecast.MOST_PLACES;
  }
}
