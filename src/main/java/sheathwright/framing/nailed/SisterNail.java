package sheathwright.framing.nailed;

import sheathwright.catalog.Column;
import sheathwright.catalog.Marked;
import sheathwright.figure.Check;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Force;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Nails;

/**
 * Nails along a full-length sister.
 *
 * @param transfer all that moves from the old rafter to the sister
 * @param each what each nail carries at the spacing asked about
 * @param nail that against what a nail may carry
 * @param greatestSpacing that still passes
 * @param commonSpacing that is remembered as the code's for built-up pieces
 * @param spacing the lesser of the two
 * @param endNails at each end
 */
public record SisterNail(
    @Column("transfer_lb") Figure<Force> transfer,
    @Column("each_lb") Figure<Force> each,
    @Column("nail_ratio") Check nail,
    @Column(value = "greatest_spacing_in", marked = Marked.DOWN) Figure<Length> greatestSpacing,
    @Column(value = "common_spacing_in", marked = Marked.DOWN) Figure<Length> commonSpacing,
    @Column(value = "use_spacing_in", marked = Marked.DOWN) Figure<Length> spacing,
    @Column(value = "end_nails", unit = "nail") Figure<Nails> endNails) {}
