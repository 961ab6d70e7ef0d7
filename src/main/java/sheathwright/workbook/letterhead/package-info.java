/**
 * An office's own workbooks as letterhead: what stands in braces is filled, everything else stays,
 * and the tabs of a document follow.
 *
 * <p>Does not decide what a document tells.
 *
 * <p>Not API: it may change with any version.
 */
package sheathwright.workbook.letterhead;
