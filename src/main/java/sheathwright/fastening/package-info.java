/**
 * Nails and screws: what each holds, the codes' schedules, how many a deck takes, and what holds it
 * down against the wind. Each has a corner of its own.
 */
package sheathwright.fastening;
