package sheathwright.leveling.plan;

import sheathwright.catalog.Column;
import sheathwright.catalog.Marked;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Nails;
import sheathwright.figure.Quantity.Pieces;

/**
 * The lumber that brings sagged rafters to a string line.
 *
 * @param length of each sister
 * @param stock of each stick to buy
 * @param pieces sticks to buy
 * @param nails in all
 * @param endOffset how far the sister's top stands above the old rafter at its ends
 * @param nearMiss what the next shorter stock lacks, if that is under an inch, else zero
 */
public record SisterStock(
    @Column(value = "length_ft", marked = Marked.DOWN) Figure<Length> length,
    @Column("stock_ft") Figure<Length> stock,
    @Column(value = "pieces", unit = "piece") Figure<Pieces> pieces,
    @Column(value = "nails", unit = "nail") Figure<Nails> nails,
    @Column(value = "end_offset_in", marked = Marked.NEAREST) Figure<Length> endOffset,
    @Column("near_miss_in") Figure<Length> nearMiss) {}
