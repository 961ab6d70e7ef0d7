package sheathwright.wood;

import sheathwright.catalog.Column;
import sheathwright.catalog.LibraryFunction;
import sheathwright.figure.Figure;
import sheathwright.figure.Limits;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Stress;
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
   * beamStability(in(48), in(7.25), in(1.5), psi(580000), psi(1428.3)).factor() // 0.9283
   * }</pre>
   *
   * @param unbraced between the places that hold the upper edge, 1 in to 600 in
   * @param depth of the stick, 1 in to 60 in
   * @param thickness of the stick, 0.5 in to 24 in
   * @param minModulus E_min' with its factors, 1000 psi to 2000000 psi
   * @param bending F_b* with every factor but stability and flat use, 1 psi to 10000 psi
   * @return effective length in inches, slenderness ratio, buckling value in psi, stability factor
   * @throws RefusedException if a number lies outside its range, or the slenderness ratio is over
   *     50
   * @see "NDS 2018 section 3.3.3, secondary source; its equation 3.3-6 from memory"
   */
  @LibraryFunction
  public static Stability beamStability(
      @Column("unbraced_in") Figure<Length> unbraced,
      @Column("depth_in") Figure<Length> depth,
      @Column("thickness_in") Figure<Length> thickness,
      @Column("min_modulus_psi") Figure<Stress> minModulus,
      @Column("bending_psi") Figure<Stress> bending) {
    var lu =
        unbraced
            .within(
                "unbraced_in",
                Units.INCH,
                Limits.between(1, 600, "48 where battens lie 4 ft apart"))
            .symbol("l_u");
    var d =
        depth
            .within("depth_in", Units.INCH, Limits.between(1, 60, "a dressed 2x8 has 7-1/4"))
            .symbol("d");
    var b =
        thickness
            .within("thickness_in", Units.INCH, Limits.between(0.5, 24, "a dressed 2x has 1-1/2"))
            .symbol("b");
    var emin =
        minModulus
            .within(
                "min_modulus_psi",
                Units.PSI,
                Limits.between(1000, 2_000_000, "design_values gives it"))
            .symbol("E_min'");
    var star =
        bending
            .within(
                "bending_psi",
                Units.PSI,
                Limits.between(1, 10_000, "with every factor but stability and flat use"))
            .symbol("F_b*");
    var stability = new LateralStability(lu, d, b, emin, star);
    return new Stability(
        stability.effectiveLength,
        stability.slenderness,
        stability.buckling,
        stability.allowedFactor());
  }
}
