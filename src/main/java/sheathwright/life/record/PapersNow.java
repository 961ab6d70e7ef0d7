package sheathwright.life.record;

import sheathwright.job.Estimate;
import sheathwright.job.Job;
import sheathwright.job.life.LifeFields;

/** The papers of a job that go to others than its owner, as far as its stage allows them. */
public final class PapersNow {

  private final JobFolder folder;
  private final Estimate estimate;

  /**
   * The papers of a job at its stage.
   *
   * @throws sheathwright.job.table.ProblemsException if the stage allows none of them
   */
  public PapersNow(JobFolder folder) {
    this.folder = folder;
    folder.require(Step.ORDER_LIST);
    estimate =
        new Estimate(
            Job.of(
                folder.with(
                    folder.facts().with(JobFolder.KEYS, LifeFields.STAGE, folder.stage().word()))));
  }

  /** Whether the job's stage allows one of them. */
  public boolean allow(Step paper) {
    return paper.isAllowedAt(folder.stage());
  }

  /** The job as it stands. */
  public Estimate estimate() {
    return estimate;
  }
}
