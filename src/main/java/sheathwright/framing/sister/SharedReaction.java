package sheathwright.framing.sister;

import sheathwright.catalog.Column;
import sheathwright.catalog.Columns;
import sheathwright.figure.Figure;
import sheathwright.figure.OneOf;
import sheathwright.figure.Quantity.Force;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.YesNo;

/**
 * What comes to a support, and which of the two pieces takes it there.
 *
 * @param existing reaction of what lies on the rafter when the sister is nailed; 0 if it is jacked
 * @param added reaction of everything that comes after
 * @param rafterShare the old rafter's part of what is added
 * @param sisterBears whether the sister bears on the plate itself
 */
public record SharedReaction(
    @Column(
            value = "existing_lb",
            least = 0,
            most = 20_000,
            rule = "half the load that lies on the rafter",
            symbol = "R_existing")
        Figure<Force> existing,
    @Column(
            value = "added_lb",
            least = 0,
            most = 20_000,
            rule = "half the load that is added",
            symbol = "R_added")
        Figure<Force> added,
    @Column(
            value = "rafter_share",
            least = 0,
            most = 1,
            rule = "from sister_share",
            symbol = "a_rafter")
        Figure<Ratio> rafterShare,
    @Column("sister_bears") OneOf<YesNo> sisterBears) {

  private static final Columns COLUMNS = Columns.of(SharedReaction.class);

  public SharedReaction {
    existing = COLUMNS.let("existing", existing);
    added = COLUMNS.let("added", added);
    rafterShare = COLUMNS.let("rafterShare", rafterShare);
    sisterBears = COLUMNS.let("sisterBears", sisterBears);
  }

  /** What comes to the support after the sister is nailed; the rest is still to be said. */
  public static SharedReaction added(Figure<Force> after) {
    return new SharedReaction(null, after, null, null);
  }

  public SharedReaction existing(Figure<Force> before) {
    return new SharedReaction(before, added, rafterShare, sisterBears);
  }

  public SharedReaction rafterShare(Figure<Ratio> part) {
    return new SharedReaction(existing, added, part, sisterBears);
  }

  public SharedReaction sisterBears(OneOf<YesNo> bears) {
    return new SharedReaction(existing, added, rafterShare, bears);
  }
}
