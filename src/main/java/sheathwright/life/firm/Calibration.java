package sheathwright.life.firm;

import java.nio.file.Files;
import java.util.ArrayList;
import java.util.List;
import sheathwright.job.life.FirmTables;
import sheathwright.job.season.ManyJobs;
import sheathwright.job.season.Season;

/** What all jobs of a firm teach its rates, what that rests on, and what it would have changed. */
public final class Calibration {

  private final HistoryRates history;
  private final List<Proposal> proposals = new ArrayList<>();
  private final List<String> refusals = new ArrayList<>();
  private final List<String> totals = new ArrayList<>();

  /**
   * What a season teaches.
   *
   * @param threads how many jobs are read at once
   * @throws sheathwright.job.table.ProblemsException with everything that is wrong with the firm's
   *     own tables
   */
  public Calibration(Season season, int threads) {
    history = historyOf(season);
    ManyJobs jobs = new ManyJobs(season.jobs(), threads);
    Records records = new Records();
    jobs.each(
        job -> Records.OfJob.of(job.job()),
        outcome -> {
          outcome.made().ifPresent(records::add);
          if (outcome.made().isEmpty()) {
            refusals.add("%s: left out: %s".formatted(outcome.job(), outcome.refusal()));
          }
        });
    proposals.addAll(history.proposals(records::old));
    List<Proposal> hours = records.proposals();
    proposals.addAll(hours);
    if (hours.stream().anyMatch(Proposal::isMade)) {
      jobs.each(
          job -> PricedAgain.of(job, hours),
          outcome -> outcome.made().ifPresent(made -> totals.add(made.inWords(outcome.job()))));
    }
  }

  /** What the closed jobs of a season's firm say. */
  public static HistoryRates historyOf(Season season) {
    return new HistoryRates(
        season.firm(), Files.exists(season.folder().resolve(FirmTables.Table.CALLBACKS.file())));
  }

  /** Each rate that the records could tell of. */
  public List<Proposal> proposals() {
    return List.copyOf(proposals);
  }

  /** Jobs that could not be read, a line each. */
  public List<String> refusals() {
    return List.copyOf(refusals);
  }

  /** What the records say, and what last season's quotes would have been. */
  public List<String> lines() {
    List<String> lines = new ArrayList<>(history.lines());
    if (totals.isEmpty()) {
      lines.add("no rate of hours is proposed, so no quote would have been another");
    } else {
      lines.add("what the quotes would have been:");
      lines.addAll(totals);
    }
    return lines;
  }

  /** The proposals as a table. */
  public byte[] table() {
    return CsvText.of(Proposal.HEADINGS, proposals.stream().map(Proposal::cells).toList());
  }
}
