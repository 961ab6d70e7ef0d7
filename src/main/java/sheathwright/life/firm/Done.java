package sheathwright.life.firm;

import java.util.List;
import sheathwright.figure.Figure;
import sheathwright.forecast.LineFit;
import sheathwright.job.Job;
import sheathwright.job.JobTable;
import sheathwright.job.life.AgreedFields;
import sheathwright.job.life.LifeFields;
import sheathwright.job.life.OrderFields;
import sheathwright.job.site.SiteFields;
import sheathwright.job.table.Field;
import sheathwright.job.table.Row;

/**
 * What a crew did of one task on one visit, and on what kind of roof. Plain numbers.
 *
 * @param task as the log names it
 * @param quantity how many
 * @param hours of everybody together
 * @param rise of the roof in 12; not a number where the job does not say
 * @param layers of old covering; not a number where the job does not say
 */
record Done(String task, double quantity, double hours, double rise, double layers) {

  /** The rows of a job's log. */
  static List<Done> of(Job job) {
    double rise = number(job, SiteFields.RISE);
    double layers = number(job, LifeFields.LAYERS_ON);
    return job.lines(JobTable.LOG).stream().map(row -> of(row, rise, layers)).toList();
  }

  private static Done of(Row row, double rise, double layers) {
    return new Done(
        row.of(OrderFields.TASK).value(),
        row.of(AgreedFields.QUANTITY).value(),
        row.of(OrderFields.HOURS).value(),
        rise,
        layers);
  }

  private static double number(Job job, Field<? extends Figure<?>> field) {
    return job.knows(field) ? job.fact(field).value() : Double.NaN;
  }

  /** As a point of a line. */
  LineFit.Point point() {
    return new LineFit.Point(quantity, hours);
  }
}
