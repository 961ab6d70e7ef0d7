package sheathwright.workbook.home;

import java.util.Optional;
import sheathwright.figure.RefusedException;
import sheathwright.forecast.InHouses;
import sheathwright.job.Estimate;
import sheathwright.job.JobTable;
import sheathwright.job.zone.ToldZone;
import sheathwright.life.unseen.JobForecast;

/**
 * How many sheets are likely bad, in houses that a homeowner can count. It is said where somebody
 * has told the deck's zones apart and the office knows of other houses; a guess is never said.
 */
final class LikelyWords {

  private LikelyWords() {}

  /** One sentence; none where nothing can be claimed. */
  static Optional<String> of(Estimate estimate) {
    return estimate.job().lines(JobTable.ZONES).isEmpty()
        ? Optional.empty()
        : forecast(estimate)
            .filter(forecast -> !forecast.share().isGuess())
            .map(
                forecast ->
                    "Of houses like yours, by our records%s: %s."
                        .formatted(seen(estimate), InHouses.words(forecast.chances())));
  }

  /** A deck with more places than can be reckoned with has none. */
  private static Optional<JobForecast> forecast(Estimate estimate) {
    try {
      return Optional.of(JobForecast.before(estimate));
    } catch (RefusedException tooMany) {
      return Optional.empty();
    }
  }

  private static String seen(Estimate estimate) {
    boolean isSeen =
        estimate.job().lines(JobTable.ZONES).stream()
            .map(ToldZone::new)
            .anyMatch(zone -> zone.seen().value() > 0);
    return isSeen ? " and what could be seen of your deck" : "; of your deck nobody has seen any";
  }
}
