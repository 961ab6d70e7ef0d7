/**
 * Maps and charts drawn into a workbook to scale.
 *
 * <p>Does not compute anything itself.
 *
 * <p>Not API: it may change with any version.
 */
package sheathwright.workbook.draw;
