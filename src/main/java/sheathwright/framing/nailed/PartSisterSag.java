package sheathwright.framing.nailed;

import sheathwright.catalog.Column;
import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.Option;
import sheathwright.figure.Quantity.Length;

/**
 * Between what two bounds a rafter sags once a part-length sister is nailed to it.
 *
 * @param most as the old rafter sags alone
 * @param least as if no nail slipped
 * @param role what a sister of this length is good for
 */
public record PartSisterSag(
    @Column("most_sag_in") Figure<Length> most,
    @Column("least_sag_in") Figure<Length> least,
    @Column("role") Choice<Role> role) {

  /** What a sister is good for. */
  public enum Role implements Option<Role> {
    /** Long enough that its nails bring over most of its share. */
    STIFFENER,
    /** Too short to stiffen: it bridges one place. */
    SPLICE
  }
}
