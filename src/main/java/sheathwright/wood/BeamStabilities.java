package sheathwright.wood;

import sheathwright.catalog.Column;
import sheathwright.catalog.LibraryFunction;
import sheathwright.figure.Figure;
import sheathwright.figure.Limits;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Quantity.Stress;
import sheathwright.figure.RefusedException;
import sheathwright.figure.Units;

/** How far deep sticks may be trusted not to roll over. */
public final class BeamStabilities {

  private BeamStabilities() {}

  /**
   * How much of its bending value a deep stick keeps where nothing but battens or braces holds its
   * upper edge.
   *
   * <pre>
   * l_e  = 2.06 l_u where l_u is less than 7 d, else 1.63 l_u + 3 d
   * R_B  = √(l_e d ÷ b²), 50 at most
   * F_bE = 1.20 E_min' ÷ R_B²      F = F_bE ÷ F_b*
   * C_L  = (1 + F) ÷ 1.9 − √(((1 + F) ÷ 1.9)² − F ÷ 0.95)
   * </pre>
   *
   * <p>Does not cover loads other than an even one on a simple span, ends that may roll, or whether
   * the battens and their nails hold. A stick that is held along its upper edge by a nailed deck
   * keeps its whole value. Screening only: local code and a licensed engineer decide.
   *
   * <pre>{@code
   * beamStability(in(48), CrossSection.thickness(in(1.5)).depth(in(7.25)), BendingValues.bending(psi(1428.3)).minModulus(psi(580000))).factor() // 0.9283
   * }</pre>
   *
   * @param unbraced between the places that hold the upper edge, 1 in to 600 in
   * @param section of the stick
   * @param values that the stick has before it may roll
   * @return effective length in inches, slenderness ratio, buckling value in psi, stability factor
   * @throws RefusedException if a number lies outside its range, or the slenderness ratio is over
   *     50
   * @see "NDS 2018 section 3.3.3, secondary source; its equation 3.3-6 from memory"
   */
  @LibraryFunction
  public static Stability beamStability(
      @Column("unbraced_in") Figure<Length> unbraced, CrossSection section, BendingValues values) {
    var lu =
        unbraced
            .within(
                "unbraced_in",
                Units.INCH,
                Limits.between(1, 600, "48 where battens lie 4 ft apart"))
            .symbol("l_u");
    var stability =
        new LateralStability(
            lu, section.depth(), section.thickness(), values.minModulus(), values.bending());
    return new Stability(
        stability.effectiveLength,
        stability.slenderness,
        stability.buckling,
        stability.allowedFactor());
  }

  /**
   * How far a deep stick may be trusted not to roll over.
   *
   * @param effectiveLength l_e
   * @param slenderness R_B, 50 at most
   * @param buckling F_bE
   * @param factor C_L, which its bending value is multiplied by
   */
  public record Stability(
      @Column("effective_length_in") Figure<Length> effectiveLength,
      @Column("slenderness") Figure<Ratio> slenderness,
      @Column("buckling_psi") Figure<Stress> buckling,
      @Column("stability_factor") Figure<Ratio> factor) {}
}
