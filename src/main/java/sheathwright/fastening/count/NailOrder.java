package sheathwright.fastening.count;

import sheathwright.catalog.Column;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Force;
import sheathwright.figure.Quantity.Nails;
import sheathwright.figure.Quantity.Pieces;

/**
 * Nails as they are bought.
 *
 * @param withWaste nails to have on the job
 * @param boxes whole boxes
 * @param pounds if bought by weight
 * @param coils whole coils
 */
public record NailOrder(
    @Column(value = "nails_with_waste", unit = "nail") Figure<Nails> withWaste,
    @Column(value = "boxes", unit = "piece") Figure<Pieces> boxes,
    @Column("pounds_lb") Figure<Force> pounds,
    @Column(value = "coils", unit = "piece") Figure<Pieces> coils) {}
