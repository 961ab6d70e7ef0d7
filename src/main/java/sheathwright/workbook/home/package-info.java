/**
 * The homeowner's file: three pages, four where rafters are straightened, in words that a homeowner
 * uses.
 *
 * <p>Every number in it is told, and nothing of how it was made; only sums and what the reader may
 * choose are formulas. Does not cover what a contract has to say by law.
 *
 * <p>Not API: it may change with any version.
 */
package sheathwright.workbook.home;
