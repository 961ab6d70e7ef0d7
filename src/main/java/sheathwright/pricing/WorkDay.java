package sheathwright.pricing;

import sheathwright.catalog.Column;
import sheathwright.catalog.Columns;
import sheathwright.figure.Figure;
import sheathwright.figure.Limits;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Quantity.Time;

/**
 * The people of a day on the roof.
 *
 * @param crew how many people
 * @param hours of each
 * @param efficiency share of the hours that goes into the work
 */
public record WorkDay(
    @Column(
            value = "crew",
            allowed = Limits.Kind.WHOLE_ONLY,
            least = 1,
            most = 50,
            rule = "people on the roof")
        Figure<Ratio> crew,
    @Column(value = "hours", unit = "h", least = 0, most = 24, rule = "until it must be dry")
        Figure<Time> hours,
    @Column(value = "efficiency_pct", least = 1, most = 100, rule = "write 75 for 75 %")
        Figure<Ratio> efficiency) {

  private static final Columns COLUMNS = Columns.of(WorkDay.class);

  public WorkDay {
    crew = COLUMNS.let("crew", crew);
    hours = COLUMNS.let("hours", hours);
    efficiency = COLUMNS.let("efficiency", efficiency);
  }

  /** So many people; their hours are still to be said. */
  public static WorkDay crew(Figure<Ratio> people) {
    return new WorkDay(people, null, null);
  }

  public WorkDay hours(Figure<Time> each) {
    return new WorkDay(crew, each, efficiency);
  }

  public WorkDay efficiency(Figure<Ratio> share) {
    return new WorkDay(crew, hours, share);
  }
}
