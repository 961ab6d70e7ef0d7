package sheathwright.framing.nailed;

import sheathwright.catalog.Column;
import sheathwright.catalog.Columns;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Force;
import sheathwright.figure.Quantity.Length;

/**
 * Nails of a sister in groups, two at each of its ends or on each side of a break.
 *
 * @param arm s, from the middle of one group to the middle of the next
 * @param endDistance from the middle of the outer group to the sister's end
 * @param lateral Z' of one nail, adjusted
 */
public record GroupNailing(
    @Column(
            value = "arm_in",
            least = 3,
            most = 120,
            rule = "longer takes fewer nails; 24 is usual",
            symbol = "s")
        Figure<Length> arm,
    @Column(
            value = "end_distance_in",
            preset = "3",
            least = 0,
            most = 24,
            rule = "3 keeps nails from splitting the end",
            symbol = "end distance")
        Figure<Length> endDistance,
    @Column(
            value = "lateral_lb",
            least = 1,
            most = 5000,
            rule = "for one nail, adjusted; a 10d common carries about 100",
            symbol = "Z'")
        Figure<Force> lateral) {

  private static final Columns COLUMNS = Columns.of(GroupNailing.class);

  public GroupNailing {
    arm = COLUMNS.let("arm", arm);
    endDistance = COLUMNS.let("endDistance", endDistance);
    lateral = COLUMNS.let("lateral", lateral);
  }

  /** Groups so far apart; what a nail carries is still to be said. */
  public static GroupNailing arm(Figure<Length> betweenGroups) {
    return new GroupNailing(betweenGroups, null, null);
  }

  public GroupNailing endDistance(Figure<Length> toTheEnd) {
    return new GroupNailing(arm, toTheEnd, lateral);
  }

  public GroupNailing lateral(Figure<Force> adjusted) {
    return new GroupNailing(arm, endDistance, adjusted);
  }

  /** What one nail carries, where nails stand in no groups. */
  static Figure<Force> ofOneNail(Figure<Force> adjusted) {
    return COLUMNS.let("lateral", adjusted);
  }
}
