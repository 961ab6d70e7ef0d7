/**
 * Functions over a whole table: pieces cut from sheets or sticks, and a plane over readings.
 *
 * <p>Does not cover how they are solved: that is in the rooms for cutting and leveling.
 *
 * <p>Not API: it may change with any version.
 */
package sheathwright.job.solve;
