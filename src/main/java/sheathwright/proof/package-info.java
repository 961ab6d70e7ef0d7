/**
 * What was checked, and how it came out: certified cases of each library function, run by the same
 * reader that fills a table; what stands for functions that tests hold; fingerprints of the program
 * and its tables; numbers that changed since a release; and the cases that an office keeps of its
 * own.
 *
 * <p>Does not cover whether a method fits a roof: results are compared with what was published or
 * computed by another program, never with built roofs.
 *
 * <p>Not API: it may change with any version.
 */
package sheathwright.proof;
