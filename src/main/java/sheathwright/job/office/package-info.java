/**
 * What the office keeps once for all its jobs: its letterhead, its words, the next number of its
 * quotes, and its price book.
 */
package sheathwright.job.office;
