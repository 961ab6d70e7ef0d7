package sheathwright.forecast;

import sheathwright.catalog.Column;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Quantity.Time;

/**
 * Hours to reckon with for one unit of work.
 *
 * @param hours for one unit
 * @param weight how much of it is the firm's own log, from 0 to 1
 */
public record HoursRate(
    @Column(value = "hours", unit = "h") Figure<Time> hours,
    @Column("weight") Figure<Ratio> weight) {}
