package sheathwright.workbook.audit;

/**
 * A cell that holds something else than what was written into it.
 *
 * @param row counted from 0, as it was, like the column
 */
record Change(String sheet, int row, int column, Held was, Held now) {}
