package sheathwright.sheathing.board;

import sheathwright.catalog.Column;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Pieces;

/**
 * Boards for a part of a deck.
 *
 * @param laid feet of board that lie on the deck
 * @param boards whole boards to buy
 */
public record BoardCount(
    @Column("linear_ft") Figure<Length> laid,
    @Column(value = "boards", unit = "piece") Figure<Pieces> boards) {}
