package sheathwright.life.firm;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import sheathwright.job.season.ManyJobs;
import sheathwright.job.season.Season;

/**
 * A season, a line a job.
 *
 * @param lines in the order of the jobs
 */
public record SeasonSummary(List<JobLine> lines) {

  /**
   * The summary of a season; of each job only its line is kept.
   *
   * @param threads how many jobs are worked on at once; the summary is the same whatever they are
   * @param told is told of each line as it comes, in the order of the jobs
   */
  public static SeasonSummary of(Season season, int threads, Consumer<JobLine> told) {
    List<JobLine> lines = new ArrayList<>();
    new ManyJobs(season.jobs(), threads)
        .each(
            JobStanding::of,
            outcome -> {
              JobLine line =
                  outcome.made().orElseGet(() -> JobLine.refused(outcome.job(), outcome.refusal()));
              lines.add(line);
              told.accept(line);
            });
    return new SeasonSummary(List.copyOf(lines));
  }

  /** The jobs that could be read. */
  public List<JobLine> read() {
    return lines.stream().filter(line -> !line.isRefused()).toList();
  }

  /** The jobs that could not. */
  public List<JobLine> refused() {
    return lines.stream().filter(JobLine::isRefused).toList();
  }

  /** As a table. */
  public byte[] table() {
    return CsvText.of(JobLine.headings(), lines.stream().map(JobLine::cells).toList());
  }
}
