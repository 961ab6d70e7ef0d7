/**
 * How a job and an office begin: tables with every key, unit, range and an example, to be filled.
 *
 * <p>Not API: it may change with any version.
 */
package sheathwright.life.start;
