package sheathwright.job;

import java.util.Optional;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Nails;
import sheathwright.figure.Quantity.Pieces;
import sheathwright.figure.Roll;
import sheathwright.leveling.plan.Sisters.SisterStock;
import sheathwright.pricing.PiecePrice;

/**
 * The work on rafters that have sagged, read at mid-length alone or surveyed at several stations.
 *
 * @param atMiddle what readings at mid-length come to, if they were taken so
 * @param survey what a survey comes to, if there was one
 * @param sisters rafters to sister
 * @param nails in them
 * @param shims rafters to shim
 * @param sisterPrice one sister
 * @param shimPrice one shimmed rafter
 */
public record Leveling(
    Optional<AtMiddle> atMiddle,
    Optional<Survey> survey,
    Figure<Pieces> sisters,
    Figure<Nails> nails,
    Figure<Pieces> shims,
    PiecePrice sisterPrice,
    PiecePrice shimPrice) {

  /**
   * Readings at mid-length.
   *
   * @param readings each with what it asks for
   * @param stock sisters, all of one length, for a sag that is a parabola
   * @param span of each rafter, from bearing to bearing
   */
  public record AtMiddle(Roll readings, SisterStock stock, Figure<Length> span) {}
}
