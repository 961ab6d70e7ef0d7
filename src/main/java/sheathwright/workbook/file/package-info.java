/**
 * What a workbook's file is besides its cells: what it says of itself, and how wide its letters
 * are.
 */
package sheathwright.workbook.file;
