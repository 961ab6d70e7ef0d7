/**
 * A workbook's tabs read as tables, whatever program saved it: refused where it is not what it says
 * it is, or holds what nobody should open.
 *
 * <p>Does not cover what the tables mean.
 *
 * <p>Not API: it may change with any version.
 */
package sheathwright.job.tab;
