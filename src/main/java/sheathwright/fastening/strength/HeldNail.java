package sheathwright.fastening.strength;

import sheathwright.catalog.Column;
import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.Option;
import sheathwright.figure.Quantity.Force;
import sheathwright.figure.Quantity.Length;

/**
 * What one nail holds against the wind.
 *
 * @param penetration into sound wood that counts
 * @param withdrawal adjusted, of the whole penetration
 * @param pullThrough adjusted, of the head
 * @param resistance the smaller of the two
 * @param governs which of the two it is
 */
public record HeldNail(
    @Column("penetration_in") Figure<Length> penetration,
    @Column("withdrawal_lb") Figure<Force> withdrawal,
    @Column("pull_through_lb") Figure<Force> pullThrough,
    @Column("resistance_lb") Figure<Force> resistance,
    @Column("governs") Choice<Governs> governs) {

  /** How a nail lets go. */
  public enum Governs implements Option<Governs> {
    WITHDRAWAL,
    PULL_THROUGH
  }
}
