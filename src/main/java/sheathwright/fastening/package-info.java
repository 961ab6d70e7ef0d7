/**
 * Nails and screws: what each holds, the codes' schedules, how many a deck takes, and what holds it
 * down against the wind. Each has a corner of its own.
 *
 * <p>Part of the library's API.
 *
 * @since 0.1
 */
package sheathwright.fastening;
