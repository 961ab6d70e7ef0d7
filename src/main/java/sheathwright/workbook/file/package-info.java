/**
 * What a workbook's file is besides its cells: what it says of itself, and how wide its letters
 * are.
 *
 * <p>Not API: it may change with any version.
 */
package sheathwright.workbook.file;
