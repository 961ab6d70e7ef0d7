package sheathwright.sheathing.layout;

/**
 * A piece to be cut out of a sheet.
 *
 * @param label what it is for
 * @param width inches along the strength axis
 * @param height inches across it
 * @param count how many alike
 */
public record CutPiece(String label, double width, double height, int count) {}
