/**
 * All that is verified where the program runs, its workbooks too, and the record of it to sign.
 *
 * <p>Not API: it may change with any version.
 */
package sheathwright.workbook.proof;
