package sheathwright.framing.nailed;

import java.util.Objects;
import sheathwright.catalog.Column;
import sheathwright.catalog.Columns;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.LineForce;

/**
 * Groups of nails that give a little before they hold.
 *
 * @param groups where they stand and what a nail carries
 * @param stiffness k, the force that makes one nail slip by an inch if it went on as it starts
 */
public record SlippingGroups(
    GroupNailing groups,
    @Column(
            value = "nail_stiffness_lb_per_in",
            preset = "6000",
            least = 100,
            most = 1_000_000,
            rule = "6000 is a 10d common in Douglas fir-larch",
            symbol = "k")
        Figure<LineForce> stiffness) {

  private static final Columns COLUMNS = Columns.of(SlippingGroups.class);

  public SlippingGroups {
    groups = Objects.requireNonNullElseGet(groups, () -> new GroupNailing(null, null, null));
    stiffness = COLUMNS.let("stiffness", stiffness);
  }

  /** These groups, of common nails unless their stiffness is said. */
  public static SlippingGroups of(GroupNailing groups) {
    return new SlippingGroups(groups, null);
  }

  public SlippingGroups stiffness(Figure<LineForce> ofOneNail) {
    return new SlippingGroups(groups, ofOneNail);
  }
}
