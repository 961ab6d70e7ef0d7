/**
 * The linear program behind the bounds on sheets, in exact arithmetic where it is stated.
 *
 * <p>Does not cover programs in general: only coverings by patterns.
 */
package sheathwright.cutting.program;
