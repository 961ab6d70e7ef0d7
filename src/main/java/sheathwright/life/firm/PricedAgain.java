package sheathwright.life.firm;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Money;
import sheathwright.job.Estimate;
import sheathwright.job.Job;
import sheathwright.job.JobTable;
import sheathwright.job.JobTables;
import sheathwright.job.season.SeasonJob;
import sheathwright.job.table.RowSource;

/**
 * A job's price by its rates as they are, and by those that are proposed.
 *
 * @param before by its own
 * @param after by those that are proposed
 */
record PricedAgain(Price before, Price after) {

  /**
   * A price.
   *
   * @param total what the owner pays
   * @param worst with every sheet bad
   */
  record Price(Figure<Money> total, Figure<Money> worst) {

    static Price of(JobTables tables) {
      Estimate estimate = new Estimate(Job.of(tables));
      return new Price(estimate.total(), estimate.quote().worstCase());
    }

    @Override
    public String toString() {
      return "%s, at worst %s".formatted(total, worst);
    }
  }

  static PricedAgain of(SeasonJob job, List<Proposal> proposals) {
    Map<String, String> others = new LinkedHashMap<>();
    proposals.stream()
        .filter(Proposal::isMade)
        .forEach(each -> others.put(each.rate(), each.proposed()));
    JobTables all = job.tables();
    boolean isAgreed = all.files().containsKey(JobTable.AGREED.word());
    JobTables own = isAgreed ? all : all.without(JobTable.STAGES); // payments come to one price
    String rates = JobTable.RATES.word();
    Map<String, RowSource> files = new LinkedHashMap<>(own.files());
    files.computeIfPresent(
        rates, (word, file) -> OtherRates.of(file, JobTable.RATES.keys().orElseThrow(), others));
    return new PricedAgain(Price.of(own), Price.of(new JobTables(files, own.folder())));
  }

  String inWords(String job) {
    return "  %s: %s; by what is proposed %s".formatted(job, before, after);
  }
}
