package sheathwright.life.bill;

import java.util.Optional;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Quantity.Time;
import sheathwright.figure.Units;
import sheathwright.job.life.LifeFields;
import sheathwright.job.table.Facts;

/**
 * A working day of a crew.
 *
 * @param people on the roof
 * @param hours of each
 * @param efficiency the part of them that is spent working
 */
public record CrewDay(Figure<Ratio> people, Figure<Time> hours, Figure<Ratio> efficiency) {

  private static final Figure<Ratio> QUARTER = Figure.of(0.25, Units.RATIO);
  private static final Figure<Time> NO_TIME = Figure.of(0, Units.HOUR);

  /** The day of a job's crew; nothing unless the job says all three. */
  public static Optional<CrewDay> of(Facts job) {
    boolean isKnown =
        job.knows(LifeFields.CREW)
            && job.knows(LifeFields.CREW_HOURS)
            && job.knows(LifeFields.EFFICIENCY);
    return isKnown
        ? Optional.of(
            new CrewDay(
                job.fact(LifeFields.CREW),
                job.fact(LifeFields.CREW_HOURS),
                job.fact(LifeFields.EFFICIENCY)))
        : Optional.empty();
  }

  /** Days for so much work, up to a quarter; work that falls away gives none back. */
  public Figure<Ratio> days(Figure<Time> work) {
    return work.max(NO_TIME)
        .dividedBy(people.times(hours).times(efficiency))
        .in(Units.RATIO)
        .roundedUpTo(QUARTER)
        .as("days_more", Units.RATIO);
  }
}
