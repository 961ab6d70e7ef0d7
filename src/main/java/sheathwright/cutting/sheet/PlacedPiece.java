package sheathwright.cutting.sheet;

/**
 * One piece where it lies on its sheet.
 *
 * @param piece index into the order's pieces
 * @param x from the sheet's left edge to the piece's, in units
 * @param y from the sheet's lower edge to the piece's, in units
 * @param width along the strength axis, in units
 * @param height across the strength axis, in units
 */
public record PlacedPiece(int piece, long x, long y, long width, long height) {}
