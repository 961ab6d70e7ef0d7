/**
 * The parts of a workbook's file as text: sheets around their lines, looks of cells, drawings,
 * charts, and the file that packs them (ECMA-376).
 *
 * <p>Knows no figure and no trade. Does not cover what stands in cells, nor reading a file.
 *
 * <p>Not API: it may change with any version.
 */
package sheathwright.workbook.part;
