/** An office's own workbooks as letterhead: what stands in braces is filled in, the rest stays. */
package sheathwright.workbook.letterhead;
