/**
 * How a job and an office begin: tables with every key, unit, range and an example, to be filled.
 */
package sheathwright.life.start;
