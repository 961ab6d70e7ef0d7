/**
 * Snow on a roof: balanced, on low slopes, with rain on it, and unbalanced.
 *
 * <p>Sources: ASCE 7-10, 7-16 and 7-22, chapter 7. Does not cover drifts against walls and
 * parapets, sliding snow from above, or ground loads, which the building department states.
 * Screening: local code and a licensed engineer decide.
 *
 * <p>Part of the library's API.
 *
 * @since 0.1
 */
package sheathwright.loads.snow;
