/**
 * Workbooks of ours that come back: read in one pass, held against what was written, and every
 * difference told with what it does to the total.
 *
 * <p>Sources: the file that was kept, the manifest that it carries (SpreadsheetML and Open
 * Packaging Conventions, ECMA-376). Does not cover how a workbook looks, nor workbooks of other
 * people's.
 *
 * <p>Not API: it may change with any version.
 */
package sheathwright.workbook.audit;
