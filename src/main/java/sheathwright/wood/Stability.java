package sheathwright.wood;

import sheathwright.catalog.Column;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Quantity.Stress;

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
