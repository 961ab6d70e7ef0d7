package sheathwright.cutting.sheet;

/**
 * Two slanted pieces that one slanted cut parts.
 *
 * @param first index into the list that was paired
 * @param second index into the list that was paired, given a half turn
 * @param rectangle that both are cut out of, kerf of the slanted cut included
 */
public record SlantedPair(int first, int second, SheetPiece rectangle) {}
