package sheathwright.fastening.count;

import sheathwright.catalog.Column;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Nails;
import sheathwright.figure.Quantity.Per;
import sheathwright.figure.Quantity.Pieces;

/**
 * Nails of one piece.
 *
 * @param supports under the piece, its ends included
 * @param nails for one piece
 */
public record PieceNails(
    @Column(value = "supports", unit = "piece") Figure<Pieces> supports,
    @Column(value = "nails", unit = "nails/piece") Figure<Per<Nails, Pieces>> nails) {}
