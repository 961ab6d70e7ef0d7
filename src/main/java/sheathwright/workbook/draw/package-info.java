/**
 * Maps and charts drawn into a workbook to scale.
 *
 * <p>Does not compute anything itself.
 */
package sheathwright.workbook.draw;
